import { type JournalLine, parseLine } from './line.ts';
import type { People } from './people.ts';
import { blank, type Texts } from './texts.ts';
import { valueAt } from './unseal.ts';

/** What closing old months erased. */
export interface Closing {
  /** The last line that is closed; 0 when none is that old. */
  through: number;
  texts: number;
  people: number;
}

/** Texts that later lines still build on: the practice file, and words that a person explained. */
const stillNeeded = /\/(?:file|words)$/;

/**
 * Closes the lines up to number `through`: what was typed and said in them is erased, and the names of people whom
 * no later line names. The lines stay in the chain, with pseudonyms, so state and hashes stay as they are.
 */
export function closeLines(
  people: People,
  texts: Texts,
  lines: Iterable<{ text: string }>,
  through: number,
): Closing {
  const refs = new Set<number>();
  const early = new Set<string>();
  const later = new Set<string>();
  for (const { text } of lines) {
    const line = parseLine(text);
    if (line === null) continue;
    const closed = line.n <= through;
    for (const pseudonym of pseudonymsIn(line)) (closed ? early : later).add(pseudonym);
    if (closed) for (const ref of refsToErase(line)) refs.add(ref);
  }
  const gone = refs.size === 0 ? 0 : texts.forget((text) => (refs.has(text.k) ? blank(text) : text.text));
  let forgotten = 0;
  for (const pseudonym of early) {
    const person = later.has(pseudonym) ? null : people.entry(pseudonym);
    if (person !== null && people.forget(person)) forgotten++;
  }
  return { through, texts: gone, people: forgotten };
}

function pseudonymsIn(line: JournalLine): string[] {
  return (line.sealed ?? [])
    .map((pointer) => valueAt(line.turn, pointer))
    .filter((value) => typeof value === 'string');
}

function refsToErase(line: JournalLine): number[] {
  return (line.sealed ?? [])
    .filter((pointer) => !stillNeeded.test(pointer))
    .map((pointer) => valueAt(line.turn, `${pointer}/ref`))
    .filter((ref) => typeof ref === 'number');
}
