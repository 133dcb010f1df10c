import { sitesOfChatRoom } from '../practice/look-up.ts';
import type { Practice } from '../practice/practice.ts';

/** The site of a chat room that serves just one; `null` where it serves several, or is not listed. */
export function siteOfChatRoom(practice: Practice, room: string): string | null {
  const sites = sitesOfChatRoom(practice, room);
  return sites.length === 1 ? (sites[0]?.id ?? null) : null;
}

/** Sites that an ask is about: the one said, else those of the chat room, else all. */
export function sitesOfAsk(practice: Practice, said: string | undefined, room: string): readonly string[] {
  if (said !== undefined) return [said];
  const here = sitesOfChatRoom(practice, room).map(({ id }) => id);
  return here.length === 0 ? practice.sites.map(({ id }) => id) : here;
}
