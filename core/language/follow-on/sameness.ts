import { slipsBetween } from '../suggest.ts';

/** A note that names only items and says that of them the same is true as was told before: "blue too", "& 7", "same for white". */
export interface Sameness {
  /** The words that name the items, as typed. */
  readonly items: string;
  /** The note says itself that it may not be so. */
  readonly doubted: boolean;
  /** What it says of how it came out: "green too, all good"; "green didn't", "nor 5" are the opposite of good. */
  readonly came?: 'good' | 'bad';
}

/** Longer notes tell something of their own. */
const LONGEST = 10;

/**
 * The items of such a note; `null` where no word of sameness or joining stands at either end, nothing is left between
 * them, or it asks.
 */
export function samenessIn(text: string): Sameness | null {
  if (text.includes('?') || text.length > 80) return null;
  const doubt = DOUBT.exec(text);
  const whole = doubt === null ? text : text.slice(0, doubt.index);
  const good = GOOD.exec(whole);
  let words = (good === null ? whole : whole.slice(0, good.index))
    .replaceAll(/[’‘`´]/g, "'")
    .replaceAll(/[&+]/g, ' $& ')
    .trim()
    .split(/\s+/)
    .map((word) => word.replace(/[^\p{L}\p{N}]+$/u, (end) => (/^,$|^[&+]/.test(end) ? end : '')))
    .filter((word) => word !== '');
  if (words.length < 2 || words.length > LONGEST) return null;
  let said = false;
  let came: Sameness['came'] = good === null ? undefined : 'good';
  const take = (cut: Cut | null): boolean => {
    if (cut === null) return false;
    words = cut.rest;
    said ||= cut.says !== false;
    if (cut.says === 'good' || cut.says === 'bad') came = cut.says;
    return true;
  };
  while (take(leadOf(words)));
  while (take(tailOf(words)));
  const items = words.join(' ').replace(/,$/, '');
  if (!said || !/[\p{L}\p{N}]/u.test(items)) return null;
  return { items, doubted: doubt !== null, ...(came === undefined ? {} : { came }) };
}

/** Said behind "too" of how it came out; alone it is no word of sameness. */
const GOOD =
  /[\s,–-]+(?:(?:it|they|that)? ?(?:is|was|are|were)? ?(?:all )?(?:good|fine|ok|okay|passed|clear)|no (?:issues|probs|problems))\W*$/i;

const DOUBT =
  /(?:^|[\s,(–-])(?:i (?:think|guess|believe|reckon)|maybe|probably|prob|perhaps|possibly|not sure)\W*$/i;

/** What words at an end say: that it is the same, how it came out, or nothing. */
type Says = boolean | 'good' | 'bad';

interface Cut {
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

function leadOf(words: readonly string[]): Cut | null {
  return cutOf(words, LEADS, (all, count) => [all.slice(0, count), all.slice(count)]);
}

function tailOf(words: readonly string[]): Cut | null {
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
