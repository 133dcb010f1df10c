import type { DatabaseSync } from 'node:sqlite';
import type { Archive, KeptBase } from '../../../core/record/archive.ts';
import { isWorthKeeping } from '../../../core/record/checkpoints.ts';
import { aboutOf, type Entry } from '../../../core/record/entry.ts';
import { itemsOf } from '../../../core/record/items-of.ts';
import type { Place } from '../../../core/record/order.ts';
import { asTrouble } from '../trouble.ts';
import { bodyOf, entryIn } from './entry-row.ts';
import { openHistoryDb, statementsOn } from './schema.ts';

type Statements = ReturnType<typeof statementsOn>;

/** Where it is kept. */
export interface HistoryFile {
  readonly path: string;
  /** Makes the file, for this account alone, where it is not there. */
  make(): void;
  /** Takes it away, with what SQLite keeps beside it. */
  discard(): void;
}

/**
 * What is only history, in `history.db`: rebuilt from the journal where it does not fit the snapshot. Between two stamps
 * everything is one transaction, so a crash leaves it as it was at the last; while it is being rebuilt, and has no stamp,
 * each stop is one.
 */
export class History implements Archive {
  readonly #file: HistoryFile;
  #db: DatabaseSync | null = null;
  #do: Statements | null = null;
  /** As in the file: kept here since it is asked at every row. */
  #base = 0;
  #stamp: string | null = null;

  constructor(file: HistoryFile) {
    this.#file = file;
  }

  /** What `commit` was given last; `null`: nothing here fits any snapshot. */
  get stamp(): string | null {
    this.#tell(() => this.#statements);
    return this.#stamp;
  }

  /** Keeps everything on the disk, as what belongs to the snapshot of that stamp. */
  commit(stamp: string): void {
    this.#tell(() => {
      this.#write().setStamp.run(stamp);
      this.#db?.exec('COMMIT');
      this.#stamp = stamp;
    });
  }

  /** As it was at the last commit. */
  rollBack(): void {
    this.#tell(() => {
      if (this.#db?.isTransaction === true) this.#db.exec('ROLLBACK');
      if (this.#do !== null) this.#readHead(this.#do);
    });
  }

  /** Empties it, and leaves nothing on the disk of what was in it. */
  clear(): void {
    this.#tell(() => {
      this.close();
      this.#file.discard();
    });
  }

  close(): void {
    this.#db?.close();
    this.#db = null;
    this.#do = null;
    this.#base = 0;
    this.#stamp = null;
  }

  rows(list: string, from: number, to: number): readonly unknown[] {
    return this.#tell(() => this.#statements.rows.all(list, from, to).map(({ body }) => parsed(body)));
  }

  keyed(list: string, start: string): readonly unknown[] {
    // Keys are of plain characters: nothing that begins so comes after the last of them.
    const end = `${start}\u{10ffff}`;
    return this.#tell(() => this.#statements.keyed.all(list, start, end).map(({ body }) => parsed(body)));
  }

  addRow(list: string, at: number, key: string | null, row: unknown): void {
    this.#tell(() => this.#write().addRow.run(list, at, key, JSON.stringify(row), this.#base + 1));
  }

  value(map: string, key: string): unknown {
    const row = this.#tell(() => this.#statements.value.get(map, key));
    return row === undefined ? undefined : parsed(row.body);
  }

  *values(map: string): Generator<[string, unknown]> {
    const rows = this.#tell(() => this.#statements.values.iterate(map));
    for (const { key, body } of rows) yield [String(key), parsed(body)];
  }

  setValue(map: string, key: string, value: unknown): void {
    this.#tell(() => this.#write().setValue.run(map, key, this.#base + 1, JSON.stringify(value)));
  }

  keepValue(map: string, key: string, value: unknown): void {
    this.#tell(() => this.#write().setValue.run(map, key, 0, JSON.stringify(value)));
  }

  forgetValue(map: string, key: string): void {
    this.#tell(() => this.#write().dropValue.run(map, key));
  }

  entry(id: string): Entry | undefined {
    const [turn, place] = id.split('.');
    const row = this.#tell(() => this.#statements.ofId.get(Number(turn), Number(place)));
    return row === undefined ? undefined : entryIn(row);
  }

  ofTurn(turn: number): readonly Entry[] {
    return this.#tell(() => this.#statements.ofTurn.all(turn).map(entryIn));
  }

  about(id: string): readonly Entry[] {
    return this.#tell(() => this.#statements.about.all(id).map(entryIn));
  }

  placesAbout(item: string): readonly Place[] {
    return this.#tell(() => this.#statements.placesAbout.all(item).map(placeIn));
  }

  after(place: Place | null, most: number): readonly Entry[] {
    const from = place ?? { when: Number.MIN_SAFE_INTEGER, turn: -1, index: -1 };
    return this.#tell(() => this.#statements.after.all(...numbers(from), most).map(entryIn));
  }

  before(place: Place | null, most: number): readonly Entry[] {
    const from = place ?? { when: Number.MAX_SAFE_INTEGER, turn: 0, index: 0 };
    return this.#tell(() => this.#statements.before.all(...numbers(from), most).map(entryIn));
  }

  putEntry(entry: Entry): void {
    this.#tell(() => {
      const to = this.#write();
      const { changes } = to.putEntry.run(...numbers(entry), aboutOf(entry), bodyOf(entry));
      if (changes === 0) return;
      for (const item of new Set(itemsOf(entry.fact))) to.putItem.run(item, ...numbers(entry));
    });
  }

  dropEntry(entry: Entry): void {
    this.#tell(() => {
      const to = this.#write();
      to.dropEntry.run(...numbers(entry));
      for (const item of new Set(itemsOf(entry.fact))) to.dropItem.run(item, ...numbers(entry));
    });
  }

  keepBase(through: Place, state: () => unknown): void {
    this.#tell(() => {
      const to = this.#write();
      this.#base += 1;
      to.putBase.run(this.#base, ...numbers(through), JSON.stringify(state()));
      for (const { number } of to.baseNumbers.all())
        if (!isWorthKeeping(Number(number), this.#base)) to.dropBase.run(Number(number));
      to.setBase.run(this.#base);
      if (this.#stamp === null) this.#db?.exec('COMMIT');
    });
  }

  baseBefore(place: Place): KeptBase | null {
    const row = this.#tell(() => this.#statements.baseBefore.get(...numbers(place)));
    if (row === undefined) return null;
    return { number: Number(row.number), through: placeIn(row), state: parsed(row.body) };
  }

  backTo(base: number): void {
    this.#tell(() => {
      this.#write();
      for (const table of ['row', 'value'])
        this.#db?.prepare(`DELETE FROM ${table} WHERE base > ?`).run(base);
      this.#db?.prepare('DELETE FROM base WHERE number > ?').run(base);
      this.#base = base;
      this.#write().setBase.run(base);
    });
  }

  get #statements(): Statements {
    return this.#do ?? this.#open();
  }

  #open(): Statements {
    try {
      return this.#opened();
    } catch {
      // Damaged, or of another make: it is rebuilt.
      this.clear();
      return this.#opened();
    }
  }

  #opened(): Statements {
    this.#file.make();
    this.#db = openHistoryDb(this.#file.path);
    this.#do = statementsOn(this.#db);
    this.#readHead(this.#do);
    return this.#do;
  }

  #readHead(from: Statements): void {
    const head = from.head.get();
    this.#base = Number(head?.base ?? 0);
    this.#stamp = head?.stamp == null ? null : String(head.stamp);
  }

  /** The statements, in a transaction. */
  #write(): Statements {
    const to = this.#statements;
    if (this.#db?.isTransaction === false) this.#db.exec('BEGIN IMMEDIATE');
    return to;
  }

  #tell<T>(work: () => T): T {
    try {
      return work();
    } catch (cause) {
      throw asTrouble('What is only history could not be kept', cause);
    }
  }
}

function numbers({ when, turn, index }: Place): [number, number, number] {
  // A stretch without beginning or end: SQLite's own numbers end here.
  return [Math.min(Math.max(when, Number.MIN_SAFE_INTEGER), Number.MAX_SAFE_INTEGER), turn, index];
}

function placeIn({ at, turn, place }: Record<string, unknown>): Place {
  return { when: Number(at), turn: Number(turn), index: Number(place) };
}

function parsed(body: unknown): unknown {
  return JSON.parse(String(body));
}
