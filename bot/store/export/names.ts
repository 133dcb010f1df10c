import type { Practice } from '../../../core/practice/practice.ts';
import { fact } from '../../../core/reading/fact.ts';
import { countsAs } from '../../../core/record/load-standard.ts';

/** How ids read for a person, and which zone's clock a place goes by. */
export interface Names {
  /** IANA zone of a site, else of the chat room's first site, else the practice's. */
  zone(site: string | null, room: string): string;
  site(id: string): string;
  place(site: string, room: string): string;
  person(id: string): string;
  /** The site of a note that names none: the chat room's, where it serves one alone. */
  siteOfRoom(room: string): string | null;
  /** Whether a load's result, said to be a pass, counts as failed by its figures or its indicator. */
  countsAsFailed(what: object): boolean;
}

/** Names as a practice file has them; what it does not know reads as it is. */
export function namesIn(practice: Practice): Names {
  const sites = new Map(practice.sites.map((site) => [site.id, site]));
  const people = new Map(
    practice.people.filter((each) => each.id !== null).map((each) => [each.id, each.name]),
  );
  const chat = new Map(practice.chat.map((each) => [each.room, each.sites]));
  return {
    zone: (site, room) => {
      const of = site ?? chat.get(room)?.[0];
      return (of === undefined ? undefined : sites.get(of)?.timezone) ?? practice.timezone;
    },
    site: (id) => sites.get(id)?.name ?? id,
    place: (site, room) => sites.get(site)?.rooms.find((each) => each.id === room)?.name ?? room,
    person: (id) => people.get(id) ?? id,
    siteOfRoom: (room) => {
      const served = chat.get(room);
      return served?.length === 1 ? (served[0] ?? null) : null;
    },
    countsAsFailed: (what) => {
      const { data } = fact.safeParse(what);
      return (
        data?.kind === 'load-finished' && data.outcome === 'passed' && countsAs(practice, data) === 'failed'
      );
    },
  };
}
