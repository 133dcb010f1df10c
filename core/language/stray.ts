import type { Clause } from './clause.ts';
import { isEnglish } from './lexicon/english-words.ts';
import type { Part } from './part.ts';
import type { Result } from './result.ts';

/** A word of letters that is no word at all: somebody's slip, and nobody can say of what. */
function isStray(part: Part | undefined): boolean {
  return (
    part?.unknown === true &&
    part.entity === undefined &&
    /^[a-z']{3,}$/.test(part.text) &&
    !isEnglish(part.text)
  );
}

/**
 * "Froud tip 9 in surgery 1" is not "tip 9 in surgery 1": where a clause says no verb of its own, a stray word beside
 * what it speaks of may have been the verb, and nothing is taken from it.
 */
export function mayLackVerb(c: Clause, { verb, made }: Result): boolean {
  const kind = made[0]?.entry.kind;
  if (kind !== 'moved' && kind !== 'fitted' && kind !== 'sterile') return false;
  const told = c.parts[verb];
  if (told?.senses.some((s) => s.sort === 'verb' && s.tag !== 'be') && told.entity === undefined)
    return false;
  return c.parts.some((part, i) => isStray(part) && c.parts[i + 1]?.entity !== undefined && i < 2);
}

/** "Did qpt pass", "I thkn t4 went": a stray word where a denial or a doubt could stand before what would be good news. */
export function mayBeDenied(c: Clause, { verb, made }: Result): boolean {
  const noun = c.parts[verb]?.senses.some((s) => s.sort === 'noun') === true;
  if (!noun && made.some(({ entry }) => isGood(entry)) && isStray(c.parts[verb - 1])) return true;
  const i = c.parts.findIndex((part) => part.text === 'i' && part.entity === undefined);
  return i >= 0 && isStray(c.parts[i + 1]) && c.parts[i + 2]?.entity !== undefined && i + 2 < verb;
}

/** What would make something count as safe to use. */
export function isGood(entry: Readonly<Record<string, unknown>>): boolean {
  return entry.outcome === 'passed' || entry.kind === 'sterile' || entry.kind === 'released';
}
