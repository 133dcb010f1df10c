import { HttpApiEvent } from 'matrix-js-sdk/lib/http-api/index.js';
import type { ISyncResponse, MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import type { Heard } from '../../keeper/heard.ts';
import type { BotParts } from './bot-parts.ts';
import { openClient, signDevice } from './client.ts';
import type { Finding } from './health/finding.ts';
import { Health } from './health/health.ts';
import { Pulse } from './health/pulse.ts';
import { keepBackup } from './keys/keep-backup.ts';
import { openLedger } from './ledger/open-ledger.ts';
import { Posted } from './ledger/posted.ts';
import { recordCameBack, sayRebuilt } from './ledger/say-rebuilt.ts';
import { gaveUp } from './out/gave-up.ts';
import { MatrixChat } from './out/matrix-chat.ts';
import { Outbox } from './out/outbox.ts';
import { Sender } from './out/sender.ts';
import { boardReaders } from './rooms/board-readers.ts';
import { Boards } from './rooms/boards.ts';
import { RoomHomes } from './rooms/homes.ts';
import { Rooms } from './rooms/tend.ts';
import { acceptVerification } from './rooms/verification.ts';
import { Rounds } from './rounds.ts';
import { beginSync } from './sync/begin-sync.ts';
import { Edits } from './sync/edits.ts';
import { Listener } from './sync/listener.ts';
import { LockedNotes, PATIENCE_MS } from './sync/locked-notes.ts';
import { SyncStore } from './sync/sync-store.ts';
import { Threads } from './sync/threads.ts';

/** The chat on a homeserver: sync → inbox → desk → journal → outbox → homeserver. */
export class MatrixBot {
  readonly #parts: BotParts;
  readonly #client: MatrixClient;
  readonly #sender: Sender;
  readonly #outbox: Outbox;
  readonly #listener: Listener;
  readonly #edits: Edits;
  readonly #threads: Threads;
  readonly #locked: LockedNotes;
  readonly #posted: Posted;
  readonly #pulse: Pulse;
  readonly #health: Health;
  readonly #rounds: Rounds;

  private constructor(parts: BotParts, client: MatrixClient) {
    const { db, practice, say } = parts;
    const { transport, folder } = parts.store;
    this.#parts = parts;
    this.#client = client;
    const listed = practice.chat.map(({ room }) => room);
    const homes = new RoomHomes(db, listed);
    this.#sender = new Sender(client, db);
    this.#edits = new Edits(db);
    this.#threads = new Threads(db);
    this.#listener = new Listener(client, homes, (event) => this.#edits.originalOf(event));
    this.#locked = new LockedNotes(db);
    this.#posted = new Posted(db);
    this.#pulse = new Pulse(db, folder);
    this.#health = new Health({
      ...parts,
      homeserver: parts.session.homeserver,
      privateRoomOf: (person) => homes.privateRoomOf(person),
    });
    this.#outbox = new Outbox(transport, new MatrixChat(client, this.#sender, homes, this.#threads), {
      gaveUp: (effect, why) => gaveUp(effect, why, { say, transport }),
      failed: parts.failed,
    });
    const nowOf = (room: string) => homes.nowOf(room);
    this.#rounds = new Rounds({
      ...parts,
      client,
      outbox: this.#outbox,
      rooms: new Rooms({ client, sender: this.#sender, homes, practice, say }),
      boards: new Boards(db, transport, listed, nowOf, (room) => boardReaders(client, room)),
      locked: this.#locked,
      pulse: this.#pulse,
      health: this.#health,
    });
  }

  /** Opens the keys and begins to listen. Resolves when the first sync with the homeserver is through. */
  static async start(parts: BotParts): Promise<MatrixBot> {
    let bot: MatrixBot | null = null;
    const store = new SyncStore(parts.db, {
      position: () => parts.store.transport.position(),
      keep: async (sync, since) => bot?.keep(sync, since),
      failed: parts.failed,
    });
    const client = await openClient(parts.db, parts.session, store, parts.vault, parts.failed);
    bot = new MatrixBot(parts, client);
    await bot.#begin();
    return bot;
  }

  /** Keeps what a sync brought, then lets the desk work on it; the next sync waits only for the keeping. */
  async keep(sync: ISyncResponse, since: string | null): Promise<void> {
    const { keeper, now } = this.#parts;
    const back = since === null ? recordCameBack(this.#parts) : null;
    const { heard, locked, echoes, edits, threads } = await this.#listener.read(sync, since, back);
    if (back !== null) sayRebuilt(this.#parts, heard, now());
    this.#locked.keep(locked, now());
    if (locked.length > 0) setTimeout(() => this.#rounds.soon(true), PATIENCE_MS);
    this.#edits.keep(edits);
    this.#threads.keep(threads);
    this.#health.answer(heard);
    keeper.receive(heard, sync.next_batch);
    this.#outbox.echoed(echoes);
    this.#posted.echoed(echoes);
    this.#sender.live();
    this.#pulse.synced(now());
    if ((sync.to_device?.events ?? []).length > 0 && this.#locked.count > 0) this.#retryLocked();
    this.#rounds.soon(heard.length > 0);
  }

  /** How it does, for whoever looks from outside. */
  findings(): readonly Finding[] {
    return this.#health.findings();
  }

  async #begin(): Promise<void> {
    const { say, failed } = this.#parts;
    const client = this.#client;
    client.on(HttpApiEvent.SessionLoggedOut, (error) => failed(error));
    acceptVerification(client, this.#parts.practice, say);
    await beginSync(client, say);
    const unsigned = await signDevice(client, this.#parts.password);
    if (unsigned !== null) say(unsigned);
    const backup = await keepBackup(this.#parts, client);
    if (backup !== null) await this.#openLedger(backup);
    this.#rounds.begin();
    this.#retryLocked();
    this.#rounds.work();
  }

  /** Only where the keys are backed up: without them nobody could read it on another machine. */
  #openLedger(backup: string): Promise<void> {
    const { db, store, say, now, failed, practice, showRecoveryKey } = this.#parts;
    const chat = { client: this.#client, sender: this.#sender };
    const anew = showRecoveryKey !== null;
    const parts = { ...chat, db, store, practice: practice.name, backup, anew, now, say, failed };
    return openLedger(parts, (ledger) => this.#rounds.keepLedger(ledger));
  }

  #retryLocked(): void {
    const taken = (heard: readonly Heard[]) => {
      this.#parts.keeper.receive(heard);
      this.#rounds.soon(true);
    };
    void this.#locked.retry(this.#listener, taken).catch(this.#parts.failed);
  }
}
