import type { Archive } from './archive.ts';

/** A value with its place in the order in which keys were first given one. */
interface Kept<V> {
  readonly order: number;
  readonly value: V;
}

interface Change<V> {
  readonly key: string;
  /** What stood in memory; `undefined`: nothing, or what the archive has. */
  readonly before: Kept<V> | undefined;
  readonly isNew: boolean;
}

/** A map as it is in a snapshot. */
export interface PackedMap<V> {
  readonly count: number;
  readonly kept: readonly (readonly [key: string, order: number, value: V])[];
}

/** Looked up in the archive and kept for the next time. */
const CACHED = 256;

/**
 * A map that grows with the record, whose old values may be in the archive, and that can go back: every change is kept with
 * what stood before it. Keys are only ever added or given another value; a value is replaced, never changed in place.
 */
export class LongMap<V> {
  readonly #archive: Archive;
  readonly #name: string;
  readonly #kept = new Map<string, Kept<V>>();
  readonly #cache = new Map<string, Kept<V> | undefined>();
  #changes: Change<V>[] = [];
  /** Keys that there have ever been. */
  #count: number;
  #revision: object | null = null;
  /** `#kept` is in order. */
  #sorted = true;

  constructor(archive: Archive, name: string, packed: PackedMap<V> = { count: 0, kept: [] }) {
    this.#archive = archive;
    this.#name = name;
    this.#count = packed.count;
    for (const [key, order, value] of packed.kept) this.#kept.set(key, { order, value });
  }

  /** Another object whenever anything in it was changed or taken back. */
  get revision(): object {
    this.#revision ??= {};
    return this.#revision;
  }

  get(key: string): V | undefined {
    return (this.#kept.get(key) ?? this.#look(key))?.value;
  }

  has(key: string): boolean {
    return this.#kept.has(key) || this.#look(key) !== undefined;
  }

  set(key: string, value: V): void {
    const before = this.#kept.get(key);
    const known = before ?? this.#look(key);
    // Back from the archive: it belongs before what came later.
    if (before === undefined && known !== undefined) this.#sorted = false;
    const order = known?.order ?? this.#count;
    if (known === undefined) this.#count += 1;
    this.#changes.push({ key, before, isNew: known === undefined });
    this.#revision = null;
    this.#kept.set(key, { order, value });
  }

  /** What is in memory, in the order in which its keys came first: the first and the last of all, and what `retire` left. */
  recent(): V[] {
    this.#sort();
    return Array.from(this.#kept.values(), ({ value }) => value);
  }

  /** Every value, in the order in which its key came first. For what is seldom asked: it reads the whole archive. */
  all(): V[] {
    const all = new Map<string, Kept<V>>();
    for (const [key, value] of this.#archive.values(this.#name)) all.set(key, this.#typed(value));
    for (const [key, value] of this.#kept) all.set(key, value);
    return [...all.values()].sort(inOrder).map(({ value }) => value);
  }

  /** What the archive has, whatever was set since. */
  archived(key: string): V | undefined {
    return this.#look(key)?.value;
  }

  /** How many changes there have been since the last `settle`. */
  get changes(): number {
    return this.#changes.length;
  }

  /** Takes back every change after the first `changes`. */
  undoTo(changes: number): void {
    if (this.#changes.length > changes) this.#revision = null;
    while (this.#changes.length > changes) {
      const last = this.#changes.pop();
      if (last === undefined) return;
      if (last.before === undefined) this.#kept.delete(last.key);
      else this.#kept.set(last.key, last.before);
      if (last.isNew) this.#count -= 1;
    }
  }

  /** What was changed so far is not taken back any more. */
  settle(): void {
    this.#changes = [];
  }

  /** Hands values for which that holds to the archive, but never the first or the last key's. Not with changes to take back. */
  retire(isOld: (value: V, key: string) => boolean): void {
    this.#revision = null;
    for (const [key, kept] of this.#kept) {
      if (kept.order === 0 || kept.order === this.#count - 1 || !isOld(kept.value, key)) continue;
      this.#archive.setValue(this.#name, key, kept);
      this.#kept.delete(key);
      this.#cache.delete(key);
    }
  }

  pack(): PackedMap<V> {
    this.#sort();
    return {
      count: this.#count,
      kept: Array.from(this.#kept, ([key, { order, value }]) => [key, order, value]),
    };
  }

  #look(key: string): Kept<V> | undefined {
    // Nothing was ever handed over: most records are so small.
    if (this.#kept.size >= this.#count) return undefined;
    if (this.#cache.has(key)) return this.#cache.get(key);
    const found = this.#archive.value(this.#name, key);
    const kept = found === undefined ? undefined : this.#typed(found);
    if (this.#cache.size >= CACHED) this.#cache.clear();
    this.#cache.set(key, kept);
    return kept;
  }

  #sort(): void {
    if (this.#sorted) return;
    const sorted = [...this.#kept].sort(([, one], [, other]) => inOrder(one, other));
    this.#kept.clear();
    for (const [key, value] of sorted) this.#kept.set(key, value);
    this.#sorted = true;
  }

  #typed(value: unknown): Kept<V> {
    // What was put in comes back, and only this map puts values under its name.
    return value as Kept<V>;
  }
}

function inOrder(one: { readonly order: number }, other: { readonly order: number }): number {
  return one.order - other.order;
}
