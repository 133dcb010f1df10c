import type { DatabaseSync } from 'node:sqlite';
import { asTrouble, StoreTrouble, sqliteKind } from '../trouble.ts';
import { checkAll } from './check.ts';
import { RowDamage } from './row-damage.ts';
import { openHistoryDb, type Statements, statementsOn } from './schema.ts';
import { sumOfHead } from './sums.ts';

/** Where a history is kept. */
export interface HistoryFile {
  readonly path: string;
  /** Makes the file, for this account alone, where it is not there. */
  make(): void;
  /** Bytes. */
  size(): number;
  /** Takes it away, with what SQLite keeps beside it. */
  discard(): void;
}

/** Names of SQLite's for a file that is no use: another make (1), not to be written or opened (8, 14), damaged (11), no database (26). */
const OF_NO_USE: ReadonlySet<number | null> = new Set([1, 8, 11, 14, 26]);
const DAMAGED: ReadonlySet<number | null> = new Set([11, 26]);

/**
 * A file of up to so many bytes is checked in full when it is opened (some 25,000 entries, 0.15 s). Of a larger one, what is
 * read is held against its sums, and `verify` checks the rest.
 */
const CHECKED_AT_START = 16 << 20;

/**
 * The file of a history, its statements and its one transaction: everything between two stamps lasts together or not at all.
 * While it is being rebuilt, and has no stamp, each stop lasts.
 */
export class HistoryDb {
  readonly #file: HistoryFile;
  #inMemory = false;
  #isDamaged = false;
  /** Since the last commit. */
  #failures = 0;
  #db: DatabaseSync | null = null;
  #do: Statements | null = null;
  /** As in the file: kept here since it is asked at every row. */
  #base = 0;
  #stamp: string | null = null;

  constructor(file: HistoryFile) {
    this.#file = file;
  }

  /** Whether something was found not to be as it was written: the file is gone, and nothing is answered until `clear`. */
  get isDamaged(): boolean {
    return this.#isDamaged;
  }

  /** Whether what is written is there at the next start. */
  get lasts(): boolean {
    return !this.#inMemory && this.#file.path !== ':memory:';
  }

  /** Whether the disk would not, again and again: only memory is left. */
  get isHopeless(): boolean {
    return this.#failures > 1;
  }

  get base(): number {
    return this.#base;
  }

  /** What the last commit was given; `null`: nothing here fits any snapshot. */
  get stamp(): string | null {
    if (this.#isDamaged) return null;
    return this.tell(() => {
      this.statements();
      return this.#stamp;
    });
  }

  statements(): Statements {
    if (this.#isDamaged) throw new RowDamage('It was found damaged before.');
    return this.#do ?? this.#open();
  }

  /** The statements, in a transaction. */
  write(): Statements {
    const to = this.statements();
    if (this.#db?.isTransaction === false) this.#db.exec('BEGIN IMMEDIATE');
    return to;
  }

  setBase(base: number): void {
    this.#base = base;
    this.write().setHead.run(base, this.#stamp, sumOfHead(base, this.#stamp));
  }

  /** What was written lasts, where it belongs to no snapshot yet. */
  commitUnstamped(): void {
    if (this.#stamp === null) this.#db?.exec('COMMIT');
  }

  commit(stamp: string): void {
    this.write().setHead.run(this.#base, stamp, sumOfHead(this.#base, stamp));
    this.#db?.exec('COMMIT');
    this.#stamp = stamp;
    this.#failures = 0;
  }

  rollBack(): void {
    if (this.#db?.isTransaction === true) this.#db.exec('ROLLBACK');
    if (this.#do !== null) this.#readHead(this.#do);
  }

  clear(): void {
    this.close();
    this.#file.discard();
    this.#isDamaged = false;
  }

  /** From now on everything is in memory, and nothing is there yet: the disk will not have it. */
  toMemory(): void {
    this.close();
    this.#inMemory = true;
    this.#isDamaged = false;
    this.#failures = 0;
  }

  close(): void {
    const db = this.#db;
    this.#db = null;
    this.#do = null;
    this.#base = 0;
    this.#stamp = null;
    db?.close();
  }

  /** Runs a piece of work; what goes wrong comes out in plain words, and damage is remembered. */
  tell<T>(work: () => T): T {
    try {
      return work();
    } catch (cause) {
      this.#failures += 1;
      if (!(cause instanceof RowDamage) && !DAMAGED.has(sqliteKind(cause)))
        throw asTrouble('What is only history could not be kept', cause);
      this.#giveUp();
      throw new StoreTrouble('What is only history (history.db) is damaged. It is worked out again.', {
        cause,
      });
    }
  }

  /** Takes the damaged file away at once: whatever happens next, no later start trusts it. */
  #giveUp(): void {
    this.#isDamaged = true;
    try {
      this.close();
      this.#file.discard();
    } catch {
      // The next start finds the damage again.
    }
  }

  #open(): Statements {
    try {
      return this.#opened();
    } catch (cause) {
      // A full disk or a fault of the disk may pass: what is there may still fit.
      if (!(cause instanceof RowDamage) && !OF_NO_USE.has(sqliteKind(cause))) throw cause;
      this.clear();
      return this.#opened();
    }
  }

  #opened(): Statements {
    if (!this.#inMemory) this.#file.make();
    this.#db = openHistoryDb(this.#inMemory ? ':memory:' : this.#file.path);
    if (!this.#inMemory && this.#file.size() <= CHECKED_AT_START) checkAll(this.#db);
    this.#do = statementsOn(this.#db);
    this.#readHead(this.#do);
    return this.#do;
  }

  #readHead(from: Statements): void {
    const head = from.head.get();
    const base = Number(head?.base ?? 0);
    const stamp = head?.stamp == null ? null : String(head.stamp);
    if (head?.sum !== sumOfHead(base, stamp)) throw new RowDamage('The head is not as it was written.');
    this.#base = base;
    this.#stamp = stamp;
  }
}
