import type { Instant } from '../../../time/instant.ts';
import { MINUTE } from '../../../time/instant.ts';
import type { LocalDate } from '../../../time/zone.ts';
import type { View } from '../../matter.ts';
import { daysAhead } from '../day-times.ts';
import { ranBefore } from '../ran-before.ts';

/** Whoever starts the program this soon after a brief's time still gets that brief. */
const JUST_MISSED = 5 * MINUTE;

/** Key of the matter that is a site's brief of one of its dates. */
export function briefKey(site: string, date: LocalDate): string {
  return `brief|site:${site}|${date}`;
}

/**
 * The site's next brief that was not said yet. Today's stays until closing where the program was down at its time, not
 * where it was only started later. `null` where the site never opens.
 */
export function nextBrief(
  view: View,
  site: string,
): { readonly date: LocalDate; readonly at: Instant } | null {
  for (const { date, brief, shut } of daysAhead(view, site)) {
    if (view.said.saidAt(briefKey(site, date), 'first') !== null || shut < view.now) continue;
    if (brief < view.now - JUST_MISSED && !ranBefore(view, brief)) continue;
    return { date, at: brief };
  }
  return null;
}
