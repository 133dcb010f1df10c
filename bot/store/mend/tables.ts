import { commitment, openErasable } from '../erasable.ts';
import { filesOf } from '../folder.ts';
import type { FsLike } from '../fs-port.ts';
import type { JournalLine } from '../line.ts';
import { People, type Person, readPerson } from '../people.ts';
import { tableFault } from '../table-check.ts';
import { readText, type Text, Texts } from '../texts.ts';
import { valueAt } from '../unseal.ts';
import { linesOf } from './piece-lines.ts';
import type { Piece } from './pieces.ts';

/** Names and texts to be put in, by number, and those that lines speak of after the place where the rest is set aside. */
export interface TablePlan {
  readonly people: ReadonlyMap<number, Person>;
  readonly texts: ReadonlyMap<number, Text>;
  readonly used: { readonly people: ReadonlySet<number>; readonly texts: ReadonlySet<number> };
  /** A line of a table does not read as it was written. */
  readonly isFaulty: boolean;
  readonly words: readonly string[];
}

interface Tables {
  readonly people: People;
  readonly texts: Texts;
}

/**
 * Holds names and texts beside the chain against the journal as it will be, and takes from the backup those that are not
 * there or not as they were. What was forgotten here stays forgotten.
 */
export function planTables(
  fs: FsLike,
  folder: string,
  from: string,
  pieces: readonly Piece[],
  cutAfter: number | null,
): TablePlan {
  const search = new Search(tablesIn(fs, folder), tablesIn(fs, from), cutAfter);
  for (const line of linesOf(pieces)) search.line(line);
  const { people, texts, used, lost } = search;
  const files = filesOf(folder);
  const fault = tableFault(fs, files.people, readPerson) ?? tableFault(fs, files.texts, readText);
  const words = inWords(people.size + texts.size, lost);
  if (fault !== null) words.unshift(`${fault.slice(0, -1)}: it is left out.`);
  return { people, texts, used, isFaulty: fault !== null, words };
}

class Search {
  readonly people = new Map<number, Person>();
  readonly texts = new Map<number, Text>();
  readonly used = { people: new Set<number>(), texts: new Set<number>() };
  lost = 0;
  readonly #here: Tables;
  readonly #there: Tables;
  readonly #cutAfter: number | null;

  constructor(here: Tables, there: Tables, cutAfter: number | null) {
    this.#here = here;
    this.#there = there;
    this.#cutAfter = cutAfter;
  }

  line(line: JournalLine): void {
    const isAfterCut = this.#cutAfter !== null && line.n > this.#cutAfter;
    for (const [pseudonym, of] of Object.entries(line.people ?? {})) {
      if (isAfterCut) this.used.people.add(Number(pseudonym.slice(1)));
      this.#person(line.n, pseudonym, of);
    }
    for (const { ref, sealed } of sealedIn(line)) {
      if (isAfterCut) this.used.texts.add(ref);
      this.#text(line.n, ref, sealed);
    }
  }

  #person(n: number, pseudonym: string, of: string): void {
    if (personFits(this.#here.people.entry(pseudonym), n, of)) return;
    const entry = this.#there.people.entry(pseudonym);
    if (entry !== null && personFits(entry, n, of)) this.people.set(entry.p, entry);
    else this.lost++;
  }

  #text(n: number, ref: number, sealed: string): void {
    if (textFits(this.#here.texts.entry(ref), n, sealed)) return;
    const entry = this.#there.texts.entry(ref);
    if (entry !== null && textFits(entry, n, sealed)) this.texts.set(ref, entry);
    else this.lost++;
  }
}

function inWords(taken: number, lost: number): string[] {
  const words: string[] = [];
  if (taken > 0)
    words.push(
      `${taken} ${taken === 1 ? 'name or text comes' : 'names and texts come'} from the backup. What was forgotten since it was made may be among them: then forget it again.`,
    );
  if (lost > 0) words.push(`${lost} names or texts are in neither: they are shown as lost.`);
  return words;
}

function tablesIn(fs: FsLike, folder: string): Tables {
  const { people, texts } = filesOf(folder);
  return {
    people: new People(fs, openErasable(fs, people, true)),
    texts: new Texts(fs, openErasable(fs, texts, true)),
  };
}

function personFits(entry: Person | null, n: number, of: string): boolean {
  if (entry?.n !== n) return false;
  return entry.name === null ? entry.salt === null : commitment(entry.salt ?? '', entry.name) === of;
}

function textFits(entry: Text | null, n: number, of: string): boolean {
  if (entry?.n !== n) return false;
  return entry.salt === null || commitment(entry.salt, entry.text ?? '') === of;
}

function sealedIn(line: JournalLine): { ref: number; sealed: string }[] {
  return (line.sealed ?? []).flatMap((pointer) => {
    const ref = valueAt(line.turn, `${pointer}/ref`);
    const sealed = valueAt(line.turn, `${pointer}/sealed`);
    return typeof ref === 'number' && typeof sealed === 'string' ? [{ ref, sealed }] : [];
  });
}
