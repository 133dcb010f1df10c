import type { Archive, KeptBase } from './archive.ts';
import { aboutOf, type Entry } from './entry.ts';
import { itemsOf } from './items-of.ts';
import { indexOfPlace, inOrder, type Place } from './order.ts';

interface Row {
  readonly key: string | null;
  readonly json: string;
  readonly base: number;
}

/** An archive in memory: for rehearsals and tests, and where there is no disk. */
export class MemoryArchive implements Archive {
  readonly #rows = new Map<string, Row[]>();
  readonly #values = new Map<string, Map<string, { readonly json: string; readonly base: number }[]>>();
  readonly #entries: Entry[] = [];
  readonly #byTurn = new Map<number, Entry[]>();
  readonly #about = new Map<string, Entry[]>();
  #bases: (KeptBase & { readonly state: string })[] = [];
  #base = 0;

  /** Another one that has the same now: for going on twice from one point. */
  copy(): MemoryArchive {
    const copy = new MemoryArchive();
    for (const [list, rows] of this.#rows) copy.#rows.set(list, [...rows]);
    for (const [map, values] of this.#values) copy.#values.set(map, new Map(values));
    for (const entry of this.#entries) copy.putEntry(entry);
    copy.#bases = [...this.#bases];
    copy.#base = this.#base;
    return copy;
  }

  rows(list: string, from: number, to: number): readonly unknown[] {
    return (this.#rows.get(list) ?? []).slice(from, to).map(({ json }) => JSON.parse(json));
  }

  keyed(list: string, start: string): readonly unknown[] {
    const rows = (this.#rows.get(list) ?? []).filter(({ key }) => key?.startsWith(start) === true);
    return rows.map(({ json }) => JSON.parse(json));
  }

  addRow(list: string, at: number, key: string | null, row: unknown): void {
    const rows = this.#rows.get(list) ?? [];
    if (at !== rows.length)
      throw new RangeError(`${list} has ${rows.length} rows, row ${at} does not follow`);
    rows.push({ key, json: JSON.stringify(row), base: this.#base + 1 });
    this.#rows.set(list, rows);
  }

  value(map: string, key: string): unknown {
    const json = this.#values.get(map)?.get(key)?.at(-1)?.json;
    return json === undefined ? undefined : JSON.parse(json);
  }

  *values(map: string): Generator<[string, unknown]> {
    for (const key of this.#values.get(map)?.keys() ?? []) yield [key, this.value(map, key)];
  }

  setValue(map: string, key: string, value: unknown): void {
    const values = this.#values.get(map) ?? new Map();
    values.set(key, [...(values.get(key) ?? []), { json: JSON.stringify(value), base: this.#base + 1 }]);
    this.#values.set(map, values);
  }

  keepValue(map: string, key: string, value: unknown): void {
    const values = this.#values.get(map) ?? new Map();
    values.set(key, [{ json: JSON.stringify(value), base: 0 }]);
    this.#values.set(map, values);
  }

  forgetValue(map: string, key: string): void {
    this.#values.get(map)?.delete(key);
  }

  entry(id: string): Entry | undefined {
    return this.ofTurn(Number.parseInt(id, 10)).find((entry) => entry.id === id);
  }

  ofTurn(turn: number): readonly Entry[] {
    return (this.#byTurn.get(turn) ?? []).toSorted((one, other) => one.index - other.index);
  }

  about(id: string): readonly Entry[] {
    return this.#about.get(id) ?? [];
  }

  placesAbout(item: string): readonly Place[] {
    return this.#entries.filter(({ fact }) => itemsOf(fact).includes(item));
  }

  after(place: Place | null, most: number): readonly Entry[] {
    const from = place === null ? 0 : indexOfPlace(this.#entries, { ...place, index: place.index + 1 });
    return this.#entries.slice(from, from + most);
  }

  before(place: Place | null, most: number): readonly Entry[] {
    const to = place === null ? this.#entries.length : indexOfPlace(this.#entries, place);
    return this.#entries.slice(Math.max(0, to - most), to).reverse();
  }

  putEntry(entry: Entry): void {
    if (this.entry(entry.id) !== undefined) return;
    this.#entries.splice(indexOfPlace(this.#entries, entry), 0, entry);
    this.#byTurn.set(entry.turn, [...(this.#byTurn.get(entry.turn) ?? []), entry]);
    const about = aboutOf(entry);
    if (about !== null) this.#about.set(about, [...this.about(about), entry]);
  }

  dropEntry(entry: Entry): void {
    const index = indexOfPlace(this.#entries, entry);
    if (this.#entries[index]?.id !== entry.id) return;
    this.#entries.splice(index, 1);
    const others = (this.#byTurn.get(entry.turn) ?? []).filter(({ id }) => id !== entry.id);
    if (others.length === 0) this.#byTurn.delete(entry.turn);
    else this.#byTurn.set(entry.turn, others);
    const about = aboutOf(entry);
    if (about === null) return;
    this.#about.set(
      about,
      this.about(about).filter(({ id }) => id !== entry.id),
    );
  }

  keepBase(through: Place, state: () => unknown): void {
    this.#base += 1;
    this.#bases.push({ number: this.#base, through, state: JSON.stringify(state()) });
  }

  baseBefore(place: Place): KeptBase | null {
    const base = this.#bases.findLast(({ through }) => inOrder(through, place) < 0);
    return base === undefined ? null : { ...base, state: JSON.parse(base.state) };
  }

  backTo(base: number): void {
    this.#base = base;
    this.#bases = this.#bases.filter(({ number }) => number <= base);
    for (const [list, rows] of this.#rows)
      this.#rows.set(
        list,
        rows.filter((row) => row.base <= base),
      );
    for (const values of this.#values.values())
      for (const [key, versions] of values) {
        const left = versions.filter((each) => each.base <= base);
        if (left.length === 0) values.delete(key);
        else values.set(key, left);
      }
  }
}
