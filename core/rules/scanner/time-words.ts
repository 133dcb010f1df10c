import type { Practice } from '../../practice/practice.ts';
import { zoneOf } from '../../record/where.ts';
import type { Instant } from '../../time/instant.ts';
import { clockWords } from '../../words/clock-words.ts';

/** A time as it is said at that site: "10:30", "yesterday 17:00"; by the practice's clock where the site is not known. */
export function timeAt(
  { practice, now }: { readonly practice: Practice; readonly now: Instant },
  site: string | null,
  at: Instant,
): string {
  return clockWords(at, now, zoneOf(practice, site));
}

/** "21.5 °C": always with the one decimal that readings carry. */
export function celsiusWords(celsius: number): string {
  return `${celsius.toFixed(1)} °C`;
}
