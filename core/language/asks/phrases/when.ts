import { type LocalDate, localDateOf } from '../../../time/zone.ts';
import type { Clause } from '../../clause.ts';
import type { Said } from '../../frames/frame.ts';
import { timeContext, timeOf } from '../../roles/time.ts';
import { resolveDays } from '../../times/resolve-days.ts';
import { siteOf } from '../ask.ts';

/** Local dates, both included. */
export interface Days {
  readonly from: LocalDate;
  readonly to: LocalDate;
}

/** What said them, for "why?". */
export function daysSaid(c: Clause): Record<string, Said> {
  const said = timeOf(c)?.said;
  return said === undefined ? {} : { from: said, to: said };
}

/** The site that is said, for reading days by its calendar. */
function contextOf(c: Clause) {
  const { site } = siteOf(c);
  return timeContext(c, typeof site === 'string' ? site : null);
}

/** The local date of the note. */
export function todayOf(c: Clause): LocalDate {
  const { at, zone } = contextOf(c);
  return localDateOf(at, zone);
}

/** The days that a question looks back to; `null` where it says none. */
export function daysBack(c: Clause): Days | null {
  const time = timeOf(c);
  if (time === null) return null;
  const days = resolveDays(time.span, contextOf(c), 'back');
  return days === null ? null : { from: days.from, to: days.to };
}

/** True of "yesterday", "last week", and of what takes more than a day: it is asked of what was done. */
export function isPast(c: Clause): boolean {
  const days = daysBack(c);
  if (days === null) return false;
  const { span } = timeOf(c) ?? {};
  const [day] = span?.days ?? [];
  const plain = day?.first.sort === 'weekday' && day.first.which !== 'last';
  return days.from !== days.to || (days.to < todayOf(c) && !plain);
}
