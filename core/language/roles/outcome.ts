import type { Clause } from '../clause.ts';
import { hasTag } from '../part.ts';

/** Marks and words that deny the good word after them: "not great", "isn't right". */
function denied(c: Clause, at: number): boolean {
  for (let i = at - 1; i >= 0 && i >= at - 4; i--) {
    const part = c.parts[i];
    if (hasTag(part, 'neg')) return true;
    if (part?.mark || part?.entity !== undefined) return false;
  }
  return false;
}

export interface OutcomeSaid {
  readonly outcome: 'passed' | 'failed';
  readonly at: number;
}

/** "Good", "fine" and their like pass only where a frame asks for an outcome; the last word on it counts. */
export function outcomeOf(c: Clause, except: readonly number[] = []): OutcomeSaid | null {
  let found: OutcomeSaid | null = null;
  for (const [i, part] of c.parts.entries()) {
    if (part.entity !== undefined || except.includes(i)) continue;
    // "Didn't fail" is no word on how it came out.
    if (hasTag(part, 'fail') && hasTag(c.parts[i - 1], 'neg')) continue;
    if (hasTag(part, 'fail')) found = { outcome: 'failed', at: i };
    else if (hasTag(part, 'pass')) found = passedAt(c, i, found);
  }
  if (found !== null) c.useTags('pass', 'fail');
  return found;
}

/** A mild "good" does not take back a failure; "passed" after it does. */
function passedAt(c: Clause, at: number, before: OutcomeSaid | null): OutcomeSaid {
  if (denied(c, at)) return { outcome: 'failed', at };
  const firm = c.parts[at]?.text.includes('pass') === true;
  return before === null || firm ? { outcome: 'passed', at } : before;
}

/** True where a denial stands before the part and nothing between them breaks it. */
export function isDenied(c: Clause, at: number): boolean {
  for (let i = at - 1; i >= 0; i--) {
    const part = c.parts[i];
    if (hasTag(part, 'neg')) return true;
    if (part?.mark) return false;
  }
  return false;
}
