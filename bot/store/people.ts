import { commitment, type ErasableFile, forgotten, lost, newSalt } from './erasable.ts';
import type { FsLike } from './fs-port.ts';
import { readLines } from './read-lines.ts';

/** A person as kept beside the chain, first named in line `n`; name and salt are null once forgotten. */
export interface Person {
  p: number;
  n: number;
  name: string | null;
  salt: string | null;
}

/** Who `p1`, `p2`, … are. Few, so all in memory. */
export class People {
  readonly #fs: FsLike;
  readonly #file: ErasableFile;
  readonly #all: Person[] = [];
  readonly #byName = new Map<string, Person>();

  constructor(fs: FsLike, file: ErasableFile) {
    this.#fs = fs;
    this.#file = file;
    if (file.size === 0) return;
    let number = 0;
    for (const line of readLines(fs, file.path, 0, file.size)) {
      this.#add(readPerson(line.text));
      // One line a person: the number of one that cannot be read is never given to another.
      this.#all.length = Math.max(this.#all.length, ++number + 1);
    }
  }

  #add(person: Person | null): void {
    if (person === null) return;
    this.#all[person.p] = person;
    if (person.name !== null) this.#byName.set(person.name, person);
  }

  /** The name behind a pseudonym, or what stands for it. */
  nameOf(pseudonym: string): string {
    const person = this.#all[Number(pseudonym.slice(1))];
    return person === undefined ? lost : (person.name ?? forgotten);
  }

  /** Whoever a pseudonym stands for, or null where the table has no such entry. */
  entry(pseudonym: string): Person | null {
    return this.#all[Number(pseudonym.slice(1))] ?? null;
  }

  /** The person of that name. */
  find(name: string): Person | null {
    return this.#byName.get(name) ?? null;
  }

  /** Meets someone new in line `n`, in memory only: `keep` writes it. */
  meet(name: string, n: number): Person {
    const p = Math.max(1, this.#all.length);
    const person = { p, n, name, salt: newSalt() };
    this.#add(person);
    return person;
  }

  /** Writes and syncs people met. */
  keep(met: readonly Person[]): void {
    this.#file.append(met.map((person) => JSON.stringify(person)));
  }

  /** Takes back people met in lines after `n`, in memory and in the file. */
  dropAfter(n: number): void {
    const stale = this.#all.filter((person) => person.n > n);
    for (const person of stale) {
      delete this.#all[person.p];
      if (person.name !== null) this.#byName.delete(person.name);
    }
    const [first] = stale; // the newest are at the end
    if (first !== undefined) this.#all.length = first.p;
    // Also where nothing is to go: a failed write may have left bytes after the last whole entry.
    this.#file.cutTo(stale.length === 0 ? this.#file.size : this.#startAfter(n));
  }

  #startAfter(n: number): number {
    for (const line of readLines(this.#fs, this.#file.path, 0, this.#file.size)) {
      if ((readPerson(line.text)?.n ?? 0) > n) return line.start;
    }
    return this.#file.size;
  }

  /** Erases a name; its pseudonym stays. False when there was none to erase. */
  forget(person: Person): boolean {
    if (person.name === null) return false;
    const gone = { ...person, name: null, salt: null };
    this.#file.rewrite((line) => (readPerson(line)?.p === person.p ? JSON.stringify(gone) : line));
    this.#byName.delete(person.name);
    this.#all[person.p] = gone;
    return true;
  }

  /** The commitments that the line which first names these people carries. */
  commitments(met: readonly Person[]): Record<string, string> {
    return Object.fromEntries(
      met.map((each) => [`p${each.p}`, commitment(each.salt ?? '', each.name ?? '')]),
    );
  }

  close(): void {
    this.#file.close();
  }
}

/** A line of people.jsonl, or null where it is none. */
export function readPerson(line: string): Person | null {
  try {
    const read: unknown = JSON.parse(line);
    if (typeof read !== 'object' || read === null || !('p' in read) || !('n' in read)) return null;
    const { p, n } = read;
    if (typeof p !== 'number' || typeof n !== 'number') return null;
    const name = 'name' in read && typeof read.name === 'string' ? read.name : null;
    const salt = 'salt' in read && typeof read.salt === 'string' ? read.salt : null;
    return { p, n, name, salt };
  } catch {
    return null; // verify says which line of the journal misses it
  }
}
