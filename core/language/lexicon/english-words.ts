import { english } from './english.ts';

const words: ReadonlySet<string> = new Set(english.trim().split(/\s+/));

const KEPT = new Set(['thin', 'spin', 'begin', 'coin', 'skin', 'chin', 'twin']);

/** True for a common English word as it stands. */
export function isEnglish(word: string): boolean {
  // "Takin", "doin" are the -ing of a hurry, though films say them often.
  if (word.length > 3 && word.endsWith('in') && words.has(`${word}g`) && !KEPT.has(word)) return false;
  return words.has(word);
}
