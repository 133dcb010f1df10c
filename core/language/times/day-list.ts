import { addDays, daysBetween, type LocalDate } from '../../time/zone.ts';
import { type Direction, datesOf } from './day-dates.ts';
import type { DayRange, DayStretch, Doubt } from './time-span.ts';

/** No stretch of closed days is longer than a year; a slip in a year must not make a list of thousands. */
const LONGEST = 366;

/** The dates of one range as said; a first day with no month takes it from the last ("24th to 2nd Jan"). */
export function rangeDates(range: DayRange, today: LocalDate, direction: Direction): DayStretch {
  const first = datesOf(range.first, today, direction);
  if (range.last === undefined) return first;
  return direction > 0
    ? forwardRange(range, range.last, first, today)
    : backRange(range, range.last, first, today);
}

function forwardRange(
  range: DayRange,
  last: NonNullable<DayRange['last']>,
  first: DayStretch,
  today: LocalDate,
): DayStretch {
  // A stretch that is under way: "24th to 2nd Jan" said on the 26th. Needs the month, else the next one is meant.
  const ending = datesOf(last, today, 1);
  const underWay = datesOf(range.first, ending.to, -1);
  const short = daysBetween(underWay.from, ending.to) < daysBetween(today, first.from);
  const dated = range.first.sort === 'date' && last.sort === 'date' && last.month !== undefined;
  const begins = underWay.from < today && dated && short ? underWay : first;
  // A week that was named counts from this one.
  const named = last.sort === 'weekday' && last.inWeek;
  const to = begins === underWay ? ending : datesOf(last, named ? today : begins.from, 1);
  const ends = range.first.sort === 'weekday' && to.to < begins.from ? { ...to, to: addDays(to.to, 7) } : to;
  return stretch(
    begins.from,
    sameWeekday(range, last) ? addDays(begins.from, 7) : ends.to,
    begins.doubt ?? to.doubt,
  );
}

function sameWeekday(range: DayRange, last: NonNullable<DayRange['last']>): boolean {
  return range.first.sort === 'weekday' && last.sort === 'weekday' && range.first.weekday === last.weekday;
}

function backRange(
  range: DayRange,
  last: NonNullable<DayRange['last']>,
  first: DayStretch,
  today: LocalDate,
): DayStretch {
  const to = datesOf(last, today, -1);
  const begins = first.from > to.to ? datesOf(range.first, to.to, -1) : first;
  return stretch(begins.from, to.to, begins.doubt ?? to.doubt);
}

function stretch(from: LocalDate, to: LocalDate, doubt: Doubt | undefined): DayStretch {
  const known = doubt ?? (to < from || daysBetween(from, to) > LONGEST ? 'contradiction' : undefined);
  return known === undefined ? { from, to } : { from, to: to < from ? from : to, doubt: known };
}

/** Every date of a stretch, at most a year of them. */
export function everyDate({ from, to }: DayStretch): LocalDate[] {
  const dates: LocalDate[] = [];
  const length = Math.min(daysBetween(from, to), LONGEST);
  for (let i = 0; i <= length; i++) dates.push(addDays(from, i));
  return dates;
}
