import { anchorAt } from './anchor.ts';
import { digitalAt } from './clock-digits.ts';
import { spokenAt } from './clock-words.ts';
import type { CueStrength } from './cue.ts';
import { countedAfter } from './guards.ts';
import { type Parsed, type Scan, textAt } from './scan.ts';
import type { Clock } from './time-span.ts';

/** A clock time at `i`: spoken ("half 2"), in figures ("10.30", "2pm"), or a fixed point of the day ("noon", "end of play"). */
export function clockAt(scan: Scan, i: number, cue: CueStrength): Parsed<Clock> | null {
  const found = anchorAt(scan, i, cue) ?? spokenAt(scan, i, cue) ?? digitalAt(scan, i, cue);
  return found === null ? null : withAbout(scan, found);
}

/** "5ish", "5 ish", "5-ish", "2 or so". */
function withAbout(scan: Scan, found: Parsed<Clock>): Parsed<Clock> | null {
  const { value, next } = found;
  if (value.sort !== 'time') return found;
  const dash = textAt(scan, next) === '-' ? next + 1 : next;
  if (textAt(scan, dash) === 'ish' || textAt(scan, dash) === 'odd') return about(value, dash + 1);
  if (textAt(scan, next) === 'or' && /^(so|thereabouts)$/.test(textAt(scan, next + 1)))
    return about(value, next + 2);
  if (countedAfter(scan, next) && textAt(scan, next) === 'of') return null;
  return found;
}

function about(value: Clock & { sort: 'time' }, next: number): Parsed<Clock> {
  return { value: { ...value, about: true }, next };
}
