import type { Archive, KeptBase } from '../../../core/record/archive.ts';
import { isWorthKeeping } from '../../../core/record/checkpoints.ts';
import { aboutOf, type Entry } from '../../../core/record/entry.ts';
import { itemsOf } from '../../../core/record/items-of.ts';
import type { Place } from '../../../core/record/order.ts';
import { bodyOf } from './entry-row.ts';
import { HistoryDb, type HistoryFile } from './history-db.ts';
import { RowDamage } from './row-damage.ts';
import { baseIn, bodyIn, entryOf, itemPlace, numbersOf } from './rows.ts';
import type { Statements } from './schema.ts';
import { sumOfRow } from './sums.ts';

/**
 * What is only history, in `history.db`: rebuilt from the journal where it does not fit the snapshot or is damaged. Every row
 * carries a sum, which is checked when it is read.
 */
export class History implements Archive {
  readonly #db: HistoryDb;

  constructor(file: HistoryFile) {
    this.#db = new HistoryDb(file);
  }

  /** What `commit` was given last; `null`: nothing here fits any snapshot. */
  get stamp(): string | null {
    return this.#db.stamp;
  }

  /** Whether it was found damaged: it is gone, and must be cleared and filled again. */
  get isDamaged(): boolean {
    return this.#db.isDamaged;
  }

  /** Whether the disk would not have it again and again, so that only `toMemory` is left. */
  get isHopeless(): boolean {
    return this.#db.isHopeless;
  }

  /** Whether what is written is there at the next start. */
  get lasts(): boolean {
    return this.#db.lasts;
  }

  /** Keeps everything on the disk, as what belongs to the snapshot of that stamp. */
  commit(stamp: string): void {
    this.#db.tell(() => this.#db.commit(stamp));
  }

  /** As it was at the last commit. */
  rollBack(): void {
    this.#db.tell(() => this.#db.rollBack());
  }

  /** Empties it, and leaves nothing on the disk of what was in it. */
  clear(): void {
    this.#db.tell(() => this.#db.clear());
  }

  /** Empties it and goes on in memory until the next start: where the disk will not have it. */
  toMemory(): void {
    this.#db.toMemory();
  }

  close(): void {
    this.#db.close();
  }

  rows(list: string, from: number, to: number): readonly unknown[] {
    return this.#read(({ rows }) => {
      const found = rows.all(list, from, to);
      if (found.length !== to - from) throw new RowDamage(`Rows of ${list} are missing.`);
      return found.map((row) => bodyIn('row', row));
    });
  }

  keyed(list: string, start: string): readonly unknown[] {
    // Keys are of plain characters: nothing that begins so comes after the last of them.
    const end = `${start}\u{10ffff}`;
    return this.#read(({ keyed }) => keyed.all(list, start, end).map((row) => bodyIn('row', row)));
  }

  addRow(list: string, at: number, key: string | null, row: unknown): void {
    const body = JSON.stringify(row);
    this.#write(({ addRow }) => {
      const base = this.#db.base + 1;
      addRow.run(list, at, key, body, base, sumOfRow(list, at, key, body, base));
    });
  }

  value(map: string, key: string): unknown {
    return this.#read(({ value }) => {
      const row = value.get(map, key);
      return row === undefined ? undefined : bodyIn('value', row);
    });
  }

  *values(map: string): Generator<[string, unknown]> {
    const rows = this.#read(({ values }) => values.iterate(map)[Symbol.iterator]());
    for (;;) {
      const next = this.#read((): [string, unknown] | null => {
        const { done, value: row } = rows.next();
        return done === true ? null : [String(row.key), bodyIn('value', row)];
      });
      if (next === null) return;
      yield next;
    }
  }

  setValue(map: string, key: string, value: unknown): void {
    this.#setValue(map, key, this.#db.base + 1, JSON.stringify(value));
  }

  keepValue(map: string, key: string, value: unknown): void {
    this.#setValue(map, key, 0, JSON.stringify(value));
  }

  #setValue(map: string, key: string, base: number, body: string): void {
    this.#write(({ setValue }) => setValue.run(map, key, base, body, sumOfRow(map, key, base, body)));
  }

  forgetValue(map: string, key: string): void {
    this.#write(({ dropValue }) => dropValue.run(map, key));
  }

  entry(id: string): Entry | undefined {
    const [turn, place] = id.split('.');
    return this.#read(({ ofId }) => {
      const row = ofId.get(Number(turn), Number(place));
      return row === undefined ? undefined : entryOf(row);
    });
  }

  ofTurn(turn: number): readonly Entry[] {
    return this.#read(({ ofTurn }) => ofTurn.all(turn).map(entryOf));
  }

  about(id: string): readonly Entry[] {
    return this.#read(({ about }) => about.all(id).map(entryOf));
  }

  placesAbout(item: string): readonly Place[] {
    // Row by row: of a tip in use for years there are tens of thousands.
    return this.#read(({ placesAbout }) => Array.from(placesAbout.iterate(item), itemPlace));
  }

  after(place: Place | null, most: number): readonly Entry[] {
    const from = place ?? { when: Number.MIN_SAFE_INTEGER, turn: -1, index: -1 };
    return this.#read(({ after }) => after.all(...numbersOf(from), most).map(entryOf));
  }

  before(place: Place | null, most: number): readonly Entry[] {
    const from = place ?? { when: Number.MAX_SAFE_INTEGER, turn: 0, index: 0 };
    return this.#read(({ before }) => before.all(...numbersOf(from), most).map(entryOf));
  }

  putEntry(entry: Entry): void {
    this.#write(({ putEntry, putItem }) => {
      const place = numbersOf(entry);
      const about = aboutOf(entry);
      const body = bodyOf(entry);
      const { changes } = putEntry.run(...place, about, body, sumOfRow(...place, about, body));
      if (changes === 0) return;
      for (const item of new Set(itemsOf(entry.fact))) putItem.run(item, ...place, sumOfRow(item, ...place));
    });
  }

  dropEntry(entry: Entry): void {
    this.#write(({ dropEntry, dropItem }) => {
      const place = numbersOf(entry);
      dropEntry.run(...place);
      for (const item of new Set(itemsOf(entry.fact))) dropItem.run(item, ...place);
    });
  }

  keepBase(through: Place, state: () => unknown): void {
    this.#write(({ putBase, baseNumbers, dropBase }) => {
      const base = this.#db.base + 1;
      const place = numbersOf(through);
      const body = JSON.stringify(state());
      putBase.run(base, ...place, body, sumOfRow(base, ...place, body));
      for (const { number } of baseNumbers.all())
        if (!isWorthKeeping(Number(number), base)) dropBase.run(Number(number));
      this.#db.setBase(base);
      this.#db.commitUnstamped();
    });
  }

  baseBefore(place: Place): KeptBase | null {
    return this.#read(({ baseBefore }) => {
      const row = baseBefore.get(...numbersOf(place));
      return row === undefined ? null : baseIn(row);
    });
  }

  backTo(base: number): void {
    this.#write(({ dropRows, dropValues, dropBases }) => {
      for (const drop of [dropRows, dropValues, dropBases]) drop.run(base);
      this.#db.setBase(base);
    });
  }

  #read<T>(work: (statements: Statements) => T): T {
    return this.#db.tell(() => work(this.#db.statements()));
  }

  #write<T>(work: (statements: Statements) => T): T {
    return this.#db.tell(() => work(this.#db.write()));
  }
}
