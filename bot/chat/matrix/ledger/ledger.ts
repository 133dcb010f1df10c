import type { DatabaseSync } from 'node:sqlite';
import { HTTPError, type MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import type { Store } from '../../../store/store.ts';
import { RoomNotReady, type Sender } from '../out/sender.ts';
import { isBackedUp } from './backed-up.ts';
import { FolderRows } from './folder-rows.ts';
import { claimSeen } from './ledger-room.ts';
import { Mirror } from './mirror.ts';
import { Posted } from './posted.ts';
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
  /** A new recovery key was just made. */
  readonly anew: boolean;
  readonly now: () => number;
  readonly say: (line: string) => void;
  readonly failed: (error: unknown) => void;
}

/**
 * Keeps a copy of the record in a room of the bot's own, from which another machine can go on. It is made from the folder's
 * files, so that it holds up nothing and cannot be ahead of the record; how far it is behind is in `health`.
 */
export class Ledger {
  readonly #parts: LedgerParts;
  readonly #own: OwnLedger;
  readonly #posted: Posted;
  readonly #mirror: Mirror;
  #busy = false;
  #looked = 0;
  #timer: NodeJS.Timeout | undefined;
  readonly #told = new Set<string>();

  private constructor(parts: LedgerParts, own: OwnLedger, rows: FolderRows) {
    this.#parts = parts;
    this.#own = own;
    const { db, sender, store } = parts;
    this.#posted = new Posted(db);
    this.#mirror = new Mirror({ own, rows, posted: this.#posted, sender, transport: store.transport });
  }

  /** Finds or makes the room. Throws as `takeUpLedger` does. */
  static async open(parts: LedgerParts): Promise<Ledger> {
    const { client, db, store, practice, say, anew } = parts;
    const rows = new FolderRows(store.folder);
    const own = await takeUpLedger({ client, db, rows, practice, head: store.head.n, say, anew });
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
    await this.#mirror.upTo(this.#said());
    await this.#seeBackup();
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
