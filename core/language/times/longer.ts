import { type DateCue, dateAt } from './date.ts';
import { phraseEnd, phraseTable } from './phrases.ts';
import { digitsAt, numberAt, type Parsed, type Scan, textAt } from './scan.ts';
import type { Day } from './time-span.ts';
import { type WhichWord, whichAt } from './which.ts';
import { BOLD_MONTHS, MONTH_WORDS } from './words.ts';

const OFFSETS = { last: -1, this: 0, plain: 0, next: 1 };
const WEEK_OF = phraseTable(
  'week of | week commencing | week beginning | week starting | week from | w / c | wc | wk commencing',
);

/** A week, month, year, weekend or run of days: "last week", "October", "last October", "week of 3 Nov", "the last 7 days". */
export function longerAt(scan: Scan, i: number, cue: DateCue): Parsed<Day> | null {
  const text = textAt(scan, i);
  const which = whichAt(scan, i);
  if (
    which.next === i &&
    !/^(the|all|week|w|wc|wk|end|start|beginning|middle|20\d\d)$/.test(text) &&
    !MONTH_WORDS.has(text)
  )
    return null;
  return (
    endOfAt(scan, i, cue) ??
    weekOfAt(scan, i, cue) ??
    runAt(scan, which) ??
    unitAt(scan, i, which) ??
    monthAt(scan, which, cue) ??
    yearAt(scan, i, cue)
  );
}

/** "End of the week", "start of next month": the whole of it, for no day of it was said. */
function endOfAt(scan: Scan, i: number, cue: DateCue): Parsed<Day> | null {
  const start = textAt(scan, i) === 'the' ? i + 1 : i;
  if (!/^(end|start|beginning|middle)$/.test(textAt(scan, start)) || textAt(scan, start + 1) !== 'of')
    return null;
  const unit = /^(week|month|year)$/.test(textAt(scan, start + 2)) ? start + 2 : start + 3;
  const which = whichAt(scan, start + 2);
  const sort = textAt(scan, which.next > start + 2 ? which.next : unit);
  if (sort === 'week' || sort === 'month' || sort === 'year')
    return {
      value: { sort, offset: OFFSETS[which.value] },
      next: (which.next > start + 2 ? which.next : unit) + 1,
    };
  return which.next > start + 2 ? monthAt(scan, which, cue) : null;
}

function weekOfAt(scan: Scan, i: number, cue: DateCue): Parsed<Day> | null {
  const start = textAt(scan, i) === 'the' ? i + 1 : i;
  const next = phraseEnd(scan, start, WEEK_OF);
  if (next < 0) return null;
  const date = dateAt(scan, next, { order: cue.order, cued: true });
  return date === null ? null : { value: { sort: 'week-of', of: date.value }, next: date.next };
}

type Which = Parsed<WhichWord>;

/** "The last 7 days", "next three days", "the past fortnight". */
function runAt(scan: Scan, which: Which): Parsed<Day> | null {
  if (which.value !== 'last' && which.value !== 'next') return null;
  const sign = which.value === 'last' ? -1 : 1;
  const word = textAt(scan, which.next);
  if (word === 'fortnight') return { value: { sort: 'run', days: sign * 14 }, next: which.next + 1 };
  const few =
    word === 'few'
      ? { value: 3, next: which.next + 1 }
      : word === 'couple'
        ? coupleOf(scan, which.next + 1)
        : null;
  const count = few ?? numberAt(scan, which.next);
  if (count === null) return null;
  const unit = textAt(scan, count.next);
  if (unit === 'days' || unit === 'day')
    return { value: { sort: 'run', days: sign * count.value }, next: count.next + 1 };
  if (unit === 'weeks') return { value: { sort: 'run', days: sign * count.value * 7 }, next: count.next + 1 };
  return null;
}

function coupleOf(scan: Scan, i: number): Parsed<number> {
  return { value: 2, next: textAt(scan, i) === 'of' ? i + 1 : i };
}

/** "This week", "the weekend", "last month", "all week". */
function unitAt(scan: Scan, i: number, which: Which): Parsed<Day> | null {
  const said = which.next > i;
  const start = said ? which.next : i + 1;
  const unit = textAt(scan, start);
  const bare = textAt(scan, i) === 'the' || textAt(scan, i) === 'all';
  if (unit === 'weekend' && (said || bare))
    return { value: { sort: 'weekend', offset: OFFSETS[which.value] }, next: start + 1 };
  if (!said && !(textAt(scan, i) === 'all' && unit === 'week')) return null;
  if (unit === 'wk') return { value: { sort: 'week', offset: OFFSETS[which.value] }, next: start + 1 };
  const one = unitOf(unit, textAt(scan, start + 1));
  return one === null ? null : { value: { sort: one, offset: OFFSETS[which.value] }, next: start + 1 };
}

/** "Last months log" is typed for "last month's log". */
function unitOf(unit: string, next: string): 'week' | 'month' | 'year' | null {
  if (unit === 'week' || unit === 'month' || unit === 'year') return unit;
  if (!OF_IT.test(next)) return null;
  return unit === 'weeks' ? 'week' : unit === 'months' ? 'month' : unit === 'years' ? 'year' : null;
}

const OF_IT = /^(?:logs?|logbook|records?|reports?|notes|loads|scans|incidents?|summary|figures|history)$/;

/** "October", "last October", "October 2026"; "may", "march", "june" and short forms only after a cue or with 's. */
function monthAt(scan: Scan, which: Which, cue: DateCue): Parsed<Day> | null {
  const word = textAt(scan, which.next);
  const month = MONTH_WORDS.get(word);
  if (month === undefined) return null;
  const next = which.next + 1;
  const vouched = cue.cued || which.value !== 'plain' || BOLD_MONTHS.has(word) || recordFollows(scan, next);
  if (!vouched) return null;
  const year = /^20\d\d$/.test(digitsAt(scan, next)) ? Number(digitsAt(scan, next)) : null;
  if (year !== null)
    return { value: { sort: 'month-named', month, year, which: which.value }, next: next + 1 };
  return { value: { sort: 'month-named', month, which: which.value }, next };
}

/** "May's record", "march log": there the shy ones can only be months. */
function recordFollows(scan: Scan, i: number): boolean {
  const at = textAt(scan, i) === "'s" ? i + 1 : i;
  return /^(record|records|log|logs|report|figures|numbers|sheet|printout|export)$/.test(textAt(scan, at));
}

function yearAt(scan: Scan, i: number, cue: DateCue): Parsed<Day> | null {
  const digits = digitsAt(scan, i);
  if (!/^20\d\d$/.test(digits) || !(cue.cued || recordFollows(scan, i + 1))) return null;
  return { value: { sort: 'year-named', year: Number(digits) }, next: i + 1 };
}
