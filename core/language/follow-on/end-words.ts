import { slipsBetween } from '../suggest.ts';

/** What words at an end say: that it is the same, how it came out, or nothing. */
type Says = boolean | 'good' | 'bad';

/** Words taken off one end, and what is left. */
export interface Cut {
  readonly rest: string[];
  readonly says: Says;
}

/** The longest run counts. */
const LEADS: readonly (readonly [words: string, says: Says])[] = [
  ['same goes for', true],
  ['same thing for', true],
  ['same thing with', true],
  ['same again for', true],
  ['same again with', true],
  ['same applies to', true],
  ['the same for', true],
  ['the same with', true],
  ['the same on', true],
  ['same as for', true],
  ['same for', true],
  ['same with', true],
  ['same on', true],
  ['same 4', true],
  ['same', true],
  ['ditto for', true],
  ['ditto with', true],
  ['ditto on', true],
  ['ditto', true],
  ['likewise for', true],
  ['likewise with', true],
  ['so is', true],
  ['so are', true],
  ['so was', true],
  ['so were', true],
  ['so has', true],
  ['so did', true],
  ['neither is', 'bad'],
  ['neither did', 'bad'],
  ['nor is', 'bad'],
  ['nor did', 'bad'],
  ['nor', 'bad'],
  ['likewise', true],
  ['as well as', true],
  ['also', true],
  ['plus', true],
  ['and', true],
  ['n', true],
  ['&', true],
  ['+', true],
  ['then', false],
  ['oh', false],
  ['ok', false],
  ['yeah', false],
  ['btw', false],
  ['forgot', false],
  ['forgot to say', false],
];

const TAILS: readonly (readonly [words: string, says: Says])[] = [
  ['done too', true],
  ['done as well', true],
  ['done aswell', true],
  ['done also', true],
  ['is too', true],
  ['are too', true],
  ['was too', true],
  ['were too', true],
  ['the same', true],
  ['same again', true],
  ['as well', true],
  ['as wel', true],
  ['aswell', true],
  ['likewise', true],
  ['ditto', true],
  ['also', true],
  ['same', true],
  ['too', true],
  ["didn't", 'bad'],
  ['didnt', 'bad'],
  ['did not', 'bad'],
  ["wouldn't", 'bad'],
  ['wouldnt', 'bad'],
  ['please', false],
  ['pls', false],
  ['thanks', false],
  ['thx', false],
  ['ta', false],
  ['now', false],
  ['x', false],
  ['xx', false],
];

/** What the first words say; `null` where they are none of these. */
export function leadOf(words: readonly string[]): Cut | null {
  return cutOf(words, LEADS, (all, count) => [all.slice(0, count), all.slice(count)]);
}

/** The same of the last words. */
export function tailOf(words: readonly string[]): Cut | null {
  return cutOf(words, TAILS, (all, count) => [
    all.slice(all.length - count),
    all.slice(0, all.length - count),
  ]);
}

function cutOf(
  words: readonly string[],
  known: typeof LEADS,
  split: (words: readonly string[], count: number) => [string[], string[]],
): Cut | null {
  for (const [phrase, says] of known) {
    const parts = phrase.split(' ');
    if (parts.length >= words.length) continue;
    const [cut, rest] = split(words, parts.length);
    if (parts.every((part, n) => isWord(cut[n] ?? '', part))) return { rest, says };
  }
  return null;
}

/** Words that a slip makes of others ("some", "came", "sane"; "to", "the"): these have to be typed right. */
const EXACT = new Set([
  'same',
  'plus',
  'and',
  'then',
  'done',
  'well',
  'for',
  'with',
  'on',
  'the',
  'is',
  'are',
  'was',
  'were',
]);

function isWord(typed: string, word: string): boolean {
  const folded = typed.toLowerCase().replace(/,$/, '');
  if (folded === word || (word === 'too' && /^too+$/.test(folded))) return true;
  if (word.length < 4 || EXACT.has(word)) return false;
  return Math.abs(folded.length - word.length) <= 1 && slipsBetween(folded, word, 1) <= 1;
}
