import { clockWords } from '../../answers/clock-words.ts';
import { roomOf, scannerOf, siteOf } from '../../practice/look-up.ts';
import type { Practice } from '../../practice/practice.ts';
import type { Instant } from '../../time/instant.ts';

/** A scanner as the practice names it; its id where the file does not have it. */
export function scannerName(practice: Practice, id: string): string {
  return scannerOf(practice, id)?.name ?? `scanner ${id}`;
}

/** The same at the head of a line. */
export function scannerNameFirst(practice: Practice, id: string): string {
  const name = scannerName(practice, id);
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
}

export function siteName(practice: Practice, id: string | null): string {
  return id === null ? 'an unknown place' : (siteOf(practice, id)?.name ?? id);
}

/** "Surgery 2, Quay Street", as much of it as is known; empty where nothing is. */
export function placeWords(practice: Practice, site: string | null, room: string | null): string {
  if (site === null) return '';
  const name = room === null ? undefined : roomOf(practice, site, room)?.name;
  return name === undefined ? siteName(practice, site) : `${name}, ${siteName(practice, site)}`;
}

/** The clock of a site, the practice's where the site is not known. */
export function zoneOfSite(practice: Practice, site: string | null): string {
  return (site === null ? undefined : siteOf(practice, site)?.timezone) ?? practice.timezone;
}

/** A time as it is said at that site: "10:30", "yesterday 17:00". */
export function timeAt(
  { practice, now }: { readonly practice: Practice; readonly now: Instant },
  site: string | null,
  at: Instant,
): string {
  return clockWords(at, now, zoneOfSite(practice, site));
}

/** "21.5 °C": always with the one decimal that readings carry. */
export function celsiusWords(celsius: number): string {
  return `${celsius.toFixed(1)} °C`;
}

/** "a", "a and b", "a, b and c". */
export function listWords(words: readonly string[], joiner = 'and'): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} ${joiner} ${last}`;
}
