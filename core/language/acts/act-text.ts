import type { Clause } from '../clause.ts';
import type { Part } from '../part.ts';

/** What a clause says as text, each made only where some pattern may match it: few notes are acts. */
export class ActText {
  readonly #clause: Clause;
  #words: string | undefined;
  #typed: string | undefined;

  constructor(clause: Clause) {
    this.#clause = clause;
  }

  /** As `wordsOf`. */
  get words(): string {
    this.#words ??= wordsOf(this.#clause);
    return this.#words;
  }

  /** As `typedOf`. */
  get typed(): string {
    this.#typed ??= typedOf(this.#clause);
    return this.#typed;
  }

  /** False where neither the words of the note nor what was typed hold what this group of patterns needs. */
  mayMatch(group: number): boolean {
    return (this.#clause.scope.needsMet & group) !== 0;
  }
}

/** The clause's words with their spelling put right and no marks; times as they were typed. */
export function wordsOf(c: Clause): string {
  return c.parts
    .filter((p) => !p.mark || p.senses.length > 0)
    .map((p) => (p.entity?.is === 'time' ? c.scope.note.slice(...c.scope.offset(p)).toLowerCase() : p.text))
    .join(' ')
    .replace(/ 's/g, "'s")
    .trim();
}

/** No short answer is longer, in characters. */
const LONGEST = 90;

/**
 * The clause as it was typed, in small letters, without marks and with long letters shortened: "Yesss!!" is "yes", "nooo"
 * is "no"; empty for what is too long to be one. Short words are answers more often than slips of something else, so their spelling is not put right.
 */
export function typedOf(c: Clause): string {
  const [first] = c.parts;
  const last = c.parts.at(-1);
  if (first === undefined || last === undefined) return '';
  const typed = c.scope.note.slice(c.scope.offset(first)[0], c.scope.offset(last)[1]);
  return typed.length > LONGEST ? '' : calmed(typed);
}

/** Small letters, no marks, long letters shortened. */
export function calmed(typed: string): string {
  return typed
    .toLowerCase()
    .replace(/[’`´]/g, "'")
    .replace(/(\p{L})\1{2,}/gu, '$1')
    .replace(/[\s.,;:!?()"“”~–—-]+/g, ' ')
    .trim();
}

/** True where the clause is put as a question. */
export function isAsked(c: Clause): boolean {
  return c.parts.some((p) => p.mark && p.text.includes('?'));
}

/** A part's words as they are typed: "it's", not "it 's". */
export function textOf(part: Part): string {
  return part.text.replaceAll(" 's", "'s");
}
