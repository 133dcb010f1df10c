import type { Clause } from '../clause.ts';
import { wordsNumber } from '../lexicon/count.ts';
import type { Part } from '../part.ts';

/** "6 scans", "six scans", "a scan": how many, before the word for them; `null` where none is said. */
export function countBefore(c: Clause, at: number): Count | null {
  for (let i = at - 1; i >= 0 && i >= at - 5; i--) {
    const part = c.parts[i];
    if (part === undefined || isPackedTime(part, i === at - 1)) return null;
    if (isTimeLike(part)) continue;
    const count = countAt(c, part, i);
    if (count !== undefined) return count;
    if (part.entity !== undefined) return null;
  }
  return null;
}

interface Count {
  readonly value: number;
  readonly at: number;
}

/** "330 scan cancelled" tells when it was to be. */
function isPackedTime(part: Part, beside: boolean): boolean {
  if (part.entity?.is === 'number') return beside && /^\d{3,}$/.test(part.entity.text);
  if (part.entity?.is !== 'tips' || !beside) return false;
  return /^\d{3,}$/.test([...part.entity.ids, ...part.entity.unknown].join('').replace(/\D/g, ''));
}

function isTimeLike(part: Part): boolean {
  const { entity } = part;
  return entity?.is === 'time' || (entity?.is === 'number' && !Number.isInteger(entity.value));
}

/** The count that a part is; `null` where its number belongs to a time ("half 3", "two thirty"), `undefined` where it is none. */
function countAt(c: Clause, part: Part, i: number): Count | null | undefined {
  const value = wordsNumber(part);
  const before = c.parts[i - 1];
  if (value !== null) {
    if (value >= 10 && /^(the|all) (two|three)$/.test(before?.text ?? '')) return null;
    const ofTime =
      /^(half|half past)$/.test(before?.text ?? '') ||
      (value >= 10 && before?.senses.some((s) => s.tag === 'number') === true);
    return ofTime ? null : { value, at: i };
  }
  if (/^(a|an|one more|another|an extra)$/.test(part.text)) return { value: 1, at: i };
  if (/^(a dozen|dozen)$/.test(part.text))
    return { value: before?.text === 'half' || before?.text === 'half a' ? 6 : 12, at: i };
  if (/^(the|all) two$/.test(part.text)) return { value: 2, at: i };
  if (/^(the|all) three$/.test(part.text)) return { value: 3, at: i };
  return /^(both|a couple|couple|a couple of|couple of)$/.test(part.text) ? { value: 2, at: i } : undefined;
}
