import { isEnglish } from '../lexicon/english-words.ts';
import { numberWords } from '../lexicon/words.ts';
import type { Table } from '../table.ts';
import { closeness } from './closeness.ts';
import { LONGEST, type NearWords } from './near-words.ts';

/** A word that a token may be a slip for, and how near it is (see `closeness`; 1 for two slips in a long word). */
export interface Alternative {
  readonly word: string;
  readonly near: number;
}

/** How sure it is that what was typed is no slip: no word at all, a word that may be meant, a word of ours. */
export type Standing = 'none' | 'word' | 'ours';

export function standingOf(text: string, table: Table): Standing {
  if ((table.targets.get(text) ?? 0) > 1) return 'ours';
  return table.words.has(text) || isEnglish(text) ? 'word' : 'none';
}

/** Short words that slips are tried for where nothing else explains a note. */
const SHORTER =
  'on in at to of is off and the for out was has not tip tips it by pm am one two six ten ago use cal bin now all'.split(
    ' ',
  );

/** What acts are said with: no word of the lexicon's own, tried only for what is no word at all. */
const ACTS =
  'undo later snooze delete scratch scrap ignore disregard done nope nah yes yep yeah no please sorry oops meant correction remind poke nudge again last message msg entry not option'.split(
    ' ',
  );

/** What is denied, each in its own word: "ca't find", "wouodn't calibrate". */
const DENIALS =
  "don't can't didn't wasn't isn't doesn't couldn't won't wouldn't aren't weren't hasn't haven't hadn't shouldn't".split(
    ' ',
  );

/** The denial that a word in 't is a slip of; "not" where it cannot be told. */
export function nearestDenial(text: string): string {
  let best = 'not';
  let nearest = 1;
  for (const word of DENIALS) {
    const near = closeness(text, word);
    if (near > nearest) [best, nearest] = [word, near];
  }
  return best;
}

/** Number words, which nothing else arrives at. */
const NUMBERS: readonly string[] = Object.keys(numberWords).filter((word) => word.length > 2);

/** So many are tried for one token. */
const MOST = 8;

/** Every word that may have been meant by what was typed, the nearest first. */
export function alternativesTo(
  text: string,
  standing: Standing,
  table: Table,
  near: NearWords,
): readonly Alternative[] {
  if (text.length > LONGEST || text.length < 2) return [];
  const least = standing === 'none' ? 2 : 3;
  const found = new Map<string, Alternative>();
  const words = [
    ...near.around(text),
    ...(text.length < 4 ? SHORTER : []),
    ...(standing === 'none' ? [...NUMBERS, ...ACTS] : []),
  ];
  for (const word of words) {
    const nearness = closeness(text, word);
    if (nearness < least || word === text) continue;
    const meant = table.aliases.get(word) ?? word;
    if (!found.has(meant) && meant !== text) found.set(meant, { word: meant, near: nearness });
  }
  if (found.size === 0 && standing === 'none') return near.twoAway(text);
  return [...found.values()].sort((a, b) => b.near - a.near).slice(0, MOST);
}
