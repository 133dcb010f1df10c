import type { Practice } from '../practice/practice.ts';
import { foldWord } from '../words/learned-words.ts';
import { addLexicon, phraseOf } from './lexicon/compile.ts';
import { addNames } from './names.ts';
import { Table } from './table.ts';

/** Numbers, letters and what is written as an id: a word that may be one is never given another meaning. */
const LIKE_ID = /^(?:[a-z]{0,3}[ -]?\d+[a-z]?|[a-z]{1,2})$/;
/** A room or a scanner by number ("room 9", "scanner D"): a slip, or one that the practice file lacks. */
const NUMBERED = /\b(?:\d+|[a-z])$/;

/**
 * Whether a practice's own word may be learned: it shadows no id, scanner, site, room, person or word of the trade, and is
 * none that looks like an id.
 */
export function canLearn(practice: Practice, words: string): boolean {
  const word = foldWord(words);
  if (!/\p{L}{2}/u.test(word) || word.length > 40 || LIKE_ID.test(word) || NUMBERED.test(word)) return false;
  const table = new Table();
  addLexicon(table);
  addNames(table, practice, []);
  const phrase = phraseOf(word);
  return phrase.length > 0 && phrase.length <= 4 && table.longest(phrase, 0)?.to !== phrase.length;
}
