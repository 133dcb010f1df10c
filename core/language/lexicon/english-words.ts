import { english } from './english.ts';

const words: ReadonlySet<string> = new Set(english.trim().split(/\s+/));

/** True for a common English word as it stands. */
export function isEnglish(word: string): boolean {
  return words.has(word);
}
