import { type LocalDate, minutesOf, weekdayOf } from '../../time/zone.ts';
import type { TimeContext } from './time-span.ts';

/** A stretch of one local day in minutes after midnight. */
export interface Minutes {
  readonly from: number;
  readonly to: number;
}

/** First opening to last closing of the note's site on that date; `null` where it is closed or its hours are not known. */
export function openMinutes(date: LocalDate, context: TimeContext): Minutes | null {
  const { hours } = context;
  if (hours === null || hours.closed.includes(date)) return null;
  const spans = hours.hours[weekdayOf(date)];
  const first = spans[0];
  const last = spans.at(-1);
  if (first === undefined || last === undefined) return null;
  return { from: minutesOf(first.open), to: minutesOf(last.shut) };
}

/** Where the hours have no break to tell: noon to one (assumed). */
const LUNCH: Minutes = { from: 720, to: 780 };

/** The break of that day's hours that lies around midday, else noon to one. */
export function lunchMinutes(date: LocalDate, context: TimeContext): Minutes {
  const { hours } = context;
  if (hours === null || hours.closed.includes(date)) return LUNCH;
  const spans = hours.hours[weekdayOf(date)];
  for (let i = 1; i < spans.length; i++) {
    const before = spans[i - 1];
    const after = spans[i];
    if (before === undefined || after === undefined) continue;
    const gap = { from: minutesOf(before.shut), to: minutesOf(after.open) };
    if (gap.from >= 660 && gap.to <= 900) return gap;
  }
  return LUNCH;
}

/** Working day of a site that is shut or whose hours are not known, 07:00 to 19:00 (assumed). */
const WORKING: Minutes = { from: 420, to: 1140 };
/** People come before opening and stay after closing. */
const MARGIN = 60;

/** How likely work is at that minute of that date: 0 open, 1 within an hour of it, 2 in working hours, 3 at night. */
export function rankOf(date: LocalDate, minute: number, context: TimeContext): 0 | 1 | 2 | 3 {
  const open = openMinutes(date, context);
  if (open !== null) {
    if (minute >= open.from && minute <= open.to) return 0;
    if (minute >= open.from - MARGIN && minute <= open.to + MARGIN) return 1;
  }
  return minute >= WORKING.from && minute <= WORKING.to ? 2 : 3;
}
