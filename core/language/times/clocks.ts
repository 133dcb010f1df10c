import { clockAt } from './clock.ts';
import type { Cue } from './cue.ts';
import { digitsAt, gluedAt, numberAt, type Parsed, type Scan, textAt } from './scan.ts';
import type { Clock } from './time-span.ts';

export interface ClocksSaid {
  readonly clocks: readonly Clock[];
  readonly range?: { readonly start: Clock; readonly end: Clock };
}

const TO: ReadonlySet<string> = new Set(['to', 'till', 'until', 'til', '-', '--']);
const AND: ReadonlySet<string> = new Set(['and', '&', ',', '+', '/', 'or', 'then']);

/** Before these a stretch needs no cue: "open 9 to 1". */
const OPEN: ReadonlySet<string> = new Set(
  'open opens opening hours working running shut closed closing in here hours: clinic'.split(' '),
);
/** Before these a list of hours needs no cue, so long as one of them is a time by itself: "scans 9, 10:30 and 2". */
const LISTS: ReadonlySet<string> = new Set(
  'scans scan the booked bookings appointments appts slots patients : times'.split(' '),
);
/** "Moved blue from 2 to 4" speaks of rooms. */
const MOVES: ReadonlySet<string> = new Set(
  'moved move moving took take taken taking went swapped brought'.split(' '),
);

/** Clock times at `i`: one, a list ("9, 10:30 and 2"), or a stretch ("9 to 1"). `afterDay`: a day was said just before. */
export function clocksAt(scan: Scan, i: number, cue: Cue, afterDay: boolean): Parsed<ClocksSaid> | null {
  if (cue.word === 'from' && movesBefore(scan, i)) return null;
  const stretch = stretchAt(scan, i, cue, afterDay);
  if (stretch !== null || cue.word === 'between') return stretch;
  const strength = cue.strength === 'range' ? 'weak' : cue.strength;
  const first = clockAt(scan, i, strength);
  if (first !== null) return listFrom(scan, first, cue.word);
  if (cue.strength !== 'none' || !(afterDay || LISTS.has(textAt(scan, i - 1)))) return null;
  const bare = clockAt(scan, i, 'list');
  if (bare === null) return null;
  const list = listFrom(scan, bare, cue.word);
  return list.value.clocks.length > 1 && list.value.clocks.some(evident) ? list : null;
}

function stretchAt(scan: Scan, i: number, cue: Cue, afterDay: boolean): Parsed<ClocksSaid> | null {
  const firm = cue.strength === 'strong' || cue.strength === 'weak';
  const vouched = cue.strength === 'range' || afterDay || OPEN.has(textAt(scan, i - 1));
  const start = clockAt(scan, i, firm ? cue.strength : vouched ? 'range' : 'none');
  if (start === null) return null;
  // "At 9 to …" begins another matter; "at 9-10" is one.
  if (firm && gluedAt(scan, start.next) !== '-') return null;
  const word = textAt(scan, start.next);
  const to =
    TO.has(word) || (cue.word === 'between' && (word === 'and' || word === '&')) ? start.next + 1 : -1;
  if (to < 0) return null;
  const about = /^(about|around|approx)$/.test(textAt(scan, to)) ? to + 1 : to;
  const end = clockAt(scan, about, 'range');
  if (end === null) return null;
  return { value: { clocks: [], range: { start: start.value, end: end.value } }, next: end.next };
}

function movesBefore(scan: Scan, i: number): boolean {
  for (let at = i - 2; at >= Math.max(0, i - 6); at--) if (MOVES.has(textAt(scan, at))) return true;
  return false;
}

/** The rest of a list. Bare numbers at its end are given back where the list runs on into something that is no time. */
function listFrom(scan: Scan, first: Parsed<Clock>, cueWord: string): Parsed<ClocksSaid> {
  const clocks = [first.value];
  let next = first.next;
  let sure = { count: 1, next };
  while (clocks.length < 24) {
    const at = pastAnd(scan, next);
    const more = at < 0 ? clockBeside(scan, next) : listedAt(scan, at, cueWord);
    if (at < 0 && more === null) break;
    if (more === null || hoursOfAnother(scan, more.next)) {
      if (numberAt(scan, at) !== null)
        return { value: { clocks: clocks.slice(0, sure.count) }, next: sure.next };
      break;
    }
    clocks.push(more.value);
    next = more.next;
    if (evident(more.value)) sure = { count: clocks.length, next };
  }
  return { value: { clocks }, next };
}

/** "9 10:30 2pm": with nothing between, only what is a time by itself. */
function clockBeside(scan: Scan, i: number): Parsed<Clock> | null {
  return digitsAt(scan, i) === '' ? null : clockAt(scan, i, 'none');
}

function listedAt(scan: Scan, i: number, cueWord: string): Parsed<Clock> | null {
  const text = textAt(scan, i);
  if (text === 'the') return clockAt(scan, i + 1, 'none');
  return text === 'at' && cueWord === 'at' ? clockAt(scan, i + 1, 'strong') : clockAt(scan, i, 'list');
}

/** "At 9, 5 at 10:30": the 5 has a time of its own, so it is a tip. */
function hoursOfAnother(scan: Scan, i: number): boolean {
  return textAt(scan, i) === 'at' && numberAt(scan, i + 1) !== null;
}

function pastAnd(scan: Scan, i: number): number {
  let next = i;
  while (next < i + 2 && AND.has(textAt(scan, next))) next++;
  if (next === i) return -1;
  // A comma inside "9,10:30" stands between two times; one inside "1,200" does not.
  return textAt(scan, i) === ',' && digitsAt(scan, next).length === 3 ? -1 : next;
}

function evident(clock: Clock): boolean {
  return clock.sort === 'time' && (clock.half === 'known' || clock.minute !== 0);
}
