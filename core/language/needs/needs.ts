import { neededBy } from './needed.ts';

/**
 * Patterns that are tried only on text that holds a word they need. Most notes hold no word that an act or a question
 * needs, and a look at a word that was met before is some twenty times cheaper than a pattern tried on the text. What a
 * pattern needs is read from its own source, so that nothing has to be kept in step (the idea is RE2's prefilter: R. Cox,
 * "Regular Expression Matching with a Trigram Index").
 */

/** Word → the groups of patterns that need it, a bit each. */
const byWord = new Map<string, number>();
/** The same for what may stand inside a word. */
const byRun = new Map<string, number>();
let groups = 0;
/** Groups that need nothing in particular: always tried. */
let always = 0;

/** Announces patterns that are tried together; their bit is in `needsMetIn` of some word of any text that one of them matches. */
export function needing(...patterns: readonly RegExp[]): number {
  if (groups === 31) throw new RangeError('a number has no more bits for groups of patterns');
  const bit = 1 << groups++;
  for (const pattern of patterns) {
    const needed = neededBy(pattern);
    if (needed === null) always |= bit;
    for (const { text, whole } of needed ?? []) {
      const known = whole ? byWord : byRun;
      known.set(text, (known.get(text) ?? 0) | bit);
    }
  }
  return bit;
}

/** Notes say the same few thousand words; a longer memory is no use. */
const REMEMBERED = 10_000;
const met = new Map<string, number>();

/** The bits of the groups that a word or phrase, folded, gives what they need; letters held down are let go too. */
export function needsMetIn(text: string): number {
  const known = met.get(text);
  if (known !== undefined) return known;
  const calm = text.replace(/(\p{L})\1{2,}/gu, '$1');
  let bits = always;
  for (const word of `${text} ${calm}`.match(/[a-z]+|[0-9]+/g) ?? []) bits |= byWord.get(word) ?? 0;
  for (const [run, group] of byRun) if (text.includes(run) || calm.includes(run)) bits |= group;
  if (met.size > REMEMBERED) met.clear();
  met.set(text, bits);
  return bits;
}
