import type { Practice } from '../practice/practice.ts';
import { DAY, type Instant } from '../time/instant.ts';
import { dateOfDayNumber } from '../time/local-date.ts';
import { offsetAt } from '../time/offsets.ts';

/** IANA zone of a site; the practice's where the site is not known. */
export function zoneOf(practice: Practice, site: string | null): string {
  return practice.sites.find((each) => each.id === site)?.timezone ?? practice.timezone;
}

/** The date on that site's calendar. The fold asks for it at every scan, mostly of one day: texts of days are kept. */
export function dateAt(practice: Practice, site: string | null, at: Instant): string {
  const day = Math.floor((at + offsetAt(at, zoneOf(practice, site))) / DAY);
  let date = dates.get(day);
  if (date === undefined) {
    date = dateOfDayNumber(day);
    dates.set(day, date);
  }
  return date;
}

const dates = new Map<number, string>();

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
