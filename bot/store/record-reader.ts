import type { Head } from './chain.ts';
import { refsIn } from './forget.ts';
import type { FsLike } from './fs-port.ts';
import { removeIfThere } from './fs-whole.ts';
import type { JournalLine } from './line.ts';
import { listMonths, type Month } from './months.ts';
import { type OpenedJournal, start } from './open-journal.ts';
import { readRecord, textsOf } from './read-record.ts';
import { readSome } from './read-some.ts';
import { eventItem, type RecordIndex, recordIndex } from './record-index.ts';
import type { Place } from './scan.ts';
import type { Snapshot } from './snapshot.ts';
import { asTrouble, plainly } from './trouble.ts';
import type { Opener } from './unseal.ts';

/** What the reader must know of the store as it is now. */
export interface Standing {
  head(): Head;
  /** Just after the last line. */
  end(): Place | null;
  snapshot(): Snapshot | null;
  opener: Opener;
}

/** Finds and reads lines of an open journal: in order, by number, by item. Disk trouble comes out as StoreTrouble. */
export class RecordReader {
  readonly #fs: FsLike;
  readonly #folder: string;
  readonly #now: Standing;
  readonly #index: RecordIndex;
  #months: Month[];
  #checkedAfter: Head;

  constructor(fs: FsLike, folder: string, indexPath: string, journal: OpenedJournal, now: Standing) {
    this.#fs = fs;
    this.#folder = folder;
    this.#now = now;
    this.#months = journal.months;
    this.#checkedAfter = journal.checkedAfter;
    const source = { head: () => now.head(), texts: (from: Place | null) => this.texts(from) };
    this.#index = recordIndex(indexPath, start, source, () => {
      for (const end of ['', '-wal', '-shm']) removeIfThere(fs, `${indexPath}${end}`);
    });
  }

  /** The month files, listed again once a new one was begun. */
  months(): readonly Month[] {
    const end = this.#now.end();
    if (end !== null && this.#months.at(-1)?.name !== end.month)
      this.#months = listMonths(this.#fs, this.#folder);
    return this.#months;
  }

  /** The texts of lines from a place on, as they are on the disk. */
  texts(from: Place | null): Generator<{ text: string; place: Place }> {
    return textsOf(this.#fs, { months: this.months(), from, to: this.#now.end() });
  }

  *lines(after: number): Generator<JournalLine> {
    if (after >= this.#now.head().n) return;
    const check = after < this.#checkedAfter.n ? this.#checkedAfter : null;
    try {
      const reading = { months: this.months(), from: this.#placeBefore(after + 1), to: this.#now.end() };
      yield* readRecord(this.#fs, { ...reading, after, check, opener: this.#now.opener });
    } catch (cause) {
      throw asTrouble('The record could not be read', cause);
    }
    if (check !== null && after === 0) this.#checkedAfter = start;
  }

  /** The lines of these numbers, which must rise. */
  *some(numbers: () => readonly number[]): Generator<JournalLine> {
    try {
      this.#index.catchUp();
      const near = (n: number): Place | null => this.#placeBefore(n);
      const shelves = { months: this.months(), to: this.#now.end(), near, opener: this.#now.opener };
      yield* readSome(this.#fs, shelves, numbers());
    } catch (cause) {
      throw asTrouble('The record could not be read', cause);
    }
  }

  about(item: string): Generator<JournalLine> {
    return this.some(() => this.#index.about(item));
  }

  lineOfEvent(eventId: string): number | null {
    return this.#index.about(eventItem(eventId))[0] ?? null;
  }

  /** The numbers under which the texts of line `n` are kept. */
  refsOf(n: number): number[] {
    for (const { text } of this.texts(this.#placeBefore(n))) {
      const refs = refsIn(text, n);
      if (refs !== null) return refs;
    }
    return [];
  }

  /** The number of the last line in the files of months before `month`. */
  lastBefore(month: string): number {
    const open = plainly('The record could not be read', () => this.months()).find(
      (each) => each.name >= month,
    );
    return open === undefined ? this.#now.head().n : (open.first ?? 1) - 1;
  }

  /** Takes what is new into the index. */
  catchUp(): void {
    this.#index.catchUp();
  }

  close(): void {
    this.#index.close();
  }

  #placeBefore(n: number): Place | null {
    const kept = this.#now.snapshot();
    if (kept !== null && kept.n + 1 === n) return kept.end;
    const near = this.#index.near(n);
    const month = this.months().findLast((each) => each.first !== null && each.first <= n);
    if (month === undefined) return near;
    return near !== null && near.month >= month.name ? near : { month: month.name, offset: 0 };
  }
}
