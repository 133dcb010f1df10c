import { ruleValue } from '../../defaults/rule-value.ts';
import { siteOf } from '../../practice/look-up.ts';
import type { Site } from '../../practice/practice.ts';
import { type Instant, MINUTE } from '../../time/instant.ts';
import { firstOpening, lastClosing, nextOpenDay } from '../../time/opening.ts';
import type { LocalDate } from '../../time/zone.ts';
import { today } from '../clock.ts';
import type { View } from '../matter.ts';
import { changesOf } from '../quiet.ts';
import { remembered } from '../watch/remembered.ts';

/** The posts of one open day of a site. */
export interface DayTimes {
  readonly date: LocalDate;
  /** A while before the day's first opening. */
  readonly brief: Instant;
  /** A while before the day's last closing. */
  readonly closeOut: Instant;
  readonly open: Instant;
  readonly shut: Instant;
}

type TimesView = Pick<View, 'practice' | 'state'>;

/** The times of that date; `null` where the site is closed on it. A break in the hours changes nothing. */
export function dayTimes({ practice, state }: TimesView, site: Site, date: LocalDate): DayTimes | null {
  const changes = changesOf(state, site.id);
  const open = firstOpening(site, date, changes);
  const shut = lastClosing(site, date, changes);
  if (open === null || shut === null) return null;
  const at = { site: site.id };
  const brief = open - ruleValue(practice, 'briefBeforeMinutes', at) * MINUTE;
  const closeOut = Math.max(open, shut - ruleValue(practice, 'closeOutBeforeMinutes', at) * MINUTE);
  return { date, brief, closeOut, open, shut };
}

/** The site's days from today on: today where it is open, and the next two open ones. */
export const daysAhead: (view: View, siteId: string) => readonly DayTimes[] = remembered(findDaysAhead);

function findDaysAhead(view: View, siteId: string): readonly DayTimes[] {
  const site = siteOf(view.practice, siteId);
  if (site === undefined) return [];
  const changes = changesOf(view.state, siteId);
  const date = today(view, site.timezone);
  const first = nextOpenDay(site, date, changes);
  const second = first === null ? null : nextOpenDay(site, first, changes);
  const dates = [date, first, second].filter((date) => date !== null);
  return dates.map((each) => dayTimes(view, site, each)).filter((times) => times !== null);
}
