import { dirname } from 'node:path';
import { type Burst, makeBurst, type NewTurn } from './burst.ts';
import type { Head } from './chain.ts';
import { type Closing, closeLines } from './close-months.ts';
import { openErasable } from './erasable.ts';
import { checkVersion, filesOf } from './folder.ts';
import { type Forgetting, type ForgetWhat, forgetIn, refsIn } from './forget.ts';
import type { FsLike } from './fs-port.ts';
import { removeIfThere, syncFolder } from './fs-whole.ts';
import { type JournalFile, openJournalFile } from './journal-file.ts';
import type { JournalLine } from './line.ts';
import type { Lock } from './lock.ts';
import { listMonths, type Month } from './months.ts';
import { type OpenedJournal, openJournal, start } from './open-journal.ts';
import { openTransport } from './open-transport.ts';
import { People } from './people.ts';
import { readRecord, textsOf } from './read-record.ts';
import { readSome } from './read-some.ts';
import { eventItem, type RecordIndex, recordIndex } from './record-index.ts';
import type { Place } from './scan.ts';
import { openSnapshot } from './snapshot.ts';
import type { Store } from './store.ts';
import { Texts } from './texts.ts';
import type { Transport } from './transport.ts';
import { asTrouble, plainly, StoreTrouble } from './trouble.ts';

type Snapshots = ReturnType<typeof openSnapshot>;

/** A folder opened: the parts of the store joined up. `lock` null means looking only. */
export class OpenFolder implements Store {
  readonly folder: string;
  readonly notices: readonly string[];
  readonly transport: Transport;
  readonly #fs: FsLike;
  readonly #damage: string | null;
  readonly #file: JournalFile;
  readonly #people: People;
  readonly #texts: Texts;
  readonly #index: RecordIndex;
  readonly #snapshots: Snapshots;
  readonly #open: { close(): void }[] = [];
  #months: Month[];
  #head: Head;
  #lastStart: Place | null;
  #checkedAfter: Head;

  constructor(fs: FsLike, folder: string, lock: Lock | null) {
    this.folder = folder;
    this.#fs = fs;
    if (lock !== null) this.#open.push({ close: () => lock.release() });
    try {
      const files = filesOf(folder);
      const looking = lock === null;
      checkVersion(fs, folder, looking);
      const there = fs.exists(files.snapshot);
      this.#snapshots = openSnapshot(fs, files.snapshot);
      const lostSnapshot = there && this.#snapshots.data === null;
      const journal = openJournal(fs, folder, this.#snapshots.data, lostSnapshot, looking);
      this.#snapshots.data = journal.snapshot;
      if (there && journal.snapshot === null && journal.damage === null && !looking)
        removeIfThere(fs, files.snapshot);
      this.#months = journal.months;
      this.#head = journal.head;
      this.#lastStart = journal.lastStart;
      this.#checkedAfter = journal.checkedAfter;
      this.#damage = looking ? (journal.damage ?? 'This folder was opened to look only.') : journal.damage;
      const sealed = this.#damage !== null;
      const table = (path: string) => openErasable(fs, path, sealed);
      this.#people = this.#keep(new People(fs, table(files.people)));
      this.#texts = this.#keep(new Texts(fs, table(files.texts)));
      this.#file = this.#keep(openJournalFile(fs, folder, journal.end));
      if (!sealed) this.#dropLeftovers();
      this.#index = this.#keep(this.#openIndex(looking ? ':memory:' : files.index));
      const transport = openTransport(fs, files.transport, looking);
      this.transport = this.#keep(transport.transport);
      this.notices = [...journal.notices, ...transport.notices, ...this.#compare(journal, sealed)];
    } catch (cause) {
      this.close();
      throw asTrouble(`The folder ${folder} could not be opened`, cause);
    }
  }

  get head(): Head {
    return { ...this.#head };
  }

  get readOnly(): string | null {
    return this.#damage ?? this.#file.broken;
  }

  append(turns: readonly NewTurn[]): JournalLine[] {
    const why = this.readOnly;
    if (why !== null) throw new StoreTrouble(why);
    const [first] = turns;
    if (first === undefined) return [];
    const before = this.#head.n;
    try {
      const burst = makeBurst(this.#head, turns, this.#people, this.#texts);
      this.#keepBeside(burst);
      const place = this.#file.append(burst.bytes, first.at.slice(0, 7));
      this.#head = burst.head;
      this.#lastStart = { month: place.month, offset: place.offset + burst.bytes.length - burst.lastLength };
      return burst.lines;
    } catch (cause) {
      this.#takeBack(before);
      throw cause;
    }
  }

  *lines(afterN = 0): Iterable<JournalLine> {
    try {
      yield* this.#linesAfter(afterN);
    } catch (cause) {
      throw asTrouble('The record could not be read', cause);
    }
  }

  *#linesAfter(afterN: number): Iterable<JournalLine> {
    const to = this.#file.end;
    const through = this.#head.n;
    if (afterN >= through) return;
    const check = afterN < this.#checkedAfter.n ? this.#checkedAfter : null;
    const from = this.#placeBefore(afterN + 1);
    yield* readRecord(this.#fs, {
      months: this.#current(),
      from,
      to,
      after: afterN,
      check,
      opener: this.#opener(),
    });
    if (check !== null && afterN === 0) this.#checkedAfter = start;
  }

  line(n: number): JournalLine | null {
    if (n < 1 || n > this.#head.n) return null;
    for (const line of this.#some(() => [n])) return line;
    return null;
  }

  linesAbout(item: string): Iterable<JournalLine> {
    return this.#some(() => this.#index.about(item));
  }

  lineOfEvent(eventId: string): number | null {
    return this.#index.about(eventItem(eventId))[0] ?? null;
  }

  snapshot(): { n: number; hash: string; value: unknown } | null {
    const kept = this.#snapshots.data;
    return kept === null ? null : { n: kept.n, hash: kept.hash, value: kept.value };
  }

  saveSnapshot(value: unknown): void {
    const why = this.readOnly;
    if (why !== null) throw new StoreTrouble(why);
    const end = this.#file.end;
    if (end === null || this.#lastStart === null) return; // nothing recorded yet: nothing to start from
    const before = this.#snapshots.data;
    try {
      const months = listMonths(this.#fs, this.folder).filter((month) => month.name < end.month);
      const closed = Object.fromEntries(months.map((month) => [month.name, month.size]));
      this.#snapshots.data = { ...this.#head, start: this.#lastStart, end, closed, value };
      this.#snapshots.write();
      this.#index.catchUp();
    } catch (cause) {
      this.#snapshots.data = before;
      throw asTrouble('The snapshot could not be written', cause);
    }
  }

  forget(what: ForgetWhat): Forgetting {
    return this.#erase(() => forgetIn(this.#people, this.#texts, what, (n) => this.#refsOf(n)));
  }

  lastBefore(month: string): number {
    const open = plainly('The record could not be read', () => this.#current()).find(
      (each) => each.name >= month,
    );
    return open === undefined ? this.#head.n : (open.first ?? 1) - 1;
  }

  closeMonths(month: string): Closing {
    return this.#erase(() => {
      const lines = textsOf(this.#fs, { months: this.#current(), from: null, to: this.#file.end });
      return closeLines(this.#people, this.#texts, lines, this.lastBefore(month));
    });
  }

  /** The snapshot may hold what is to be forgotten: it goes first, and is worked out again from the journal. */
  #erase<T>(work: () => T): T {
    const why = this.readOnly;
    if (why !== null) throw new StoreTrouble(why);
    return plainly('Nothing was forgotten', () => {
      const { snapshot } = filesOf(this.folder);
      this.#snapshots.data = null;
      if (this.#fs.exists(snapshot)) this.#fs.remove(snapshot);
      syncFolder(this.#fs, dirname(snapshot));
      return work();
    });
  }

  close(): void {
    for (const each of this.#open.reverse()) each.close();
    this.#open.length = 0;
  }

  #keep<T extends { close(): void }>(part: T): T {
    this.#open.push(part);
    return part;
  }

  #keepBeside(burst: Burst): void {
    plainly('What belongs beside the record could not be written', () => {
      if (burst.taken.length > 0) this.#texts.keep(burst.taken);
      if (burst.met.length > 0) this.#people.keep(burst.met);
    });
  }

  /** Nothing of a line that was not written stays beside the record. */
  #takeBack(n: number): void {
    try {
      this.#people.dropAfter(n);
      this.#texts.dropAfter(n);
    } catch (cause) {
      this.#file.breakOff(cause);
    }
  }

  #dropLeftovers(): void {
    this.#people.dropAfter(this.#head.n);
    this.#texts.dropAfter(this.#head.n);
  }

  #openIndex(path: string): RecordIndex {
    const source = {
      head: () => this.#head,
      texts: (from: Place | null) => textsOf(this.#fs, { months: this.#current(), from, to: this.#file.end }),
    };
    return recordIndex(path, start, source, () => {
      for (const end of ['', '-wal', '-shm']) removeIfThere(this.#fs, `${path}${end}`);
    });
  }

  #compare(journal: OpenedJournal, sealed: boolean): string[] {
    const through = this.transport.enqueuedThrough();
    if (sealed || through <= journal.head.n) return [];
    this.transport.endsAt(journal.head.n);
    return [
      `Lines ${journal.head.n + 1} to ${through} were answered in the chat but are not in the record. Look through the chat and note them again.`,
    ];
  }

  /** The month files, listed again once a new one was begun. */
  #current(): Month[] {
    const end = this.#file.end;
    if (end !== null && this.#months.at(-1)?.name !== end.month)
      this.#months = listMonths(this.#fs, this.folder);
    return this.#months;
  }

  #placeBefore(n: number): Place | null {
    const kept = this.#snapshots.data;
    if (kept !== null && kept.n + 1 === n) return kept.end;
    const near = this.#index.near(n);
    const month = this.#current().findLast((each) => each.first !== null && each.first <= n);
    if (month === undefined) return near;
    return near !== null && near.month >= month.name ? near : { month: month.name, offset: 0 };
  }

  *#some(numbers: () => readonly number[]): Iterable<JournalLine> {
    try {
      this.#index.catchUp();
      const near = (n: number) => this.#placeBefore(n);
      const shelves = { months: this.#current(), to: this.#file.end, near, opener: this.#opener() };
      yield* readSome(this.#fs, shelves, numbers());
    } catch (cause) {
      throw asTrouble('The record could not be read', cause);
    }
  }

  #opener() {
    return { nameOf: (p: string) => this.#people.nameOf(p), textOf: (k: number) => this.#texts.textOf(k) };
  }

  #refsOf(n: number): number[] {
    for (const { text } of textsOf(this.#fs, {
      months: this.#current(),
      from: this.#placeBefore(n),
      to: this.#file.end,
    })) {
      const refs = refsIn(text, n);
      if (refs !== null) return refs;
    }
    return [];
  }
}
