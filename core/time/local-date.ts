import type { Weekday } from '../practice/practice.ts';
import { DAY } from './instant.ts';

/** A date on a site's own calendar, `2026-11-23`. Sorts as text. */
export type LocalDate = string;

/** Monday first: weeks run Monday to Sunday. */
export const WEEKDAYS: readonly Weekday[] = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];

/** Rules ask for the same few hundred dates at every look; reading and writing one costs half a microsecond. */
const MOST_KEPT = 10_000;
const numbers = new Map<LocalDate, number>();
const dates = new Map<number, LocalDate>();

/** Days since 1970-01-01 on the same calendar. Throws RangeError on a text that is not a date of the calendar. */
export function dayNumber(date: LocalDate): number {
  const known = numbers.get(date);
  if (known !== undefined) return known;
  const instant = Date.parse(`${date}T00:00:00Z`);
  if (Number.isNaN(instant)) throw new RangeError(`not a date: ${date}`);
  if (numbers.size >= MOST_KEPT) numbers.clear();
  numbers.set(date, instant / DAY);
  return instant / DAY;
}

/** The date that many days after 1970-01-01. */
export function dateOfDayNumber(day: number): LocalDate {
  const known = dates.get(day);
  if (known !== undefined) return known;
  const date = new Date(day * DAY).toISOString().slice(0, 10);
  if (dates.size >= MOST_KEPT) dates.clear();
  dates.set(day, date);
  return date;
}

/** True for a real date written `2026-11-23`; 2026-02-30 is not one. */
export function isLocalDate(text: string): boolean {
  if (!/^\d{4}-\d\d-\d\d$/.test(text)) return false;
  const instant = Date.parse(`${text}T00:00:00Z`);
  return !Number.isNaN(instant) && new Date(instant).toISOString().startsWith(text);
}

/** The date `days` later (earlier where negative). */
export function addDays(date: LocalDate, days: number): LocalDate {
  return dateOfDayNumber(dayNumber(date) + days);
}

/** Days from the first date to the second: 1 from a day to the next, negative backwards. */
export function daysBetween(from: LocalDate, to: LocalDate): number {
  return dayNumber(to) - dayNumber(from);
}

/** 0 for Monday to 6 for Sunday. 1970-01-01 was a Thursday. */
function weekdayIndex(date: LocalDate): number {
  return (((dayNumber(date) + 3) % 7) + 7) % 7;
}

export function weekdayOf(date: LocalDate): Weekday {
  return WEEKDAYS[weekdayIndex(date)] ?? 'mon';
}

/** The Monday of that date's week: the date itself where it is one. */
export function mondayOf(date: LocalDate): LocalDate {
  return addDays(date, -weekdayIndex(date));
}

/**
 * The same day that many months on (earlier where negative); where the month has no such day, its last: 31 January and
 * a month is 28 February, so no shelf life runs longer than it was given.
 */
export function addMonths(date: LocalDate, months: number): LocalDate {
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
  const count = year * 12 + month - 1 + months;
  const first = `${String(Math.floor(count / 12)).padStart(4, '0')}-${String((count % 12) + 1).padStart(2, '0')}`;
  for (let last = day; last > 28; last--) if (isLocalDate(`${first}-${last}`)) return `${first}-${last}`;
  return `${first}-${String(Math.min(day, 28)).padStart(2, '0')}`;
}
