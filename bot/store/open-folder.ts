import { dirname } from 'node:path';
import { type Burst, makeBurst, type NewTurn } from './burst.ts';
import type { Head } from './chain.ts';
import { type Closing, closeLines } from './close-months.ts';
import { openErasable } from './erasable.ts';
import { checkVersion, filesOf } from './folder.ts';
import { type Forgetting, type ForgetWhat, forgetIn } from './forget.ts';
import type { FsLike } from './fs-port.ts';
import { removeIfThere, syncFolder } from './fs-whole.ts';
import type { History } from './history/history.ts';
import { openHistory } from './history/history-file.ts';
import { type JournalFile, openJournalFile } from './journal-file.ts';
import type { JournalLine } from './line.ts';
import type { Lock } from './lock.ts';
import { listMonths } from './months.ts';
import { type OpenedJournal, openJournal } from './open-journal.ts';
import { openTransport } from './open-transport.ts';
import { People } from './people.ts';
import { RecordReader } from './record-reader.ts';
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
  readonly history: History;
  readonly #fs: FsLike;
  readonly #damage: string | null;
  readonly #file: JournalFile;
  readonly #people: People;
  readonly #texts: Texts;
  readonly #reader: RecordReader;
  readonly #snapshots: Snapshots;
  readonly #open: { close(): void }[] = [];
  #head: Head;
  #lastStart: Place | null;

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
      this.#head = journal.head;
      this.#lastStart = journal.lastStart;
      this.#damage = looking ? (journal.damage ?? 'This folder was opened to look only.') : journal.damage;
      const sealed = this.#damage !== null;
      const table = (path: string) => openErasable(fs, path, sealed);
      this.#people = this.#keep(new People(fs, table(files.people)));
      this.#texts = this.#keep(new Texts(fs, table(files.texts)));
      this.#file = this.#keep(openJournalFile(fs, folder, journal.end));
      if (!sealed) this.#dropLeftovers();
      const standing = {
        head: () => this.#head,
        end: () => this.#file.end,
        snapshot: () => this.#snapshots.data,
        opener: {
          nameOf: (pseudonym: string) => this.#people.nameOf(pseudonym),
          textOf: (k: number) => this.#texts.textOf(k),
        },
      };
      const indexPath = looking ? ':memory:' : files.index;
      this.#reader = this.#keep(new RecordReader(fs, folder, indexPath, journal, standing));
      this.history = this.#keep(openHistory(fs, sealed ? null : files.history));
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

  lines(afterN = 0): Iterable<JournalLine> {
    return this.#reader.lines(afterN);
  }

  line(n: number): JournalLine | null {
    if (n < 1 || n > this.#head.n) return null;
    for (const line of this.#reader.some(() => [n])) return line;
    return null;
  }

  linesAbout(item: string): Iterable<JournalLine> {
    return this.#reader.about(item);
  }

  lineOfEvent(eventId: string): number | null {
    return this.#reader.lineOfEvent(eventId);
  }

  lastBefore(month: string): number {
    return this.#reader.lastBefore(month);
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
      this.#reader.catchUp();
    } catch (cause) {
      this.#snapshots.data = before;
      throw asTrouble('The snapshot could not be written', cause);
    }
  }

  forget(what: ForgetWhat): Forgetting {
    return this.#erase(() => forgetIn(this.#people, this.#texts, what, (n) => this.#reader.refsOf(n)));
  }

  closeMonths(month: string): Closing {
    return this.#erase(() => {
      return closeLines(this.#people, this.#texts, this.#reader.texts(null), this.lastBefore(month));
    });
  }

  /** Snapshot and history may hold what is to be forgotten: they go first, and are worked out again from the journal. */
  #erase<T>(work: () => T): T {
    const why = this.readOnly;
    if (why !== null) throw new StoreTrouble(why);
    return plainly('Nothing was forgotten', () => {
      const { snapshot } = filesOf(this.folder);
      this.#snapshots.data = null;
      if (this.#fs.exists(snapshot)) this.#fs.remove(snapshot);
      this.history.clear();
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

  #compare(journal: OpenedJournal, sealed: boolean): string[] {
    const through = this.transport.enqueuedThrough();
    if (sealed || through <= journal.head.n) return [];
    this.transport.endsAt(journal.head.n);
    return [
      `Lines ${journal.head.n + 1} to ${through} were answered in the chat but are not in the record. Look through the chat and note them again.`,
    ];
  }
}
