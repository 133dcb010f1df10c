import { phraseEnd, phraseTable } from './phrases.ts';
import { type Scan, textAt } from './scan.ts';
import type { TimeSpan } from './time-span.ts';

const NOW = phraseTable(
  'now | just now | right now | as of now | at the moment | at the mo | atm | just | only just | have just now | this instant',
);

/** "Now", "just now", "just". "By now" is now too; "just before 3", "just after lunch" are no such thing. */
export function nowAt(scan: Scan, i: number): TimeSpan | null {
  const next = phraseEnd(scan, i, NOW);
  if (next < 0) return null;
  if (
    textAt(scan, next - 1) === 'just' &&
    /^(before|after|gone|past|this|under|over|about)$/.test(textAt(scan, next))
  )
    return null;
  return { from: i, to: next, bound: 'at', days: [], clocks: [], now: true };
}
