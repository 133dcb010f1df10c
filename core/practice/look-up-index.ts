import type { Autoclave, ChatRoom, Person, Practice, Room, Scanner, Site, Tip } from './practice.ts';

interface Index {
  readonly sites: ReadonlyMap<string, Site>;
  /** By site, then by room. */
  readonly rooms: ReadonlyMap<string, ReadonlyMap<string, Room>>;
  readonly scanners: ReadonlyMap<string, Scanner>;
  readonly autoclaves: ReadonlyMap<string, Autoclave>;
  readonly tips: ReadonlyMap<string, Tip>;
  /** By chat identity. */
  readonly people: ReadonlyMap<string, Person>;
  readonly sitesByChat: ReadonlyMap<string, readonly Site[]>;
  /** Chat rooms that serve a site, by the site: in the file's order. */
  readonly chatBySite: ReadonlyMap<string, readonly ChatRoom[]>;
}

/** Made once for each practice and dropped with it; a practice is never changed, only replaced. */
const made = new WeakMap<Practice, Index>();

export function indexOf(practice: Practice): Index {
  const known = made.get(practice);
  if (known !== undefined) return known;
  const index = makeIndex(practice);
  made.set(practice, index);
  return index;
}

function makeIndex(practice: Practice): Index {
  const sites = byId(practice.sites);
  const people = practice.people.flatMap((person): [string, Person][] => {
    return person.id === null ? [] : [[person.id, person]];
  });
  return {
    sites,
    rooms: new Map(practice.sites.map((site) => [site.id, byId(site.rooms)])),
    scanners: byId(practice.scanners),
    autoclaves: byId(practice.autoclaves),
    tips: byId(practice.tips),
    people: new Map(people),
    chatBySite: new Map(
      practice.sites.map(({ id }) => [id, practice.chat.filter((entry) => entry.sites.includes(id))]),
    ),
    sitesByChat: new Map(
      practice.chat.map(({ room, sites: served }) => [room, served.flatMap((id) => sites.get(id) ?? [])]),
    ),
  };
}

function byId<T extends { readonly id: string }>(things: readonly T[]): ReadonlyMap<string, T> {
  return new Map(things.map((thing) => [thing.id, thing]));
}
