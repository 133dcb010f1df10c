import { ruleValue } from '../../defaults/rule-value.ts';
import { siteOf } from '../../practice/look-up.ts';
import type { Site } from '../../practice/practice.ts';
import { type Instant, MINUTE } from '../../time/instant.ts';
import { firstOpening, lastClosing, nextOpenDay } from '../../time/opening.ts';
import { type LocalDate, localDateOf } from '../../time/zone.ts';
import { OncePerLook } from '../look.ts';
import type { View } from '../matter.ts';
import { changesOf } from '../quiet.ts';

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
export function daysAhead(view: View, siteId: string): readonly DayTimes[] {
  return ahead.get(view, siteId, () => findDaysAhead(view, siteId));
}

const ahead = new OncePerLook<readonly DayTimes[]>();

function findDaysAhead(view: View, siteId: string): readonly DayTimes[] {
  const site = siteOf(view.practice, siteId);
  if (site === undefined) return [];
  const changes = changesOf(view.state, siteId);
  const today = localDateOf(view.now, site.timezone);
  const first = nextOpenDay(site, today, changes);
  const second = first === null ? null : nextOpenDay(site, first, changes);
  const dates = [today, first, second].filter((date) => date !== null);
  return dates.map((date) => dayTimes(view, site, date)).filter((times) => times !== null);
}
