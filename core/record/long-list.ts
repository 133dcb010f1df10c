import type { Archive } from './archive.ts';

/** Rows read from the archive at a time. */
const PAGE = 64;
/** Pages at hand: a look-back over many loads goes to the same weeks of a list again and again. */
const PAGES = 32;

/** A list as it is in a snapshot. */
export interface PackedList<T> {
  readonly archived: number;
  readonly recent: readonly T[];
}

/**
 * A list that is only ever added to at its end and cut back there, and whose beginning may be in the archive: what the
 * rules look at stays in memory. Reading is the same for all of it.
 */
export class LongList<T> {
  readonly #archive: Archive;
  readonly #name: string;
  readonly #keyOf: ((row: T) => string) | null;
  #archived: number;
  readonly #recent: T[];
  #revision: object | null = null;
  /** Place of the first row that was not taken as new. */
  #seen = 0;
  /** By the place of their first row, the one read longest ago first. */
  readonly #pages = new Map<number, readonly T[]>();

  constructor(
    archive: Archive,
    name: string,
    keyOf: ((row: T) => string) | null = null,
    packed: PackedList<T> = { archived: 0, recent: [] },
  ) {
    this.#archive = archive;
    this.#name = name;
    this.#keyOf = keyOf;
    this.#archived = packed.archived;
    this.#recent = [...packed.recent];
  }

  /** Another object whenever anything was added or taken off. */
  get revision(): object {
    this.#revision ??= {};
    return this.#revision;
  }

  get length(): number {
    return this.#archived + this.#recent.length;
  }

  /** Counted from the end where it is negative, as in an array. */
  at(index: number): T | undefined {
    const place = index < 0 ? this.length + index : index;
    if (place >= this.#archived) return this.#recent[place - this.#archived];
    if (place < 0) return undefined;
    const from = place - (place % PAGE);
    const rows = this.#pages.get(from);
    // The last page may have grown since.
    return rows !== undefined && place < from + rows.length
      ? rows[place - from]
      : this.#turnTo(from)[place - from];
  }

  push(row: T): void {
    this.#recent.push(row);
    this.#revision = null;
  }

  /** What is in memory, in order: the latest weeks. */
  recent(): readonly T[] {
    return this.#recent;
  }

  /** What was added since this was asked last, or put back after a cut; of what is in memory. For one who asks alone. */
  takeNew(): readonly T[] {
    const fresh = this.#recent.slice(Math.max(0, this.#seen - this.#archived));
    this.#seen = this.length;
    return fresh;
  }

  *newestFirst(): Generator<T> {
    for (let place = this.length - 1; place >= 0; place -= 1) {
      const row = this.at(place);
      if (row !== undefined) yield row;
    }
  }

  /** All of it, in order. */
  *all(): Generator<T> {
    for (let place = 0; place < this.length; place += 1) {
      const row = this.at(place);
      if (row !== undefined) yield row;
    }
  }

  lastIndexOf(row: T): number {
    let place = this.length - 1;
    while (place >= 0 && this.at(place) !== row) place -= 1;
    return place;
  }

  /** Rows whose key begins so, in order. */
  keyed(start: string): readonly T[] {
    const keyOf = this.#keyOf;
    if (keyOf === null) return [];
    const recent = this.#recent.filter((row) => keyOf(row).startsWith(start));
    if (this.#archived === 0) return recent;
    return [...this.#typed(this.#archive.keyed(this.#name, start)), ...recent];
  }

  /** Takes off everything from that length on; what is archived is before every checkpoint. */
  cutTo(length: number): void {
    this.#recent.length = Math.max(0, length - this.#archived);
    this.#seen = Math.min(this.#seen, length);
    this.#revision = null;
  }

  /** Hands the rows at the beginning for which that holds to the archive, but never the last `least`. */
  retire(isOld: (row: T) => boolean, least: number): void {
    let count = 0;
    this.#revision = null;
    for (const row of this.#recent) {
      if (count >= this.#recent.length - least || !isOld(row)) break;
      this.#archive.addRow(this.#name, this.#archived + count, this.#keyOf?.(row) ?? null, row);
      count += 1;
    }
    this.#recent.splice(0, count);
    this.#archived += count;
  }

  pack(): PackedList<T> {
    return { archived: this.#archived, recent: this.#recent };
  }

  #turnTo(from: number): readonly T[] {
    const rows = this.#typed(this.#archive.rows(this.#name, from, Math.min(from + PAGE, this.#archived)));
    this.#pages.delete(from);
    const [oldest] = this.#pages.keys();
    if (oldest !== undefined && this.#pages.size >= PAGES) this.#pages.delete(oldest);
    this.#pages.set(from, rows);
    return rows;
  }

  #typed(rows: readonly unknown[]): readonly T[] {
    // What was put in comes back, and only this list puts rows under its name.
    return rows as readonly T[];
  }
}
