import { aboutOf, type Entry } from './entry.ts';
import { indexOfPlace } from './order.ts';

/** Entries in memory, in the record's order, found by their id, by their note and by what they decide about. */
export class RecentEntries {
  #entries: Entry[] = [];
  readonly #byId = new Map<string, Entry>();
  readonly #byTurn = new Map<number, Entry[]>();
  readonly #about = new Map<string, Entry[]>();

  get all(): readonly Entry[] {
    return this.#entries;
  }

  get length(): number {
    return this.#entries.length;
  }

  entry(id: string): Entry | undefined {
    return this.#byId.get(id);
  }

  ofTurn(turn: number): readonly Entry[] {
    return this.#byTurn.get(turn) ?? [];
  }

  /** Decisions about the entry of that id. */
  about(id: string): readonly Entry[] {
    return this.#about.get(id) ?? [];
  }

  /** Where it stands or belongs. Most come at the end. */
  indexOf(entry: Entry): number {
    const last = this.#entries.at(-1);
    if (last === undefined) return 0;
    return entry.when > last.when ? this.#entries.length : indexOfPlace(this.#entries, entry);
  }

  /** Puts it at the index that `indexOf` gave. */
  put(entry: Entry, index = this.#entries.length): void {
    if (index === this.#entries.length) this.#entries.push(entry);
    else this.#entries.splice(index, 0, entry);
    this.#byId.set(entry.id, entry);
    addTo(this.#byTurn, entry.turn, entry);
    const about = aboutOf(entry);
    if (about !== null) addTo(this.#about, about, entry);
  }

  /** Takes out the one at that index. */
  remove(index: number): void {
    for (const entry of this.#entries.splice(index, 1)) this.#forget(entry);
  }

  /** Takes out the first so many, and gives them. */
  shift(count: number): readonly Entry[] {
    const gone = this.#entries.splice(0, count);
    for (const entry of gone) this.#forget(entry);
    return gone;
  }

  #forget(entry: Entry): void {
    this.#byId.delete(entry.id);
    takeFrom(this.#byTurn, entry.turn, entry);
    const about = aboutOf(entry);
    if (about !== null) takeFrom(this.#about, about, entry);
  }
}

function addTo<K>(map: Map<K, Entry[]>, key: K, entry: Entry): void {
  const others = map.get(key);
  if (others === undefined) map.set(key, [entry]);
  else others.push(entry);
}

function takeFrom<K>(map: Map<K, Entry[]>, key: K, gone: Entry): void {
  const left = (map.get(key) ?? []).filter(({ id }) => id !== gone.id);
  if (left.length === 0) map.delete(key);
  else map.set(key, left);
}
