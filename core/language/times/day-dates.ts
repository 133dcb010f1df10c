import { addDays, type LocalDate, mondayOf } from '../../time/zone.ts';
import { dateOf, pickDate } from './pick-date.ts';
import type { Day, DayStretch } from './time-span.ts';

/** Back: the latest that has begun by today. Forward: the first that has not ended before today. */
export type Direction = -1 | 1;

/** First and last local date of a day or a longer stretch as said. */
export function datesOf(day: Day, today: LocalDate, direction: Direction): DayStretch {
  switch (day.sort) {
    case 'offset':
      return one(addDays(today, day.days));
    case 'weekday':
      return one(weekdayDate(day, today, direction));
    case 'date': {
      const { date, doubt } = pickDate(day, today, direction);
      return doubt === undefined ? one(date) : { from: date, to: date, doubt };
    }
    case 'week':
      return week(addDays(today, day.offset * 7));
    case 'week-of': {
      const { from, doubt } = datesOf(day.of, today, direction);
      return doubt === undefined ? week(from) : { ...week(from), doubt };
    }
    case 'weekend':
      return weekend(day.offset, today, direction);
    case 'month':
      return monthStretch(today, day.offset);
    case 'month-named':
      return namedMonth(day, today, direction);
    case 'year':
      return year(Number(today.slice(0, 4)) + day.offset);
    case 'year-named':
      return year(day.year);
    case 'run':
      return day.days < 0
        ? { from: addDays(today, day.days + 1), to: today }
        : { from: today, to: addDays(today, day.days - 1) };
  }
}

function one(date: LocalDate): DayStretch {
  return { from: date, to: date };
}

function week(date: LocalDate): DayStretch {
  const from = mondayOf(date);
  return { from, to: addDays(from, 6) };
}

/** A weekday named alone is never today: for today people say "today". Weeks run Monday to Sunday. */
function weekdayDate(day: Day & { sort: 'weekday' }, today: LocalDate, direction: Direction): LocalDate {
  const inThisWeek = addDays(mondayOf(today), day.weekday - 1);
  if (day.inWeek) return addDays(inThisWeek, day.weeks * 7);
  if (day.which === 'next') return addDays(inThisWeek, 7);
  if (day.which === 'last') return inThisWeek < today ? inThisWeek : addDays(inThisWeek, -7);
  if (day.which === 'this') return direction > 0 && inThisWeek < today ? addDays(inThisWeek, 7) : inThisWeek;
  if (direction < 0) return inThisWeek <= today ? inThisWeek : addDays(inThisWeek, -7);
  const coming = inThisWeek > today ? inThisWeek : addDays(inThisWeek, 7);
  return addDays(coming, day.weeks * 7);
}

/** Saturday and Sunday; on one of them the weekend is the one that runs. */
function weekend(offset: number, today: LocalDate, direction: Direction): DayStretch {
  const saturday = addDays(mondayOf(today), 5);
  const running = today >= saturday;
  let shift = offset;
  if (direction < 0 && offset === 0 && !running) shift = -1;
  const from = addDays(saturday, shift * 7);
  return { from, to: addDays(from, 1) };
}

function monthStretch(today: LocalDate, offset: number): DayStretch {
  const index = Number(today.slice(0, 4)) * 12 + Number(today.slice(5, 7)) - 1 + offset;
  return month(Math.floor(index / 12), (index % 12) + 1);
}

function namedMonth(day: Day & { sort: 'month-named' }, today: LocalDate, direction: Direction): DayStretch {
  if (day.year !== undefined) return month(day.year, day.month);
  const thisYear = Number(today.slice(0, 4));
  const thisMonth = Number(today.slice(5, 7));
  if (day.which === 'last') return month(day.month < thisMonth ? thisYear : thisYear - 1, day.month);
  if (day.which === 'next') return month(day.month > thisMonth ? thisYear : thisYear + 1, day.month);
  if (direction < 0) return month(day.month <= thisMonth ? thisYear : thisYear - 1, day.month);
  return month(day.month >= thisMonth ? thisYear : thisYear + 1, day.month);
}

function month(inYear: number, number: number): DayStretch {
  const from = dateOf(inYear, number, 1) ?? `${inYear}-01-01`;
  const next = (number === 12 ? dateOf(inYear + 1, 1, 1) : dateOf(inYear, number + 1, 1)) ?? from;
  return { from, to: addDays(next, -1) };
}

function year(number: number): DayStretch {
  return { from: `${number}-01-01`, to: `${number}-12-31` };
}
