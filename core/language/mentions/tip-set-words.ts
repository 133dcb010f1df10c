import type { TipSet } from '../../reading/slots.ts';
import { matchAt, type Scan, textAt } from './scan.ts';

const SETS: ReadonlyMap<string, TipSet> = new Map([
  ['used', 'used'],
  ['dirty', 'used'],
  ['contaminated', 'used'],
  ['soiled', 'used'],
  ['washed', 'washed'],
  ['rinsed', 'washed'],
  ['scrubbed', 'washed'],
  ['cleaned', 'washed'],
  ['bagged', 'bagged'],
  ['pouched', 'bagged'],
  ['wrapped', 'bagged'],
  ['packed', 'bagged'],
  ['sealed', 'bagged'],
  ['packaged', 'bagged'],
  ['sent', 'sent'],
  ['sterile', 'sterile'],
  ['sterilised', 'sterile'],
  ['sterilized', 'sterile'],
  ['clean', 'sterile'],
  ['autoclaved', 'sterile'],
]);

/** Every word that names a set. */
export const SET_WORDS: readonly string[] = [...SETS.keys()];

/** The set that a word names ("used", "dirty" → used). */
export function setNamed(word: string): TipSet | undefined {
  return SETS.get(word);
}

/** Words that mean every one of them. */
export const WHOLE = new Set(['all', 'every', 'remaining', 'each', 'rest', 'other', 'others', 'everything']);

/** What may stand between "all" and the set. */
export const FILLERS = new Set([
  'the',
  'of',
  'our',
  'my',
  'those',
  'these',
  'other',
  'remaining',
  'rest',
  'them',
  'lot',
  "today's",
  'todays',
  'still',
  'just',
]);

/** What a set is of. */
export const NOUNS = new Set(['tips', 'ones', 'tip', 'lot', 'stuff']);

/** Words that leave some out. */
export const BARRING = new Set([
  'except',
  'bar',
  'but',
  'excluding',
  'minus',
  'excl',
  'barring',
  'without',
  'besides',
  'exc',
  'cept',
]);

const SET_TAGS: Readonly<Record<string, TipSet>> = {
  use: 'used',
  wash: 'washed',
  bag: 'bagged',
  send: 'sent',
  sterile: 'sterile',
};

/** The set that a verb of the lexicon at a token names ("scrubbed" → washed). */
export function setBySense(scan: Scan, at: number): TipSet | undefined {
  const match = matchAt(scan, at);
  const sense =
    match !== null && match.to === at + 1
      ? match.senses.find((s) => s.form === 'd' && Object.hasOwn(SET_TAGS, s.tag))
      : undefined;
  return sense === undefined ? undefined : SET_TAGS[sense.tag];
}

/** Past "except for", "apart from", "other than", "but not"; −1 where none stands there. */
export function barring(scan: Scan, from: number): number {
  const at = /^([,(-]|--)$/.test(textAt(scan, from)) ? from + 1 : from;
  const exception = textAt(scan, at) === 'with' ? at + (textAt(scan, at + 1) === 'the' ? 2 : 1) : -1;
  if (/^exceptions?$/.test(textAt(scan, exception)) && textAt(scan, exception + 1) === 'of')
    return exception + 2;
  const [one, two] = [textAt(scan, at), textAt(scan, at + 1)];
  const pair = `${one} ${two}`;
  if (
    /^(apart from|other than|except for|but not|aside from|all but|bar for|with exception|and not|just not)$/.test(
      pair,
    )
  )
    return at + 2;
  if (pair === 'not including' || pair === 'leaving out' || pair === 'save for' || pair === 'not counting')
    return at + 2;
  if (one === 'not' && at > from) return at + 1;
  return BARRING.has(one) ? at + 1 : -1;
}
