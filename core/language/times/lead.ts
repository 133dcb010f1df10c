import { clockAt } from './clock.ts';
import { lengthAt } from './length.ts';
import { type Parsed, type Scan, textAt } from './scan.ts';
import type { Clock } from './time-span.ts';

/** The commonest words that begin a time phrase begin no length. */
const CUES: ReadonlySet<string> = new Set(['at', 'on', 'in', 'for', 'of', 'by', 'to', 'from', 'this', 'and']);

/** "An hour before close", "10 minutes after opening", "half an hour before 2": a clock time reckoned from another. */
export function leadAt(scan: Scan, i: number): Parsed<Clock> | null {
  if (CUES.has(textAt(scan, i))) return null;
  const length = lengthAt(scan, i);
  if (length === null || length.value >= 720) return null;
  const word = textAt(scan, length.next);
  if (word !== 'before' && word !== 'after') return null;
  const clock = clockAt(scan, length.next + 1, 'strong');
  if (clock === null) return null;
  const minutes = word === 'before' ? -length.value : length.value;
  return { value: led(clock.value, Math.round(minutes)), next: clock.next };
}

function led(clock: Clock, minutes: number): Clock {
  if (clock.sort !== 'time') return { ...clock, lead: (clock.lead ?? 0) + minutes };
  if (clock.hour === null) return clock;
  const turn = clock.half === 'known' ? 1440 : 720;
  const total = (((clock.hour * 60 + clock.minute + minutes) % turn) + turn) % turn;
  const hour = Math.floor(total / 60);
  return { ...clock, hour: clock.half === 'known' || hour > 0 ? hour : 12, minute: total % 60 };
}
