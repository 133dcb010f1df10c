import type { DatabaseSync } from 'node:sqlite';
import { HttpApiEvent } from 'matrix-js-sdk/lib/http-api/index.js';
import type { ISyncResponse, MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import type { Practice } from '../../../core/practice/practice.ts';
import { type Clock, startClock } from '../../clock/clock.ts';
import type { Heard } from '../../keeper/heard.ts';
import type { Keeper } from '../../keeper/keeper.ts';
import type { Transport } from '../../store/transport.ts';
import { openClient, signDevice } from './client.ts';
import { Pulse } from './health/pulse.ts';
import { keepBackup } from './keys/keep-backup.ts';
import type { Vault } from './keys/key-backup.ts';
import { gaveUp } from './out/gave-up.ts';
import { MatrixChat } from './out/matrix-chat.ts';
import { Outbox } from './out/outbox.ts';
import { Sender } from './out/sender.ts';
import { Boards } from './rooms/boards.ts';
import { RoomHomes } from './rooms/homes.ts';
import { Rooms } from './rooms/tend.ts';
import { acceptVerification } from './rooms/verification.ts';
import type { Session } from './sign-in/session.ts';
import { beginSync } from './sync/begin-sync.ts';
import { Listener } from './sync/listener.ts';
import { LockedNotes, PATIENCE_MS } from './sync/locked-notes.ts';
import { sayLocked } from './sync/say-locked.ts';
import { SyncStore } from './sync/sync-store.ts';

/** What the bot works with: made once by the command that starts it. */
export interface BotParts {
  readonly db: DatabaseSync;
  readonly session: Session;
  readonly password: string | null;
  readonly vault: Vault;
  /** Makes a new recovery key and shows it, once, by this; null where none is asked for. */
  readonly showRecoveryKey: ((key: string) => void) | null;
  readonly practice: Practice;
  readonly keeper: Keeper;
  readonly transport: Transport;
  readonly folder: string;
  readonly say: (line: string) => void;
  readonly now: () => number;
  /** Told once when it cannot go on: the process must end. */
  readonly failed: (error: unknown) => void;
}

/** Events of a room that the SDK may keep in memory: nothing here reads them again. */
const TIMELINE_MOST = 150;

/** The chat on a homeserver: sync → inbox → desk → journal → outbox → homeserver. */
export class MatrixBot {
  readonly #parts: BotParts;
  readonly #client: MatrixClient;
  readonly #sender: Sender;
  readonly #outbox: Outbox;
  readonly #rooms: Rooms;
  readonly #boards: Boards;
  readonly #listener: Listener;
  readonly #locked: LockedNotes;
  readonly #pulse: Pulse;
  #clock: Clock | null = null;
  #due = false;

  private constructor(parts: BotParts, client: MatrixClient) {
    const { db, practice, transport, say } = parts;
    this.#parts = parts;
    this.#client = client;
    const listed = practice.chat.map(({ room }) => room);
    const homes = new RoomHomes(db, listed);
    this.#sender = new Sender(client, db);
    const editOf = db.prepare('SELECT original FROM edit WHERE id = ?');
    this.#listener = new Listener(client, homes, (event) => {
      const original = editOf.get(event)?.original;
      return typeof original === 'string' ? original : null;
    });
    this.#locked = new LockedNotes(db);
    this.#rooms = new Rooms({ client, sender: this.#sender, homes, practice, say });
    this.#outbox = new Outbox(transport, new MatrixChat(client, this.#sender, homes), {
      gaveUp: (effect, why) => gaveUp(effect, why, parts),
      failed: parts.failed,
    });
    this.#boards = new Boards(db, transport, listed, (room) => homes.nowOf(room));
    this.#pulse = new Pulse(db, parts.folder);
  }

  /** Opens the keys and begins to listen. Resolves when the first sync with the homeserver is through. */
  static async start(parts: BotParts): Promise<MatrixBot> {
    let bot: MatrixBot | null = null;
    const store = new SyncStore(parts.db, {
      position: () => parts.transport.position(),
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
    const { db, keeper, now } = this.#parts;
    const { heard, locked, echoes, edits } = await this.#listener.read(sync, since);
    this.#locked.keep(locked, now());
    if (locked.length > 0) setTimeout(() => this.#soon(), PATIENCE_MS);
    const addEdit = db.prepare('INSERT OR IGNORE INTO edit (id, original) VALUES (?, ?)');
    for (const { id, original } of edits) addEdit.run(id, original);
    keeper.receive(heard, sync.next_batch);
    this.#outbox.echoed(echoes);
    this.#sender.live();
    this.#pulse.synced(now());
    if ((sync.to_device?.events ?? []).length > 0 && this.#locked.count > 0) this.#retryLocked();
    this.#soon();
  }

  async #begin(): Promise<void> {
    const { say, failed, keeper, now } = this.#parts;
    const client = this.#client;
    client.on(HttpApiEvent.SessionLoggedOut, (error) => failed(error));
    acceptVerification(client, this.#parts.practice, say);
    await beginSync(client, say);
    const unsigned = await signDevice(client, this.#parts.password);
    if (unsigned !== null) say(unsigned);
    await keepBackup(this.#parts, client);
    this.#clock = startClock(
      () => this.#work(),
      () => keeper.next(now()),
    );
    this.#retryLocked();
    this.#work();
  }

  /** Works once the present sync is out of the way, however many came together. */
  #soon(): void {
    if (this.#due) return;
    this.#due = true;
    setImmediate(() => {
      this.#due = false;
      this.#work();
      this.#clock?.reset();
    });
  }

  #work(): void {
    const { keeper, now, failed } = this.#parts;
    try {
      keeper.work(now());
      keeper.wake(now());
      sayLocked(this.#locked, this.#parts.transport, now());
      this.#boards.look(
        now,
        (at) => keeper.desk.view(at),
        () => this.#outbox.kick(),
      );
      this.#outbox.kick();
    } catch (error) {
      failed(error);
      return;
    }
    this.#pulse.beat(now());
    this.#dropOldTimelines();
    void this.#rooms.look().then(() => this.#outbox.kick(), this.#parts.failed);
  }

  #retryLocked(): void {
    const taken = (heard: readonly Heard[]) => {
      this.#parts.keeper.receive(heard);
      this.#soon();
    };
    void this.#locked.retry(this.#listener, taken).catch(this.#parts.failed);
  }

  #dropOldTimelines(): void {
    for (const room of this.#client.getRooms()) {
      if (room.getLiveTimeline().getEvents().length > TIMELINE_MOST) room.resetLiveTimeline(null, null);
    }
  }
}
