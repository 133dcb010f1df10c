import { forgotten } from './erasable.ts';
import { parseLine } from './line.ts';
import type { People } from './people.ts';
import { blank, type Text, type Texts } from './texts.ts';
import { openLine } from './unseal.ts';

/** What to forget: a person's name (and where it stands in texts), or what was typed or said in one line. */
export type ForgetWhat = { person: string } | { line: number };

/** What was erased. */
export interface Forgetting {
  /** The pseudonym that stands for the person from now on; null where no line names them. */
  pseudonym: string | null;
  /** How many texts were erased, or lost the name. */
  texts: number;
}

/**
 * Erases from the tables beside the chain. A name is taken out of every text too, as a word of its own. Throws where
 * the disk will not; done again, it does what is left.
 */
export function forgetIn(
  people: People,
  texts: Texts,
  what: ForgetWhat,
  refsOf: (n: number) => number[],
): Forgetting {
  if ('line' in what) {
    const refs = new Set(refsOf(what.line));
    if (refs.size === 0) return { pseudonym: null, texts: 0 };
    return { pseudonym: null, texts: texts.forget((text) => (refs.has(text.k) ? blank(text) : text.text)) };
  }
  const person = people.find(what.person);
  const pseudonym = person === null ? null : `p${person.p}`;
  const gone = texts.forget((text) => without(text, what.person, pseudonym ?? forgotten));
  if (person !== null) people.forget(person);
  return { pseudonym, texts: gone };
}

/** A text with a name taken out where it stands as a word of its own ("Ann", not "Annual"). */
function without(text: Text, name: string, stands: string): string | null {
  if (text.text === null || name === '') return text.text;
  const said = text.json ? JSON.stringify(name).slice(1, -1) : name;
  if (!text.text.includes(said)) return text.text;
  const literal = said.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
  const word = new RegExp(`(?<![\\p{L}\\p{N}])${literal}(?![\\p{L}\\p{N}])`, 'gu');
  // A chat identity stays one, so that what is read as one still reads.
  return text.text.replace(word, () => (name.startsWith('@') ? `@${stands}:forgotten` : stands));
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
