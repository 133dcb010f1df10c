import { siteOf } from '../practice/look-up.ts';
import type { Practice } from '../practice/practice.ts';
import type { LocalDate } from '../time/zone.ts';
import { spanWords } from '../words/span-words.ts';

/** The stretch that is asked about, and the site where one is named: "October 2026, Quay Street". */
export function spanOfAsk(
  practice: Practice,
  { from, to, site }: { readonly from: LocalDate; readonly to: LocalDate; readonly site?: string },
): string {
  return spanWords(from, to) + (site === undefined ? '' : `, ${siteOf(practice, site)?.name ?? site}`);
}
