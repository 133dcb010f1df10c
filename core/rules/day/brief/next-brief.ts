import { type Instant, MINUTE } from '../../../time/instant.ts';
import { addDays, type LocalDate } from '../../../time/zone.ts';
import { hasCome } from '../../clock.ts';
import type { View } from '../../matter.ts';
import { remembered } from '../../watch/remembered.ts';
import { daysAhead } from '../day-times.ts';
import { ranBefore } from '../ran-before.ts';

/** Whoever starts the program this soon after a brief's time still gets that brief. */
const JUST_MISSED = 5 * MINUTE;

/** A closed stretch longer than this hides that there were briefs before it. */
const LOOK_BACK_DAYS = 21;

/** Key of the matter that is a site's brief of one of its dates. */
export function briefKey(site: string, date: LocalDate): string {
  return `brief|site:${site}|${date}`;
}

/**
 * The site's next brief that was not said yet. Today's stays until closing where the program was down at its time, not
 * where it was only started later. `null` where the site never opens.
 */
export const nextBrief: (view: View, site: string) => NextBrief | null = remembered(findNextBrief);

interface NextBrief {
  readonly date: LocalDate;
  readonly at: Instant;
}

function findNextBrief(view: View, site: string): NextBrief | null {
  for (const { date, brief, shut } of daysAhead(view, site)) {
    if (view.said.saidAt(briefKey(site, date), 'first') !== null || hasCome(view, shut + 1)) continue;
    if (hasCome(view, brief + JUST_MISSED + 1) && !wasThere(view, site, date, brief)) continue;
    return { date, at: brief };
  }
  return null;
}

/** The program was there at that time: an earlier brief was said, or something was noted. */
function wasThere(view: View, site: string, date: LocalDate, at: Instant): boolean {
  for (let back = 1; back <= LOOK_BACK_DAYS; back++)
    if (view.said.saidAt(briefKey(site, addDays(date, -back)), 'first') !== null) return true;
  return ranBefore(view, at);
}
