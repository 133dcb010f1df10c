import type { Mark } from '../record/state.ts';
import { zoneOf } from '../record/where.ts';
import type { View } from '../rules/matter.ts';
import { clockWords } from '../words/clock-words.ts';
import { nameOf } from '../words/people-words.ts';

/** "Mon 10:40 (Rosa)", on that site's clock; with no name where the program itself noted it. */
export function whenBy(mark: Mark, site: string | null, view: View): string {
  const by = mark.by === null ? '' : ` (${nameOf(view.practice, mark.by)})`;
  return clockWords(mark.at, view.now, zoneOf(view.practice, site)) + by;
}
