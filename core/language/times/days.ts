import { type DateCue, dateMayEnd } from './date.ts';
import { dayAt } from './day.ts';
import { digitsAt, gluedAt, type Parsed, type Scan, textAt } from './scan.ts';
import type { Day, DayRange } from './time-span.ts';
import { MONTH_WORDS } from './words.ts';

const TO: ReadonlySet<string> = new Set(['to', 'till', 'until', 'til', 'thru', 'through', '-', '--']);

/** Days in the order said: one, a stretch ("24th to 2nd Jan", "Mon-Wed"), or a list ("Thursday and Friday"). */
export function daysAt(scan: Scan, i: number, cue: DateCue, between: boolean): Parsed<DayRange[]> | null {
  const bare = bareListAt(scan, i, cue);
  const first = bare === null ? rangeAt(scan, i, cue, between) : null;
  const days = bare?.value ?? (first === null ? [] : [first.value]);
  if (days.length === 0) return null;
  let next = bare?.next ?? first?.next ?? i;
  while (days.length < 14) {
    const more = listedAt(scan, next, cue, days);
    if (more === null) break;
    days.push(more.value);
    next = more.next;
  }
  return { value: inOneWeek(days), next };
}

/** "Tues and Wed next week": the week said with the last is that of all, where none was said with another. */
function inOneWeek(days: readonly DayRange[]): DayRange[] {
  const last = days.at(-1)?.first;
  if (last?.sort !== 'weekday' || !last.inWeek) return [...days];
  const { inWeek, weeks } = last;
  return days.map((day) => {
    const { first } = day;
    const bare = first.sort === 'weekday' && first.which === 'plain' && first.weeks === 0 && !first.inWeek;
    return bare && day.last === undefined ? { first: { ...first, inWeek, weeks } } : day;
  });
}

/** "From Wednesday to Friday next week": both of that week. */
function inWeekOf(last: Day, first: Day): Day {
  if (last.sort !== 'weekday' || !last.inWeek || first.sort !== 'weekday' || first.inWeek) return first;
  const { inWeek, weeks } = last;
  return first.which === 'plain' && first.weeks === 0 && first.weekday < last.weekday
    ? { ...first, inWeek, weeks }
    : first;
}

function rangeAt(scan: Scan, i: number, cue: DateCue, between: boolean): Parsed<DayRange> | null {
  const bare = bareFirstAt(scan, i, cue, between);
  if (bare !== null) return bare;
  const first = dayAt(scan, i, cue);
  if (first === null) return null;
  const last = lastAt(scan, first.next, first.value, cue, between);
  return last === null
    ? { value: { first: first.value }, next: first.next }
    : { value: { first: inWeekOf(last.value, first.value), last: last.value }, next: last.next };
}

function pastTo(scan: Scan, i: number, between: boolean): number {
  const word = textAt(scan, i);
  if (between && (word === 'and' || word === '&')) return i + 1;
  if (!TO.has(word)) return -1;
  return textAt(scan, i + 1) === 'and' && textAt(scan, i + 2) === 'including' ? i + 3 : i + 1;
}

function lastAt(scan: Scan, i: number, first: Day, cue: DateCue, between: boolean): Parsed<Day> | null {
  const to = pastTo(scan, i, between);
  if (to < 0) return null;
  const day = dayAt(scan, to, { order: cue.order, cued: true });
  if (day !== null) return day.value.sort === 'year-named' && first.sort !== 'year-named' ? null : day;
  // "Dec 24 to 26": the month is said once.
  const digits = digitsAt(scan, to);
  const number = Number(digits);
  if (first.sort !== 'date' || first.month === undefined || digits === '' || digits.length > 2) return null;
  if (number <= first.day || number > 31 || !dateMayEnd(scan, to + 1) || /^[:.]$/.test(gluedAt(scan, to + 1)))
    return null;
  return { value: { sort: 'date', day: number, month: first.month }, next: to + 1 };
}

/** "24 to 26 Dec", "24-26 December", "3 and 7 November" after "between": the month comes with the second. */
function bareFirstAt(scan: Scan, i: number, cue: DateCue, between: boolean): Parsed<DayRange> | null {
  const start = textAt(scan, i) === 'the' ? i + 1 : i;
  const digits = digitsAt(scan, start);
  const day = Number(digits);
  if (digits === '' || digits.length > 2 || day < 1 || day > 31) return null;
  const to = pastTo(scan, pastOrdinal(scan, start + 1), between);
  if (to < 0) return null;
  const last = dayAt(scan, to, { order: cue.order, cued: true });
  if (last === null || last.value.sort !== 'date' || last.value.month === undefined || last.value.day <= day)
    return null;
  return { value: { first: { ...last.value, day }, last: last.value }, next: last.next };
}

function pastThe(scan: Scan, i: number): number {
  return textAt(scan, i) === 'the' ? i + 1 : i;
}

function pastOrdinal(scan: Scan, i: number): number {
  return /^(st|nd|rd|th)$/.test(gluedAt(scan, i)) ? i + 1 : i;
}

const AND: ReadonlySet<string> = new Set(['and', '&', ',', '+', '/', 'or']);

function pastAnd(scan: Scan, i: number): number {
  let next = i;
  while (next < i + 2 && AND.has(textAt(scan, next))) next++;
  return next;
}

/** A day of the month in figures that is nothing else. */
function plainDay(scan: Scan, i: number): number {
  const digits = digitsAt(scan, i);
  return digits === '' || digits.length > 2 || Number(digits) > 31 ? 0 : Number(digits);
}

/** "24, 25 and 26 Dec": days of the month that come before its name. */
function bareListAt(scan: Scan, i: number, cue: DateCue): Parsed<DayRange[]> | null {
  const days: number[] = [];
  let at = pastThe(scan, i);
  while (days.length < 14 && plainDay(scan, at) > (days.at(-1) ?? 0)) {
    const end = pastOrdinal(scan, at + 1);
    const next = pastAnd(scan, end);
    // "11/26" is one date, not the 11th and another.
    if (next === end || /^[/+]$/.test(gluedAt(scan, end))) break;
    days.push(plainDay(scan, at));
    at = pastThe(scan, next);
  }
  if (days.length === 0) return null;
  const last = dayAt(scan, at, { order: cue.order, cued: true });
  if (last === null || last.value.sort !== 'date' || last.value.month === undefined) return null;
  const { value } = last;
  if (value.day <= (days.at(-1) ?? 0)) return null;
  const all = [...days.map((day) => ({ first: { ...value, day } })), { first: value }];
  return { value: all, next: last.next };
}

/** True where the list so far is a month and days after it ("Dec 24, 25"). */
function monthFirst(scan: Scan, i: number): boolean {
  for (let at = i - 1; at >= Math.max(0, i - 40); at--) {
    if (MONTH_WORDS.has(textAt(scan, at))) return plainDay(scan, at - 1) === 0;
    if (plainDay(scan, at) === 0 && !AND.has(textAt(scan, at)) && !/^(st|nd|rd|th)$/.test(textAt(scan, at)))
      return false;
  }
  return false;
}

/** "Closed Thurs Fri": weekdays said side by side are a list. */
function weekdayBeside(
  scan: Scan,
  i: number,
  cue: DateCue,
  sofar: readonly DayRange[],
): Parsed<DayRange> | null {
  const before = sofar.at(-1);
  if (before?.first.sort !== 'weekday' || before.last !== undefined) return null;
  const more = dayAt(scan, i, cue);
  if (more?.value.sort !== 'weekday' || more.value.weekday === before.first.weekday) return null;
  return { value: { first: more.value }, next: more.next };
}

function listedAt(scan: Scan, i: number, cue: DateCue, sofar: readonly DayRange[]): Parsed<DayRange> | null {
  const next = pastAnd(scan, i);
  if (next === i) return weekdayBeside(scan, i, cue, sofar);
  const day = plainDay(scan, next);
  const before = sofar.at(-1);
  // "Dec 24, 25 and 26": the month was said first.
  if (
    day > 0 &&
    before?.first.sort === 'date' &&
    before.last === undefined &&
    before.first.month !== undefined
  )
    if (day > before.first.day && dateMayEnd(scan, next + 1) && monthFirst(scan, i))
      return { value: { first: { ...before.first, day } }, next: next + 1 };
  const more = rangeAt(scan, next, { order: cue.order, cued: true }, false);
  if (more === null || !sofar.every(({ first }) => mixes(first, more.value.first))) return null;
  return more;
}

/** Days that people list together; a weekday after "yesterday," begins another matter. */
function mixes(a: Day, b: Day): boolean {
  const ahead = (day: Day) => day.sort === 'offset' && day.days >= 0;
  if (ahead(a) && ahead(b)) return true;
  if (a.sort === 'date' && b.sort === 'date') return true;
  if (a.sort === 'month-named' && b.sort === 'month-named') return true;
  return a.sort === 'weekday' && b.sort === 'weekday';
}
