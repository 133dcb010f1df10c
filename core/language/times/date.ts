import { calendarParts } from './calendar.ts';
import { countedAfter, gluedNumber, idBefore, mayFollow } from './guards.ts';
import { digitsAt, gluedAt, type Parsed, type Scan, textAt } from './scan.ts';
import type { Day, TimeContext } from './time-span.ts';
import { whichAt } from './which.ts';
import { BOLD_MONTHS, MONTH_WORDS, ORDINAL_WORDS } from './words.ts';

export type DateDay = Day & { sort: 'date' };

/** What a date is read against: the order of 3/11, and whether a cue or a weekday vouches for a doubtful one. */
export interface DateCue {
  readonly order: TimeContext['dates'];
  readonly cued: boolean;
}

/** A calendar date: "3 November", "Nov 14th 2026", "3/11", "2026-12-25", "24th", "the second of November". */
export function dateAt(scan: Scan, i: number, cue: DateCue): Parsed<DateDay> | null {
  const start = textAt(scan, i) === 'the' ? i + 1 : i;
  const written = monthLastAt(scan, start) ?? monthFirstAt(scan, start) ?? figuresAt(scan, start, cue);
  if (written !== null) {
    const parts = calendarParts(written.value, cue.order);
    return parts === null ? null : { value: { sort: 'date', ...parts }, next: written.next };
  }
  return dayAlone(scan, start, start > i || cue.cued);
}

/** Past an ordinal ending glued to the number before it, else the same place. */
function pastOrdinal(scan: Scan, i: number): number {
  return /^(st|nd|rd|th)$/.test(gluedAt(scan, i)) ? i + 1 : i;
}

function dayDigits(scan: Scan, i: number): boolean {
  const digits = digitsAt(scan, i);
  return digits.length > 0 && digits.length <= 2 && Number(digits) >= 1 && Number(digits) <= 31;
}

/** "3 November", "3rd of Nov 2026", "the second of November". */
function monthLastAt(scan: Scan, i: number): Parsed<string> | null {
  if (!dayDigits(scan, i) && !ORDINAL_WORDS.has(textAt(scan, i))) return null;
  const ordinal = dayDigits(scan, i) ? pastOrdinal(scan, i + 1) : i + 1;
  const of = textAt(scan, ordinal) === 'of' || textAt(scan, ordinal) === '-' ? ordinal + 1 : ordinal;
  const word = textAt(scan, of);
  if (!MONTH_WORDS.has(word) || idBefore(scan, i)) return null;
  if (ordinal === i + 1 && of === ordinal && ORDINAL_WORDS.has(textAt(scan, i))) return null;
  // "Tip 4 may fog": the verb needs an ordinal or "of" to be the month, or nothing after it.
  if (word === 'may' && ordinal === i + 1 && of === ordinal && !mayFollow(scan, of + 1)) return null;
  return dayMonth(scan, ORDINAL_WORDS.get(textAt(scan, i)) ?? digitsAt(scan, i), word, of + 1);
}

/** "November 14th", "Nov 14, 2026". */
function monthFirstAt(scan: Scan, i: number): Parsed<string> | null {
  const word = textAt(scan, i);
  if (!MONTH_WORDS.has(word)) return null;
  const the = textAt(scan, i + 1) === 'the' ? i + 2 : i + 1;
  if (!dayDigits(scan, the)) return null;
  const ordinal = pastOrdinal(scan, the + 1);
  const shy = !BOLD_MONTHS.has(word) && word.length > 3;
  if (ordinal === the + 1) {
    if (shy && !mayFollow(scan, ordinal)) return null;
    if (
      countedAfter(scan, ordinal) ||
      (/^[:.h]$/.test(gluedAt(scan, ordinal)) && gluedNumber(scan, ordinal + 1))
    )
      return null;
  }
  return dayMonth(scan, digitsAt(scan, the), word, ordinal);
}

/** The date as the library reads it without fail: it takes "Dec 24" for a month and a year. */
function dayMonth(scan: Scan, day: string | number, month: string, i: number): Parsed<string> {
  const at = textAt(scan, i) === ',' ? i + 1 : i;
  const year = digitsAt(scan, at);
  const said = /^20\d\d$/.test(year) && !countedAfter(scan, at + 1);
  return said ? { value: `${day} ${month} ${year}`, next: at + 1 } : { value: `${day} ${month}`, next: i };
}

/** "3/11", "3/11/26", "3.11.2026", "2026-12-25": two figures alone only where a cue vouches for them. */
function figuresAt(scan: Scan, i: number, cue: DateCue): Parsed<string> | null {
  const digits = digitsAt(scan, i);
  const mark = gluedAt(scan, i + 1);
  if (digits === '' || !/^[-/.]$/.test(mark) || !gluedNumber(scan, i + 2) || idBefore(scan, i)) return null;
  const second = digitsAt(scan, i + 2);
  const third = gluedAt(scan, i + 3) === mark && gluedNumber(scan, i + 4) ? digitsAt(scan, i + 4) : '';
  if (/^20\d\d$/.test(digits))
    return mark === '-' && second.length <= 2 && third !== '' ? joined(scan, i, i + 5) : null;
  if (digits.length > 2 || second.length > 2) return null;
  if (/^(20)?\d\d$/.test(third))
    return third.length === 4 || (cue.cued && mark === '/') ? joined(scan, i, i + 5) : null;
  if (mark !== '/' || third !== '' || countedAfter(scan, i + 3)) return null;
  const booked = i === 0 && textAt(scan, 3) === ':' && /^scans?$/.test(textAt(scan, 5));
  if (!cue.cued && !booked && !onlyDate(Number(digits), Number(second), cue.order)) return null;
  return joined(scan, i, i + 3);
}

/** "24/11" can be nothing but a date where one figure is no month and the other is; "2/5" may be two tips. */
function onlyDate(first: number, second: number, order: TimeContext['dates']): boolean {
  // "24/7" is always.
  if (first === 24 && second === 7) return false;
  const [day, month] = order === 'day-first' ? [first, second] : [second, first];
  return day > 12 && day <= 31 && month >= 1 && month <= 12;
}

function joined(scan: Scan, from: number, to: number): Parsed<string> {
  let text = '';
  for (let i = from; i < to; i++) text += textAt(scan, i);
  return { value: text, next: to };
}

/** "The 14th", "24th": a place in a row ("the 2nd scan") unless what follows lets it be a date. */
function dayAlone(scan: Scan, i: number, cued: boolean): Parsed<DateDay> | null {
  if (!dayDigits(scan, i) || idBefore(scan, i)) return null;
  const next = pastOrdinal(scan, i + 1);
  if (!cued && !vouched(scan, i, next)) return null;
  if (next === i + 1 || !(dateMayEnd(scan, next) || textAt(scan, next) === 'of')) return null;
  if (textAt(scan, next) === 'of' && textAt(scan, whichAt(scan, next + 1).next) !== 'month') return null;
  const day = Number(digitsAt(scan, i));
  const of = textAt(scan, next) === 'of' ? whichAt(scan, next + 1) : null;
  if (of !== null && of.value !== 'plain' && textAt(scan, of.next) === 'month')
    return { value: { sort: 'date', day, monthOffset: MONTH_OFFSETS[of.value] }, next: of.next + 1 };
  return { value: { sort: 'date', day }, next };
}

/** "Calibrated 23rd at 10", "wiped it 23rd": with no cue a small ordinal is a place in a row. */
function vouched(scan: Scan, i: number, next: number): boolean {
  if (textAt(scan, next) === 'at') return digitsAt(scan, next + 1) !== '';
  const token = scan.tokens[next];
  return Number(digitsAt(scan, i)) >= 10 && (token === undefined || token.kind === 'mark');
}

const MONTH_OFFSETS = { last: -1, this: 0, next: 1 };

const AFTER_DATE = new Set(
  (
    'and or to till until til thru through at on in from for by before after we i it the is was are were will please pls ' +
    "thanks inclusive onwards we're we'll closed open off only morning afternoon & with 's this next that they came has had positive negative passed failed"
  ).split(' '),
);

export function dateMayEnd(scan: Scan, i: number): boolean {
  const token = scan.tokens[i];
  return (
    token === undefined || token.kind === 'mark' || AFTER_DATE.has(token.text) || MONTH_WORDS.has(token.text)
  );
}
