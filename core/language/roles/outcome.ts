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

/** "Good", "fine" and their like pass only where a frame asks for an outcome; the last word on it counts. */
export function outcomeOf(
  c: Clause,
  except: readonly number[] = [],
): { outcome: 'passed' | 'failed'; at: number } | null {
  let found: { outcome: 'passed' | 'failed'; at: number } | null = null;
  for (const [i, part] of c.parts.entries()) {
    if (part.entity !== undefined || except.includes(i)) continue;
    if (hasTag(part, 'fail')) found = { outcome: 'failed', at: i };
    else if (hasTag(part, 'pass')) {
      const bad = denied(c, i);
      if (bad || found === null || part.text.includes('pass'))
        found = { outcome: bad ? 'failed' : 'passed', at: i };
    }
  }
  if (found !== null) {
    for (const [i, part] of c.parts.entries()) if (hasTag(part, 'pass') || hasTag(part, 'fail')) c.use(i);
  }
  return found;
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
