import { type Parsed, type Scan, textAt } from './scan.ts';

/** Phrases with what they mean, by their first word, longest first: most words begin none, and that is told by one look. */
export type PhraseTable<M> = ReadonlyMap<string, readonly Phrase<M>[]>;

interface Phrase<M> {
  readonly words: readonly string[];
  readonly means: M;
}

/** A table of what is meant and its phrases, written with bars between: `[[closing, 'end of play | cob']]`. */
export function meanings<M>(rows: readonly (readonly [means: M, phrases: string])[]): PhraseTable<M> {
  const table = new Map<string, Phrase<M>[]>();
  for (const [means, phrases] of rows)
    for (const phrase of phrases.split('|')) {
      const words = phrase.trim().split(' ');
      const first = words[0] ?? '';
      const row = [...(table.get(first) ?? []), { words, means }];
      table.set(
        first,
        row.sort((a, b) => b.words.length - a.words.length),
      );
    }
  return table;
}

/** A table of phrases that mean one thing. */
export function phraseTable(phrases: string): PhraseTable<true> {
  return meanings([[true, phrases]]);
}

/** The longest phrase of the table that stands at `i`. */
export function phraseAt<M>(scan: Scan, i: number, table: PhraseTable<M>): Parsed<M> | null {
  const phrases = table.get(textAt(scan, i));
  if (phrases === undefined) return null;
  for (const { words, means } of phrases)
    if (standsAt(scan, i, words)) return { value: means, next: i + words.length };
  return null;
}

/** Past the longest phrase of the table that stands at `i`, or −1. */
export function phraseEnd(scan: Scan, i: number, table: PhraseTable<unknown>): number {
  return phraseAt(scan, i, table)?.next ?? -1;
}

function standsAt(scan: Scan, i: number, words: readonly string[]): boolean {
  for (let at = 1; at < words.length; at++) if (textAt(scan, i + at) !== words[at]) return false;
  return true;
}
