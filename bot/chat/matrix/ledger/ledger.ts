import { createHash } from 'node:crypto';
import type { DatabaseSync } from 'node:sqlite';
import { setTimeout as wait } from 'node:timers/promises';
import { HTTPError, type MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import type { Store } from '../../../store/store.ts';
import { RoomNotReady, type Sender } from '../out/sender.ts';
import { waitFor } from '../out/wait-for.ts';
import { isBackedUp } from './backed-up.ts';
import { type Batch, contentOf, LEDGER_TYPES, type LedgerKind, type Piece, piecesOf } from './batch.ts';
import { FolderRows } from './folder-rows.ts';
import { claimSeen } from './ledger-room.ts';
import { Posted, type PostedPiece } from './posted.ts';
import { type OwnLedger, takeUpLedger } from './take-up.ts';
import { TakenOver } from './trouble.ts';

/** Lines go out together, at most so often, in ms: it is a copy, and the answers to people come first. */
const EVERY_MS = 5_000;
/** A line is mirrored once what it says was said, or after so long: a room that is never ready holds nothing back, ms. */
const UNSENT_MS = 10 * 60_000;

/** What the ledger is kept with. */
export interface LedgerParts {
  readonly client: MatrixClient;
  readonly sender: Sender;
  readonly db: DatabaseSync;
  readonly store: Store;
  readonly practice: string;
  /** Version of the backup of the keys: without one nobody could read the ledger again. */
  readonly backup: string;
  readonly now: () => number;
  readonly say: (line: string) => void;
  readonly failed: (error: unknown) => void;
}

/**
 * Mirrors the record into a room of the bot's own, from which another machine can go on: what stands beside a line first,
 * then the line, in order, each once. It is written from the folder's files, so that it holds up nothing and cannot be
 * ahead of the record.
 */
export class Ledger {
  readonly #parts: LedgerParts;
  readonly #own: OwnLedger;
  readonly #rows: FolderRows;
  readonly #posted: Posted;
  #busy = false;
  #looked = 0;
  #timer: NodeJS.Timeout | undefined;
  /** What is in the room was held against what stands in the folder: somebody may have been forgotten meanwhile. */
  #checked = false;
  readonly #told = new Set<string>();

  private constructor(parts: LedgerParts, own: OwnLedger, rows: FolderRows) {
    this.#parts = parts;
    this.#own = own;
    this.#rows = rows;
    this.#posted = new Posted(parts.db);
  }

  /** Finds or makes the room and puts right what was forgotten meanwhile. Throws as `takeUpLedger` does. */
  static async open(parts: LedgerParts): Promise<Ledger> {
    const { client, db, store, practice, say } = parts;
    const rows = new FolderRows(store.folder);
    const own = await takeUpLedger({ client, db, rows, practice, head: store.head.n, say });
    return new Ledger(parts, own, rows);
  }

  /** Mirrors what is new, now or as soon as it is time. */
  look(): void {
    const { client, now, failed } = this.#parts;
    const room = client.getRoom(this.#own.room);
    if (room !== null && claimSeen(room).epoch > this.#own.epoch) {
      failed(new TakenOver());
      return;
    }
    if (this.#busy) return;
    const pause = this.#looked + EVERY_MS - now();
    if (pause > 0) {
      this.#timer ??= setTimeout(() => {
        this.#timer = undefined;
        this.look();
      }, pause);
      return;
    }
    this.#looked = now();
    this.#busy = true;
    void this.#work()
      .catch((error: unknown) => this.#troubled(error))
      .finally(() => {
        this.#busy = false;
        if (this.#rest()) this.look();
      });
  }

  async #work(): Promise<void> {
    await this.#finish();
    if (!this.#checked) await this.#putRight();
    this.#checked = true;
    const through = this.#said();
    const { epoch } = this.#own;
    const after = (kind: LedgerKind) => this.#posted.last(kind).number;
    await this.#all(() => this.#rows.person(after('people'), through, epoch));
    await this.#all(() => this.#rows.texts(after('texts'), through, epoch));
    await this.#all(() => this.#rows.lines(after('lines'), through, epoch));
    await this.#all(() => this.#rows.posts(after('posts'), through, epoch));
    await this.#seeBackup();
  }

  async #all(next: () => Batch | null): Promise<void> {
    for (let batch = next(); batch !== null; batch = next()) await this.#post(batch);
  }

  /** Written down first, so that a repeat after a crash is the same event. */
  async #post(batch: Batch): Promise<void> {
    for (const piece of piecesOf(batch)) {
      const transaction = transactionOf(piece);
      this.#posted.plan(transaction, piece);
      if (this.#posted.isThere(transaction)) continue;
      await this.#answersFirst();
      await this.#send(transaction, piece);
    }
  }

  async #send(transaction: string, piece: Piece): Promise<void> {
    const { sender } = this.#parts;
    const type = LEDGER_TYPES[piece.kind];
    for (let tries = 0; ; tries++) {
      try {
        const { event, session } = await sender.sendLocked(
          this.#own.room,
          type,
          contentOf(piece),
          transaction,
        );
        this.#posted.arrived(transaction, event, session);
        return;
      } catch (error) {
        const pause = error instanceof HTTPError ? waitFor(error, tries) : null;
        if (pause === null) throw error;
        await wait(pause);
      }
    }
  }

  /** A homeserver allows so many messages a second: answers to people have them first. */
  async #answersFirst(): Promise<void> {
    for (let looks = 0; looks < 20 && this.#parts.store.transport.unsent().length > 0; looks++)
      await wait(100);
  }

  /** What a crash or a lost line left half posted. */
  async #finish(): Promise<void> {
    for (const row of this.#posted.open()) {
      const again = this.#again(row);
      if (again?.hash === row.hash) await this.#post(again);
      // Made anew from where it began. What was forgotten since stays written down, to be taken out should it have arrived.
      else if (row.kind === 'lines' || row.kind === 'posts') this.#posted.drop(row.transaction);
    }
  }

  /** What was forgotten since it was posted is posted as it stands now, and what was there is taken out. */
  async #putRight(): Promise<void> {
    for (const kind of ['people', 'texts'] as const) {
      const batches = Map.groupBy(this.#posted.all(kind), ({ first, last }) => `${first} ${last}`);
      for (const pieces of batches.values()) await this.#putRightBatch(pieces);
    }
  }

  #again({ kind, first, last }: PostedPiece): Batch | null {
    const { epoch } = this.#own;
    switch (kind) {
      case 'lines':
        return this.#rows.lines(first - 1, last, epoch);
      case 'people':
        return this.#rows.person(first - 1, Number.POSITIVE_INFINITY, epoch);
      case 'texts':
        return this.#rows.textsBetween(first, last, epoch);
      case 'posts':
        return null;
    }
  }

  /** The new one stands before the old one goes: a machine lost in between loses nothing that was to be kept. */
  async #putRightBatch(pieces: readonly PostedPiece[]): Promise<void> {
    const [first] = pieces;
    const now = first === undefined ? null : this.#again(first);
    if (now === null || pieces.every(({ hash }) => hash === now.hash)) return;
    await this.#post(now);
    for (const { transaction, event, hash } of pieces) {
      if (hash === now.hash || event === null) continue;
      await this.#parts.sender.redact(this.#own.room, event, `${transaction}-gone`);
      this.#posted.drop(transaction);
    }
  }

  /** The last line of which everything was said: what is mirrored counts as said to the machine that takes over. */
  #said(): number {
    const { store, now } = this.#parts;
    const unsent = store.transport.unsent().map(({ key }) => Number(key.split('/')[0]));
    const waiting = unsent.filter((turn) => {
      const line = Number.isInteger(turn) && turn > 0 ? store.line(turn) : null;
      return line !== null && now() - Date.parse(line.at) < UNSENT_MS;
    });
    return Math.min(store.head.n, ...waiting.map((turn) => turn - 1));
  }

  async #seeBackup(): Promise<void> {
    const { client, backup } = this.#parts;
    for (const session of this.#posted.sessionsNotBacked()) {
      if (await isBackedUp(client, backup, this.#own.room, session)) this.#posted.backed(session);
    }
  }

  /** Something is left to do without anybody saying a word. */
  #rest(): boolean {
    return (
      this.#posted.sessionsNotBacked().length > 0 ||
      this.#posted.last('lines').number < this.#parts.store.head.n
    );
  }

  /** A copy that cannot be made now is made later; a token that is refused ends the process as everywhere. */
  #troubled(error: unknown): void {
    const { failed, say } = this.#parts;
    if (error instanceof HTTPError && error.httpStatus === 401) failed(error);
    else if (error instanceof Error && error.name.startsWith('Store')) failed(error);
    else if (!(error instanceof RoomNotReady)) {
      const line = `The ledger room gives trouble: ${error instanceof Error ? error.message : String(error)}`;
      if (!this.#told.has(line)) say(line);
      this.#told.add(line);
    }
  }
}

function transactionOf({ kind, epoch, first, last, part, hash }: Piece): string {
  const text = [kind, epoch, first, last, part, hash].join(' ');
  return `swl${createHash('sha256').update(text).digest('base64url').slice(0, 40)}`;
}
