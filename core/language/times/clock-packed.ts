import type { CueStrength } from './cue.ts';
import { countedAfter, mayFollow } from './guards.ts';
import { headOfNote } from './head.ts';
import { meridiemAt, timeOf } from './meridiem.ts';
import { type Parsed, type Scan, textAt } from './scan.ts';
import type { Clock } from './time-span.ts';

type Time = Clock & { sort: 'time' };

/** Words that make the number before them an hour of the day. */
export const HOURS: ReadonlySet<string> = new Set(['h', 'hrs', 'hours', 'hr']);

/** "1030", "0930hrs", "930pm", "930": figures with the minutes in them. */
export function packedAt(scan: Scan, i: number, digits: string, cue: CueStrength): Parsed<Time> | null {
  const meridiem = meridiemAt(scan, i + 1);
  const hours = digits.length === 4 && HOURS.has(textAt(scan, i + 1));
  if (meridiem === null && !hours && !bareAllowed(scan, i, digits, cue)) return null;
  const hour = Number(digits.slice(0, -2));
  const value = timeOf(hour, Number(digits.slice(-2)), meridiem?.value ?? null, digits.startsWith('0'));
  if (value === null) return null;
  return { value, next: meridiem?.next ?? (hours ? i + 2 : i + 1) };
}

/** Four figures after a cue or at the head of a note; three only on the quarters, since 134 is a temperature. */
function bareAllowed(scan: Scan, i: number, digits: string, cue: CueStrength): boolean {
  // "Since 2026" is a year.
  const year = digits.startsWith('20');
  if (cue === 'none') return digits.length === 4 && !year && standsAlone(scan, i, digits);
  if (cue === 'evident' || countedAfter(scan, i + 1)) return false;
  if (digits.length === 3 && !roundTime(digits)) return false;
  return cue === 'strong' || (!(digits.length === 4 && year) && mayFollow(scan, i + 1));
}

/** "At 210": on the five minutes; 250 °F and what lies below 200 are temperatures of an autoclave. */
function roundTime(digits: string): boolean {
  return Number(digits) >= 200 && digits !== '250' && Number(digits) % 5 === 0;
}

/** "1030 scan cancelled", "started 1115", "tomorrow 0830", "passed, 0905": four figures that need no cue. */
function standsAlone(scan: Scan, i: number, digits: string): boolean {
  if (headOfNote(scan, i)) return true;
  const [before, after] = [scan.tokens[i - 1], scan.tokens[i + 1]];
  if (before === undefined || before.text === '\n') return after?.text === 'scan';
  const ends = (after === undefined || after.kind === 'mark') && before.kind !== 'number';
  if (TIMED.has(before.text)) return true;
  return ends && digits.startsWith('0');
}

const TIMED: ReadonlySet<string> = new Set(
  'started starting finished began ended me tomorrow today yesterday mon tue wed thu fri sat sun monday tuesday wednesday thursday friday saturday sunday'.split(
    ' ',
  ),
);
