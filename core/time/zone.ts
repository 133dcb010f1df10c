import type { Weekday } from '../practice/practice.ts';
import { DAY, type Instant, MINUTE } from './instant.ts';
import { type LocalDate, weekdayOf } from './local-date.ts';
import { isLocalTime, type LocalTime } from './local-time.ts';
import { offsetAt } from './offsets.ts';

export {
  addDays,
  addMonths,
  daysBetween,
  isLocalDate,
  type LocalDate,
  mondayOf,
  WEEKDAYS,
  weekdayOf,
} from './local-date.ts';
export { isLocalTime, type LocalTime, minutesOf, timeOfMinutes } from './local-time.ts';
export { isZone, zoneNamed } from './offsets.ts';

/** An instant as a site's calendar and clock show it. */
export interface LocalMoment {
  readonly date: LocalDate;
  readonly time: LocalTime;
  readonly second: number;
  readonly weekday: Weekday;
}

/**
 * The instant at which a zone's clocks show that date and time. RFC 5545 §3.3.5: a time that occurs twice is the
 * first of the two; one that a clock change skips is read with the offset before the gap, so it falls that much later.
 * Throws RangeError on a text that is no date or time, or an unknown zone.
 */
export function toInstant(date: LocalDate, time: LocalTime, zone: string): Instant {
  // The shape is looked at first: Date.parse makes an instant of almost any text.
  const wall = /^\d{4}-\d\d-\d\d$/.test(date) ? Date.parse(`${date}T${time}:00Z`) : Number.NaN;
  if (Number.isNaN(wall) || !isLocalTime(time))
    throw new RangeError(`not a local date and time: ${date} ${time}`);
  // No zone is a whole day from UTC, so these two instants lie surely before and after the one that is sought.
  const before = offsetAt(wall - DAY, zone);
  if (offsetAt(wall - before, zone) === before) return wall - before;
  const after = offsetAt(wall + DAY, zone);
  if (offsetAt(wall - after, zone) === after) return wall - after;
  return wall - before;
}

/** What the calendar and the clock on that zone's wall show. Throws RangeError on an unknown zone. */
export function toLocal(instant: Instant, zone: string): LocalMoment {
  const shown = new Date(instant + offsetAt(instant, zone)).toISOString();
  const date = shown.slice(0, 10);
  return {
    date,
    time: shown.slice(11, 16),
    second: Number(shown.slice(17, 19)),
    weekday: weekdayOf(date),
  };
}

/** The local date alone. */
export function localDateOf(instant: Instant, zone: string): LocalDate {
  return new Date(instant + offsetAt(instant, zone)).toISOString().slice(0, 10);
}

/** The first instant of a local date: where midnight is skipped by a clock change, the first there is. */
export function startOfDay(date: LocalDate, zone: string): Instant {
  let first = toInstant(date, '00:00', zone);
  if (toLocal(first, zone).time === '00:00') return first;
  // Midnight is skipped; the gap may have begun before it, so step back to the gap's end.
  while (localDateOf(first - MINUTE, zone) === date) first -= MINUTE;
  return first;
}
