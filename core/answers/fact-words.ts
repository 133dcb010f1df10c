import type { Practice } from '../practice/practice.ts';
import type { Said, SaidKind, SaidMap } from '../record/entry.ts';
import { dayFacts } from './fact-words/days.ts';
import { itemFacts } from './fact-words/items.ts';
import { loadFacts } from './fact-words/loads.ts';
import type { AllFactWords } from './fact-words/parts.ts';
import { scannerFacts } from './fact-words/scanners.ts';
import { tipFacts } from './fact-words/tips.ts';

/** Every kind of entry has its words: one that no table has does not compile. */
const WORDS: AllFactWords = { ...scannerFacts, ...tipFacts, ...loadFacts, ...itemFacts, ...dayFacts };

/** What happened, in a few plain words, what it happened to first: "tip 4 sent to the autoclave". */
export function factWords(practice: Practice, fact: Said): string {
  return wordsOfKind(practice, fact.kind, fact);
}

function wordsOfKind<K extends SaidKind>(practice: Practice, kind: K, fact: SaidMap[K]): string {
  return WORDS[kind](practice, fact);
}
