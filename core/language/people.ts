import type { Clause } from './clause.ts';
import { hasSort } from './part.ts';

/**
 * Who did it, where the clause says so: a name before the verb, after "by", or signed at the end. Initials count
 * only as a signature. `null` where nobody is named.
 */
export function byOf(c: Clause, verb: number): { name: string; at: number } | null {
  const people = c.entities('person').filter(({ at }) => !c.used.has(at));
  for (const { at, entity } of people) {
    if (c.prep(at) === 'by') return { name: entity.name, at };
  }
  for (const { at, entity } of people) {
    if (at >= verb || /^(for|with|on|to|at|from|of|than)$/.test(c.prep(at))) continue;
    const next = c.parts[at + 1];
    if (next?.text === 'told me' && people.some((other) => other.at > at && other.at < verb)) continue;
    if (
      next?.text === "'s" &&
      c.parts[at + 2] !== undefined &&
      hasSort(c.parts[at + 2], 'noun') &&
      !hasSort(c.parts[at + 2], 'verb')
    )
      continue;
    if (/^(thanks|cheers|ta|thank you|hi|hey|hello|morning|sorry|thx)$/.test(c.parts[at - 1]?.text ?? ''))
      continue;
    return { name: entity.name, at };
  }
  return null;
}

const I = /^(i|we|i've|we've|ive|weve|i'm|i just|we just|i have|we have|me)$/;

/** True where the clause has a subject of its own that is the writer. */
export function hasOwnSubject(c: Clause): boolean {
  return c.parts.some((part) => part.entity === undefined && I.test(part.text));
}
