import type { Practice } from '../practice/practice.ts';
import { addLexicon } from './lexicon/compile.ts';
import { isEnglish } from './lexicon/english-words.ts';
import { numberWords } from './lexicon/words.ts';
import { addNames } from './names.ts';
import type { LearnedWord, NoteContext, NoteRead, Reader } from './read.ts';
import { Table } from './table.ts';
import { tokenize } from './tokens.ts';

/** What a note was probably meant to say, with how that reads: one fact or one question. */
export interface Suggestion {
  readonly text: string;
  readonly read: NoteRead;
}

/** Longer notes with words that nobody knows are talk. */
const LONGEST = 9;
/** So many words may be put right at once: with more it is a guess. */
const MOST_SLIPS = 3;

/** Words of a practice that a slip may be of → how much they matter; made once for a practice. */
const words = new WeakMap<Practice, ReadonlyMap<string, number>>();

function wordsOf(practice: Practice): ReadonlyMap<string, number> {
  const known = words.get(practice);
  if (known !== undefined) return known;
  const table = new Table();
  addLexicon(table);
  addNames(table, practice, []);
  words.set(practice, table.targets);
  return table.targets;
}

/**
 * What a short note that said nothing would say with each of its strange words put right by up to two slips; `null` where
 * that is no plain fact or question, or two words are as near. Only ever asked, never taken.
 */
export function suggestionFor(
  practice: Practice,
  text: string,
  context: NoteContext,
  read: Reader,
): Suggestion | null {
  const tokens = tokenize(text);
  if (tokens.length < 2 || tokens.length > LONGEST) return null;
  const targets = wordsOf(practice);
  const slips = tokens.filter((t) => t.kind === 'word' && !targets.has(t.text) && !isEnglish(t.text));
  if (slips.length === 0 || slips.length > MOST_SLIPS) return null;
  const texts = slips
    .toReversed()
    .reduce<readonly string[]>(
      (all, { text: typed, start, end }) =>
        all.flatMap((one) =>
          nearestWords(typed, targets).map((word) => one.slice(0, start) + word + one.slice(end)),
        ),
      [text],
    );
  return onlyOne(texts.map((one) => ({ text: one, read: read(one, context) })));
}

/** Tells a word of the lexicon, of a practice's names or of those it has taught, or a number, from any other. */
export function knownWords(practice: Practice, learned: readonly LearnedWord[]): (word: string) => boolean {
  const targets = wordsOf(practice);
  const own = new Set(
    [
      ...practice.people.flatMap(({ name, also }) => [name, ...also]),
      ...learned.map((one) => one.words),
    ].flatMap((words) => words.toLowerCase().split(/[\s-]+/)),
  );
  return (word) => targets.has(word) || own.has(word) || numberWords[word] !== undefined;
}

/** Whether every word of a note is one of the practice's or of the trade's talk, or a slip of one: no other thing is spoken of. */
export function knowsEachWord(practice: Practice, text: string): boolean {
  const targets = wordsOf(practice);
  return tokenize(text).every(
    ({ kind, text: word }) =>
      kind !== 'word' ||
      targets.has(word) ||
      (word.length >= 4 && !isEnglish(word) && nearestWords(word, targets).length > 0),
  );
}

/** The one that makes a plain fact or question; `null` where none does, or two make different ones. */
function onlyOne(suggestions: readonly Suggestion[]): Suggestion | null {
  const plain = suggestions.filter(({ read: { reading } }) => {
    const { facts, asks, acts, plans, unclear } = reading;
    return facts.length + asks.length === 1 && acts.length + plans.length + unclear.length === 0;
  });
  const [first] = plain;
  return new Set(plain.map(({ read }) => JSON.stringify(read.reading))).size === 1 ? (first ?? null) : null;
}

/** So many words are tried for a slip. */
const MOST_TRIED = 4;

/** The words of ours that are nearest, the nearest first: at most two slips away, one where the word is short. */
function nearestWords(typed: string, targets: ReadonlyMap<string, number>): readonly string[] {
  const most = typed.length >= 5 ? 2 : 1;
  const near: { word: string; cost: number }[] = [];
  for (const [word, rank] of targets) {
    if (word.length < 3 || Math.abs(word.length - typed.length) > most) continue;
    const slips = slipsBetween(typed, word, most);
    // Of two words as near, the one that matters more is meant.
    if (slips <= most) near.push({ word, cost: slips - rank / 10 });
  }
  return near
    .sort((a, b) => a.cost - b.cost)
    .slice(0, MOST_TRIED)
    .map(({ word }) => word);
}

/** Letters left out, put in, wrong or changed about (optimal string alignment), counted up to `most` + 1. */
export function slipsBetween(a: string, b: string, most: number): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      next.push(cost);
    }
    if (Math.min(...next) > most) return most + 1;
    before = row;
    row = next;
  }
  return row[b.length] ?? most + 1;
}
