import type { Archive } from './archive.ts';
import { LongList, type PackedList } from './long-list.ts';

/** Lengths of lists by what they are of: enough for going back, since lists only grow. */
export type Lengths = ReadonlyMap<string, number>;

/** Lists of one sort by the id of what they are of, as they are in a snapshot. */
export type PackedLists<T> = readonly (readonly [id: string, list: PackedList<T>])[];

/** A long list for every tip (or whatever the ids are of). */
export class Lists<T> {
  readonly #archive: Archive;
  readonly #name: string;
  readonly #lists = new Map<string, LongList<T>>();
  #revision: object | null = null;

  /** `name`: of all of them together in the archive. */
  constructor(archive: Archive, name: string, packed: PackedLists<T> = []) {
    this.#archive = archive;
    this.#name = name;
    for (const [id, list] of packed) this.#lists.set(id, this.#make(id, list));
  }

  /** Another object whenever anything was added to any of them or taken off. */
  get revision(): object {
    this.#revision ??= {};
    return this.#revision;
  }

  get(id: string): LongList<T> | undefined {
    return this.#lists.get(id);
  }

  /** Adds to the end of that one's list. */
  add(id: string, row: T): void {
    const list = this.#lists.get(id) ?? this.#make(id);
    this.#lists.set(id, list);
    list.push(row);
    this.#revision = null;
  }

  [Symbol.iterator](): Iterator<[string, LongList<T>]> {
    return this.#lists[Symbol.iterator]();
  }

  lengths(): Lengths {
    const lengths = new Map<string, number>();
    for (const [id, { length }] of this.#lists) lengths.set(id, length);
    return lengths;
  }

  cutTo(lengths: Lengths): void {
    this.#revision = null;
    for (const [id, list] of this.#lists) {
      const length = lengths.get(id);
      if (length === undefined) this.#lists.delete(id);
      else list.cutTo(length);
    }
  }

  /** As `LongList.retire`, each list. */
  retire(isOld: (row: T) => boolean, least: number): void {
    this.#revision = null;
    for (const list of this.#lists.values()) list.retire(isOld, least);
  }

  pack(): PackedLists<T> {
    return Array.from(this.#lists, ([id, list]) => [id, list.pack()]);
  }

  #make(id: string, packed?: PackedList<T>): LongList<T> {
    return new LongList<T>(this.#archive, `${this.#name}/${id}`, null, packed);
  }
}
