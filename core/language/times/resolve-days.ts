import { type LocalDate, localDateOf } from '../../time/zone.ts';
import type { Direction } from './day-dates.ts';
import { rangeDates } from './day-list.ts';
import type { DayStretch, Doubt, TimeContext, TimeSpan } from './time-span.ts';

/**
 * The stretch of local dates a time speaks of, both included: "October", "last week" (Monday to Sunday), "since Monday"
 * (to today), "from 3/11 to 7/11". `back` for records and tests that were run, `forward` for what is to come.
 * `null` where no day was said.
 */
export function resolveDays(
  span: TimeSpan,
  context: TimeContext,
  direction: 'back' | 'forward',
): DayStretch | null {
  const today = localDateOf(context.at, context.zone);
  const way: Direction = direction === 'back' ? -1 : 1;
  const first = span.days[0];
  if (first === undefined) return partOfToday(span, today);
  let { from, to, doubt } = rangeDates(first, today, way);
  for (const more of span.days.slice(1)) {
    const next = rangeDates(more, today, way);
    if (next.from < from) from = next.from;
    if (next.to > to) to = next.to;
    doubt ??= next.doubt;
  }
  return bounded(span, { from, to }, today, way, doubt);
}

function partOfToday(span: TimeSpan, today: LocalDate): DayStretch | null {
  return span.part === undefined ? null : { from: today, to: today };
}

function bounded(
  span: TimeSpan,
  said: DayStretch,
  today: LocalDate,
  way: Direction,
  doubt: Doubt | undefined,
): DayStretch {
  let { from, to } = said;
  if (span.bound === 'since' && way < 0 && from <= today) to = today;
  if ((span.bound === 'until' || span.bound === 'by') && way > 0 && from >= today) from = today;
  // A record may be asked for however long ago.
  const other = doubt === 'far' ? undefined : doubt;
  const known = other ?? (way < 0 && from > today ? 'future' : undefined);
  return known === undefined ? { from, to } : { from, to, doubt: known };
}
