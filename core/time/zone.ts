import type { Weekday } from '../practice/practice.ts';
import { DAY, type Instant, MINUTE, SECOND } from './instant.ts';
import { dateOfDayNumber, dayNumber, type LocalDate, weekdayOf } from './local-date.ts';
import { isLocalTime, type LocalTime, minutesOf, timeOfMinutes } from './local-time.ts';
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
export { isZone } from './offsets.ts';

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
  const wall = wallOf(date, time);
  // No zone is a whole day from UTC, so these two instants lie surely before and after the one that is sought.
  const before = offsetAt(wall - DAY, zone);
  if (offsetAt(wall - before, zone) === before) return wall - before;
  const after = offsetAt(wall + DAY, zone);
  if (offsetAt(wall - after, zone) === after) return wall - after;
  return wall - before;
}

/** Times by how they are written, in milliseconds: there are 1,440. */
const times = new Map<LocalTime, number>();
/** Midnights by how their dates are written, in milliseconds, as if it were UTC. */
const midnights = new Map<LocalDate, number>();
const MOST_KEPT = 10_000;

/** That date and time as if it were UTC. Both are looked at once and then known: rules ask for the same few all day. */
function wallOf(date: LocalDate, time: LocalTime): number {
  const midnight = midnights.get(date);
  const ms = times.get(time);
  if (midnight !== undefined && ms !== undefined) return midnight + ms;
  // The shape is looked at first: Date.parse makes an instant of almost any text.
  if (!/^\d{4}-\d\d-\d\d$/.test(date) || !isLocalTime(time))
    throw new RangeError(`not a local date and time: ${date} ${time}`);
  const wall = [dayNumber(date) * DAY, minutesOf(time) * MINUTE] as const;
  if (midnights.size >= MOST_KEPT) midnights.clear();
  midnights.set(date, wall[0]);
  times.set(time, wall[1]);
  return wall[0] + wall[1];
}

/** Every time of a day by its minute. */
const TIMES: readonly LocalTime[] = Array.from({ length: 1440 }, (_, minute) => timeOfMinutes(minute));

/** What the calendar and the clock on that zone's wall show. Throws RangeError on an unknown zone. */
export function toLocal(instant: Instant, zone: string): LocalMoment {
  const wall = instant + offsetAt(instant, zone);
  const day = Math.floor(wall / DAY);
  const date = dateOfDayNumber(day);
  const minute = Math.floor((wall - day * DAY) / MINUTE);
  return {
    date,
    time: TIMES[minute] ?? timeOfMinutes(minute),
    second: Math.floor((wall - day * DAY - minute * MINUTE) / SECOND),
    weekday: weekdayOf(date),
  };
}

/** The local date alone. */
export function localDateOf(instant: Instant, zone: string): LocalDate {
  return dateOfDayNumber(Math.floor((instant + offsetAt(instant, zone)) / DAY));
}

/** The first instant of a local date: where midnight is skipped by a clock change, the first there is. */
export function startOfDay(date: LocalDate, zone: string): Instant {
  let first = toInstant(date, '00:00', zone);
  if (toLocal(first, zone).time === '00:00') return first;
  // Midnight is skipped; the gap may have begun before it, so step back to the gap's end.
  while (localDateOf(first - MINUTE, zone) === date) first -= MINUTE;
  return first;
}
