import { type DateCue, dateAt } from './date.ts';
import { mayFollow } from './guards.ts';
import { longerAt } from './longer.ts';
import { meanings, phraseAt, phraseEnd, phraseTable } from './phrases.ts';
import { digitsAt, gluedAt, type Parsed, type Scan, textAt } from './scan.ts';
import type { Day } from './time-span.ts';
import { type WhichWord, whichAt } from './which.ts';
import { FEASTS, RELATIVE_DAYS, SHY_WEEKDAYS, WEEKDAY_WORDS } from './words.ts';

type Weekday = Day & { sort: 'weekday' };

/** A day as said: relative, a weekday, a date, a named feast, or a longer stretch (week, month). */
export function dayAt(scan: Scan, i: number, cue: DateCue): Parsed<Day> | null {
  const found =
    relativeAt(scan, i) ??
    weekdayAt(scan, i, cue) ??
    dateAt(scan, i, cue) ??
    longerAt(scan, i, cue) ??
    feastAt(scan, i);
  if (found === null) return null;
  // "Monday's BI", "October's record".
  return textAt(scan, found.next) === "'s" ? { value: found.value, next: found.next + 1 } : found;
}

function relativeAt(scan: Scan, i: number): Parsed<Day> | null {
  const days = RELATIVE_DAYS.get(textAt(scan, i));
  if (days !== undefined) return offset(days, i + 1);
  const digit = digitsAt(scan, i);
  // "2moro" comes apart into a number and a word.
  if (digit === '2' && /^(moro|morrow|mro|mo)$/.test(textAt(scan, i + 1))) return offset(1, i + 2);
  if (digit === '2' && textAt(scan, i + 1) === 'day' && scan.tokens[i + 1]?.spaced === false)
    return offset(0, i + 2);
  const other = phraseAt(scan, textAt(scan, i) === 'the' ? i + 1 : i, OTHER_DAYS);
  return other === null ? null : offset(other.value, other.next);
}

const OTHER_DAYS = meanings<number>([
  [-2, 'day before yesterday'],
  [2, 'day after tomorrow'],
]);

function offset(days: number, next: number): Parsed<Day> {
  return { value: { sort: 'offset', days }, next };
}

/** "Thursday", "last Thursday", "Thursday week", "Thursday next week", "a week on Thursday", "Mon 14th". */
function weekdayAt(scan: Scan, i: number, cue: DateCue): Parsed<Day> | null {
  const ahead = weekOnAt(scan, i);
  if (ahead !== null) return ahead;
  const which = whichAt(scan, i);
  const word = textAt(scan, which.next);
  const weekday = WEEKDAY_WORDS.get(word);
  if (weekday === undefined) return word === 'week' ? weekFirst(scan, which) : null;
  const next = which.next + 1;
  if (SHY_WEEKDAYS.has(word) && which.next === i && !cue.cued && !shyVouched(scan, next)) return null;
  const dotted =
    textAt(scan, next) === '.' && word.length < 5 && digitsAt(scan, next + 1) !== '' ? next + 1 : next;
  const dated = which.value === 'plain' ? datedAt(scan, dotted, weekday, cue) : null;
  if (dated !== null) return dated;
  return withWeek(scan, { sort: 'weekday', weekday, which: which.value, weeks: 0, inWeek: false }, next);
}

/** "Last week Friday", "next week on Thursday". */
function weekFirst(scan: Scan, which: Parsed<WhichWord>): Parsed<Day> | null {
  const at = textAt(scan, which.next + 1) === 'on' ? which.next + 2 : which.next + 1;
  const weekday = WEEKDAY_WORDS.get(textAt(scan, at));
  if (weekday === undefined || which.value === 'plain') return null;
  const weeks = which.value === 'last' ? -1 : which.value === 'next' ? 1 : 0;
  return { value: { sort: 'weekday', weekday, which: 'plain', weeks, inWeek: true }, next: at + 1 };
}

/** What after "sat" or "sun" shows that the day is meant. */
function shyVouched(scan: Scan, i: number): boolean {
  if (
    /^(morning|afternoon|am|pm|arvo|eve|evening|night|-|till|til|until|to|next|week|last|the|at|scans|bookings|clinic|list|appointments)$/.test(
      textAt(scan, i),
    )
  )
    return textAt(scan, i) !== 'at' && textAt(scan, i) !== 'the' ? true : /^\d/.test(textAt(scan, i + 1));
  return digitsAt(scan, i) !== '';
}

/** "Mon 14th", "Monday the 3rd of November", "Mon 3/11", "Mon 14". */
function datedAt(scan: Scan, i: number, weekday: number, cue: DateCue): Parsed<Day> | null {
  const at = textAt(scan, i) === ',' ? i + 1 : i;
  const date = dateAt(scan, at, { order: cue.order, cued: true });
  if (date !== null && (at === i || date.value.month !== undefined))
    return { value: { ...date.value, weekday }, next: date.next };
  const day = Number(digitsAt(scan, i));
  // "Sat 28th 9-1": beside a weekday the ordinal needs no more.
  const ordinal = day >= 1 && day <= 31 && /^(st|nd|rd|th)$/.test(gluedAt(scan, i + 1));
  if (at === i && ordinal && digitsAt(scan, i + 2) !== '')
    return { value: { sort: 'date', day, weekday }, next: i + 2 };
  // A bare number from 13 on can be no hour.
  if (at === i && day >= 13 && day <= 31 && mayFollow(scan, i + 1) && !/^[.:/-]$/.test(textAt(scan, i + 1)))
    return { value: { sort: 'date', day, weekday }, next: i + 1 };
  return null;
}

/** "A week on Thursday", "week on Thursday". */
function weekOnAt(scan: Scan, i: number): Parsed<Day> | null {
  const start = textAt(scan, i) === 'a' ? i + 1 : i;
  if (textAt(scan, start) !== 'week' || textAt(scan, start + 1) !== 'on') return null;
  const next = start + 2;
  const weekday = WEEKDAY_WORDS.get(textAt(scan, next));
  if (weekday === undefined) return null;
  return { value: { sort: 'weekday', weekday, which: 'plain', weeks: 1, inWeek: false }, next: next + 1 };
}

const LAST_WEEK = phraseTable('last week | of last week | , last week');
const NEXT_WEEK = phraseTable('next week | of next week | , next week');
const THIS_WEEK = phraseTable('this week | of this week');
const GONE = phraseTable('just gone | gone | last | just past');

function withWeek(scan: Scan, day: Weekday, next: number): Parsed<Day> {
  if (textAt(scan, next) === 'week') return { value: { ...day, weeks: 1 }, next: next + 1 };
  const last = phraseEnd(scan, next, LAST_WEEK);
  if (last > 0) return { value: { ...day, weeks: -1, inWeek: true }, next: last };
  const after = phraseEnd(scan, next, NEXT_WEEK);
  if (after > 0) return { value: { ...day, weeks: 1, inWeek: true }, next: after };
  const same = phraseEnd(scan, next, THIS_WEEK);
  if (same > 0) return { value: { ...day, weeks: 0, inWeek: true }, next: same };
  const gone = phraseEnd(scan, next, GONE);
  if (gone > 0 && day.which === 'plain') return { value: { ...day, which: 'last' }, next: gone };
  return { value: day, next };
}

function feastAt(scan: Scan, i: number): Parsed<Day> | null {
  const text = textAt(scan, i);
  if (text !== 'christmas' && text !== 'xmas' && text !== 'boxing' && text !== 'new') return null;
  for (let length = 4; length >= 2; length--) {
    let phrase = text;
    for (let at = i + 1; at < i + length; at++)
      phrase += (scan.tokens[at]?.spaced === false ? '' : ' ') + textAt(scan, at);
    const date = FEASTS.get(phrase);
    if (date !== undefined) return { value: { sort: 'date', ...date }, next: i + length };
  }
  return null;
}
