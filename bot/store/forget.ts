import { parseLine } from './line.ts';
import type { People } from './people.ts';
import { openLine } from './seal.ts';
import type { Texts } from './texts.ts';

/** What to forget: a person's name, or what was typed in one line of the record. */
export type ForgetWhat = { person: string } | { line: number };

/** What was erased. */
export interface Forgetting {
  /** The pseudonym that stands in the chain, where a person was forgotten. */
  pseudonym: string | null;
  /** How many texts were erased. */
  texts: number;
}

/** Erases from the tables beside the chain. Throws where the disk will not; then nothing is erased. */
export function forgetIn(
  people: People,
  texts: Texts,
  what: ForgetWhat,
  refsOf: (n: number) => number[],
): Forgetting {
  if ('person' in what) {
    const person = people.find(what.person);
    if (person === null || !people.forget(person)) return { pseudonym: null, texts: 0 };
    return { pseudonym: `p${person.p}`, texts: 0 };
  }
  const refs = refsOf(what.line);
  return { pseudonym: null, texts: refs.length === 0 ? 0 : texts.forget(new Set(refs)) };
}

/** The numbers under which the texts of a line are kept; null where the text is not line `n`. */
export function refsIn(text: string, n: number): number[] | null {
  const line = parseLine(text);
  if (line?.n !== n) return null;
  const refs: number[] = [];
  const opener = { nameOf: (pseudonym: string) => pseudonym, textOf: (ref: number) => `${refs.push(ref)}` };
  openLine(line, opener);
  return refs;
}
