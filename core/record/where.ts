import type { Practice } from '../practice/practice.ts';
import type { Instant } from '../time/instant.ts';
import { localDateOf } from '../time/zone.ts';

/** IANA zone of a site; the practice's where the site is not known. */
export function zoneOf(practice: Practice, site: string | null): string {
  return practice.sites.find((each) => each.id === site)?.timezone ?? practice.timezone;
}

/** The date on that site's calendar. */
export function dateAt(practice: Practice, site: string | null, at: Instant): string {
  return localDateOf(at, zoneOf(practice, site));
}

/** Sites that a chat room serves; every site where the practice file gives it none. */
export function sitesOfRoom(practice: Practice, room: string): readonly string[] {
  const served = practice.chat.find((each) => each.room === room)?.sites;
  return served ?? practice.sites.map((each) => each.id);
}

/** The site that a note without one speaks of: the only one its chat room serves; `null` where there are several. */
export function siteOfRoom(practice: Practice, room: string): string | null {
  const served = sitesOfRoom(practice, room);
  return served.length === 1 ? (served[0] ?? null) : null;
}
