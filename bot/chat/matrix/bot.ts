import type { DatabaseSync } from 'node:sqlite';
import { HttpApiEvent } from 'matrix-js-sdk/lib/http-api/index.js';
import type { ISyncResponse, MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import type { Practice } from '../../../core/practice/practice.ts';
import { type Clock, startClock } from '../../clock/clock.ts';
import type { Heard } from '../../keeper/heard.ts';
import type { Keeper } from '../../keeper/keeper.ts';
import type { Store } from '../../store/store.ts';
import { openClient, signDevice } from './client.ts';
import { Pulse } from './health/pulse.ts';
import { keepBackup } from './keys/keep-backup.ts';
import type { Vault } from './keys/key-backup.ts';
import type { Ledger } from './ledger/ledger.ts';
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
  readonly store: Store;
  readonly say: (line: string) => void;
  readonly now: () => number;
  /** Told once when it cannot go on: the process must end. */
  readonly failed: (error: unknown) => void;
}

/** Events of a room that the SDK may keep in memory: nothing here reads them again. */
const TIMELINE_MOST = 150;

/** How long after notes it is looked at what falls due, ms: by then their answers are with the homeserver. */
const LATER_MS = 20;

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
  #ledger: Ledger | null = null;
  #due = false;
  #heard = false;
  #later: NodeJS.Timeout | undefined;

  private constructor(parts: BotParts, client: MatrixClient) {
    const { db, practice, say } = parts;
    const { transport, folder } = parts.store;
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
      gaveUp: (effect, why) => gaveUp(effect, why, { say, transport }),
      failed: parts.failed,
    });
    const nowOf = (room: string) => homes.nowOf(room);
    this.#boards = new Boards(db, transport, listed, nowOf, (room) => boardReaders(client, room));
    this.#pulse = new Pulse(db, folder);
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
    const { db, keeper, now } = this.#parts;
    const back = since === null ? recordCameBack(this.#parts) : null;
    const { heard, locked, echoes, edits } = await this.#listener.read(sync, since, back);
    if (back !== null) sayRebuilt(this.#parts, heard, now());
    this.#locked.keep(locked, now());
    if (locked.length > 0) setTimeout(() => this.#soon(true), PATIENCE_MS);
    const addEdit = db.prepare('INSERT OR IGNORE INTO edit (id, original) VALUES (?, ?)');
    for (const { id, original } of edits) addEdit.run(id, original);
    keeper.receive(heard, sync.next_batch);
    this.#outbox.echoed(echoes);
    new Posted(db).echoed(echoes);
    this.#sender.live();
    this.#pulse.synced(now());
    if ((sync.to_device?.events ?? []).length > 0 && this.#locked.count > 0) this.#retryLocked();
    this.#soon(heard.length > 0);
  }

  async #begin(): Promise<void> {
    const { say, failed, keeper, now } = this.#parts;
    const client = this.#client;
    client.on(HttpApiEvent.SessionLoggedOut, (error) => failed(error));
    acceptVerification(client, this.#parts.practice, say);
    await beginSync(client, say);
    const unsigned = await signDevice(client, this.#parts.password);
    if (unsigned !== null) say(unsigned);
    const backup = await keepBackup(this.#parts, client);
    if (backup !== null) await this.#openLedger(backup);
    this.#clock = startClock(
      () => {
        this.#work();
        this.#wake();
      },
      () => keeper.next(now()),
    );
    this.#retryLocked();
    this.#work();
  }

  /** Only where the keys are backed up: without them nobody could read it on another machine. */
  #openLedger(backup: string): Promise<void> {
    const { db, store, say, now, failed, practice, showRecoveryKey } = this.#parts;
    const chat = { client: this.#client, sender: this.#sender };
    const parts = {
      ...chat,
      db,
      store,
      practice: practice.name,
      backup,
      anew: showRecoveryKey !== null,
      now,
      say,
      failed,
    };
    return openLedger(parts, (ledger) => {
      this.#ledger = ledger;
    });
  }

  /** Works once the present sync is out of the way, however many came together; `heard`: there is something for the desk. */
  #soon(heard: boolean): void {
    this.#heard ||= heard;
    if (this.#due) return;
    this.#due = true;
    setImmediate(() => {
      this.#due = false;
      if (this.#heard) this.#work();
      else this.#tend();
      this.#heard = false;
    });
  }

  /** Answers first: they are on their way before anything else is looked at. */
  #work(): void {
    const { keeper, now, failed } = this.#parts;
    try {
      keeper.work(now());
      this.#outbox.kick();
    } catch (error) {
      failed(error);
      return;
    }
    this.#later ??= setTimeout(() => {
      this.#wake();
      this.#clock?.reset();
    }, LATER_MS);
  }

  /** Says what has fallen due, and puts the boards right. */
  #wake(): void {
    const { keeper, now, failed } = this.#parts;
    clearTimeout(this.#later);
    this.#later = undefined;
    try {
      keeper.wake(now());
      sayLocked(this.#locked, this.#parts.store.transport, now());
      this.#boards.look(
        now,
        (at) => keeper.desk.view(at),
        () => this.#outbox.kick(),
      );
    } catch (error) {
      failed(error);
      return;
    }
    this.#tend();
  }

  /** What every sync may have to do with: rooms, the ledger, what is unsent. */
  #tend(): void {
    this.#outbox.kick();
    this.#ledger?.look();
    this.#pulse.beat(this.#parts.now());
    this.#dropOldTimelines();
    void this.#rooms.look().then(() => this.#outbox.kick(), this.#parts.failed);
  }

  #retryLocked(): void {
    const taken = (heard: readonly Heard[]) => {
      this.#parts.keeper.receive(heard);
      this.#soon(true);
    };
    void this.#locked.retry(this.#listener, taken).catch(this.#parts.failed);
  }

  #dropOldTimelines(): void {
    for (const room of this.#client.getRooms()) {
      if (room.getLiveTimeline().getEvents().length > TIMELINE_MOST) room.resetLiveTimeline(null, null);
    }
  }
}
