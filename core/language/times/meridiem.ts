import { type Parsed, type Scan, textAt } from './scan.ts';
import type { Clock } from './time-span.ts';

export type Meridiem = 'am' | 'pm';

/** "pm", "p.m.", "p m" right after a number. */
export function meridiemAt(scan: Scan, i: number): Parsed<Meridiem> | null {
  const text = textAt(scan, i);
  if (text === 'am' || text === 'pm') return { value: text, next: i + 1 };
  if (text !== 'a' && text !== 'p') return null;
  const dotted = textAt(scan, i + 1) === '.' ? i + 2 : i + 1;
  if (textAt(scan, dotted) !== 'm') return null;
  // The last dot belongs to "p.m." where the note goes on; at the end of the note it is a full stop.
  const last = dotted + 1;
  const goesOn = textAt(scan, last) === '.' && scan.tokens[last + 1] !== undefined;
  return { value: text === 'a' ? 'am' : 'pm', next: dotted > i + 1 && goesOn ? last + 1 : last };
}

/** The clock time of an hour as said, and of the half of the day where it was said. `null` where there is no such time. */
export function timeOf(
  hour: number,
  minute: number,
  meridiem: Meridiem | null,
  leadingZero = false,
): (Clock & { sort: 'time' }) | null {
  if (minute > 59 || hour > 24 || (hour === 24 && minute > 0)) return null;
  if (meridiem !== null) {
    if (hour > 12 && meridiem === 'pm') return time(hour % 24, minute, 'known');
    if (hour < 1 || hour > 12) return null;
    return time((hour % 12) + (meridiem === 'pm' ? 12 : 0), minute, 'known');
  }
  if (hour > 12 || hour === 0 || leadingZero) return time(hour % 24, minute, 'known');
  return time(hour, minute, 'open');
}

function time(hour: number, minute: number, half: 'known' | 'open'): Clock & { sort: 'time' } {
  return { sort: 'time', hour, minute, half, about: false };
}
