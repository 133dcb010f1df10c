import { indexOf } from './look-up-index.ts';
import type { Autoclave, ChatRoom, Part, Person, Practice, Room, Scanner, Site, Tip } from './practice.ts';

/** The site with that id. */
export function siteOf(practice: Practice, id: string): Site | undefined {
  return indexOf(practice).sites.get(id);
}

export function scannerOf(practice: Practice, id: string): Scanner | undefined {
  return indexOf(practice).scanners.get(id);
}

export function tipOf(practice: Practice, id: string): Tip | undefined {
  return indexOf(practice).tips.get(id);
}

export function autoclaveOf(practice: Practice, id: string): Autoclave | undefined {
  return indexOf(practice).autoclaves.get(id);
}

export function autoclavesOfSite(practice: Practice, site: string): readonly Autoclave[] {
  return practice.autoclaves.filter((autoclave) => autoclave.site === site);
}

/** The room with that id at that site: room ids are the site's own. */
export function roomOf(practice: Practice, site: string, room: string): Room | undefined {
  return indexOf(practice).rooms.get(site)?.get(room);
}

/** The person with that chat identity. */
export function personOf(practice: Practice, chatId: string): Person | undefined {
  return indexOf(practice).people.get(chatId);
}

/** The part of whoever writes under that chat identity; people who are not listed are staff. */
export function partOf(practice: Practice, chatId: string): Part {
  return personOf(practice, chatId)?.part ?? 'staff';
}

/** A person's name as the practice file spells it, else the name in the chat identity: `@rosa:example.org` is `rosa`. */
export function nameOf(practice: Practice, chatId: string): string {
  return personOf(practice, chatId)?.name ?? /^@([^:]+):/.exec(chatId)?.[1] ?? chatId;
}

/** True for the lead, the deputies and the managers: who may release, close and pass. */
export function mayRelease(practice: Practice, chatId: string): boolean {
  return partOf(practice, chatId) !== 'staff';
}

/** People of one part, in the file's order. */
export function peopleOf(practice: Practice, part: Part): readonly Person[] {
  return practice.people.filter((person) => person.part === part);
}

/** The lead; the first where several are listed. */
export function leadOf(practice: Practice): Person | undefined {
  return practice.people.find((person) => person.part === 'lead');
}

export function deputiesOf(practice: Practice): readonly Person[] {
  return peopleOf(practice, 'deputy');
}

export function managersOf(practice: Practice): readonly Person[] {
  return peopleOf(practice, 'manager');
}

/**
 * The sites that a chat room serves. Where the file lists no chat rooms at all, every room serves every site; a room
 * that is not listed beside others serves none.
 */
export function sitesOfChatRoom(practice: Practice, room: string): readonly Site[] {
  if (practice.chat.length === 0) return practice.sites;
  return indexOf(practice).sitesByChat.get(room) ?? [];
}

/** The chat rooms that serve a site, in the file's order. */
export function chatRoomsOfSite(practice: Practice, site: string): readonly ChatRoom[] {
  return indexOf(practice).chatBySite.get(site) ?? [];
}

/** The zone whose clock a chat room goes by: its site's where it serves one zone alone, else the practice's. */
export function zoneOfChatRoom(practice: Practice, room: string): string {
  const zones = new Set(sitesOfChatRoom(practice, room).map((site) => site.timezone));
  const [only] = zones;
  return zones.size === 1 && only !== undefined ? only : practice.timezone;
}
