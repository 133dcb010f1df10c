import { isEnglish } from '../lexicon/english-words.ts';
import { numberWords } from '../lexicon/words.ts';
import type { Table } from '../table.ts';
import type { Token } from '../token.ts';
import { closeness } from './closeness.ts';
import { LONGEST, type NearWords } from './near-words.ts';

/** A word that a token may be a slip for, and how near it is (see `closeness`). */
export interface Alternative {
  readonly word: string;
  readonly near: number;
}

/** Short words that slips are tried for where nothing else explains a note. */
const SHORTER =
  'on in at to of is off and the for out was has not tip tips it by pm am one two six ten ago use cal bin now all'.split(
    ' ',
  );

/** What acts are said with: no word of the lexicon's own, tried only for what is no word at all. */
const ACTS =
  'undo later snooze delete scratch scrap ignore done nope nah yeah please sorry oops meant remind poke nudge again last message entry not'.split(
    ' ',
  );

/** Number words, which nothing else arrives at. */
const NUMBERS: readonly string[] = Object.keys(numberWords).filter((word) => word.length > 2);

/** So many are tried for one token. */
const MOST = 8;

/** Every word that a token left alone may be a slip for, the nearest first; none where it is certainly meant. */
export function alternativesTo({ text, kind }: Token, table: Table, near: NearWords): readonly Alternative[] {
  if (kind !== 'word' || (table.targets.get(text) ?? 0) > 1 || text.length > LONGEST) return [];
  const english = table.words.has(text) || isEnglish(text);
  const found = new Map<string, Alternative>();
  const words = [
    ...near.around(text),
    ...(text.length < 4 ? SHORTER : []),
    ...(english ? [] : NUMBERS),
    ...(english || text.length < 3 ? [] : ACTS),
  ];
  for (const word of words) {
    const nearness = closeness(text, word);
    if (nearness >= (english ? 3 : 2) && word !== text && !found.has(word))
      found.set(word, { word, near: nearness });
  }
  return [...found.values()].sort((a, b) => b.near - a.near).slice(0, MOST);
}
