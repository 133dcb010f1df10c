import { countedAfter } from './guards.ts';
import { digitsAt, type Scan } from './scan.ts';

/** What makes "9.15" a time with no cue: a verb of starting or ending before it, or the head of the note with a verb after. */
export function timedBefore(scan: Scan, i: number, next: number): boolean {
  const before = scan.tokens[i - 1];
  if (before !== undefined && before.text !== '\n')
    return /^(started|starting|finished|finishing|ended|ending|began|booked|arrived|left|returned)$/.test(
      before.text,
    );
  return Number(digitsAt(scan, i)) <= 12 && wordFollows(scan, next);
}

/** At the head of a note a figure that is followed by a word (not by a place or a unit) is the time of what follows. */
function wordFollows(scan: Scan, next: number): boolean {
  const token = scan.tokens[next];
  if (token === undefined || countedAfter(scan, next)) return false;
  if (token.kind === 'mark') return /^[-:]$/.test(token.text) && scan.tokens[next + 1]?.kind === 'word';
  return token.kind === 'word' && token.spaced && !/^(in|at|on|here|and|or|to)$/.test(token.text);
}

/** "0915 calibrated A", at the head of a note. */
export function headOfNote(scan: Scan, i: number): boolean {
  const before = scan.tokens[i - 1];
  return (before === undefined || before.text === '\n') && wordFollows(scan, i + 1);
}
