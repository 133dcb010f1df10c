import { addDays, isLocalDate, type LocalDate, WEEKDAYS, weekdayOf } from '../../time/zone.ts';
import type { Day, Doubt } from './time-span.ts';

/** One of a set of dates that fit, with what had to be assumed. */
export interface Picked {
  readonly date: LocalDate;
  readonly doubt?: Doubt;
}

/** A day of the month alone is not further back than this. */
const RECENT = 62;

type DateDay = Day & { sort: 'date' };

/** Where a date with no year would lie further back than this, the year is more likely another. */
const FAR = 250;

/** The date meant, looking back from `today` (it included) or forward: the nearest that fits what was said. */
export function pickDate(day: DateDay, today: LocalDate, direction: -1 | 1): Picked {
  const all = occurrences(day, today, direction);
  const fitting = day.weekday === undefined ? all : all.filter((date) => isWeekday(date, day.weekday ?? 0));
  const date = fitting[0];
  if (date !== undefined && (direction > 0 || day.month !== undefined || date >= addDays(today, -RECENT)))
    return far(date, day, today) ? { date, doubt: 'far' } : { date };
  return { date: all[0] ?? today, doubt: 'contradiction' };
}

function far(date: LocalDate, day: DateDay, today: LocalDate): boolean {
  return day.year === undefined && date < addDays(today, -FAR);
}

function isWeekday(date: LocalDate, weekday: number): boolean {
  return weekdayOf(date) === WEEKDAYS[weekday - 1];
}

/** Nearest first; a few months or years of them, so that a weekday beside the date can choose among them. */
function occurrences(day: DateDay, today: LocalDate, direction: -1 | 1): LocalDate[] {
  if (day.month !== undefined && day.year !== undefined) {
    const date = dateOf(day.year, day.month, day.day);
    return date === null ? [] : [date];
  }
  const year = Number(today.slice(0, 4));
  const month = Number(today.slice(5, 7));
  if (day.monthOffset !== undefined) {
    const date = inMonth(year, month + day.monthOffset, day.day);
    return date === null ? [] : [date];
  }
  const found: LocalDate[] = [];
  // A 31st comes every other month at worst; what happened on "Mon 14th" was hardly months ago, what is planned may be.
  const tries = day.month !== undefined ? 2 : direction < 0 ? 3 : 4;
  for (let step = 0; step < tries; step++) {
    const date =
      day.month === undefined
        ? inMonth(year, month + step * direction, day.day)
        : dateOf(year + step * direction, day.month, day.day);
    if (date !== null && (direction < 0 ? date <= today : date >= today)) found.push(date);
  }
  return found;
}

function inMonth(year: number, month: number, day: number): LocalDate | null {
  const index = year * 12 + month - 1;
  return dateOf(Math.floor(index / 12), (((index % 12) + 12) % 12) + 1, day);
}

export function dateOf(year: number, month: number, day: number): LocalDate | null {
  const text = `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  return isLocalDate(text) ? text : null;
}
