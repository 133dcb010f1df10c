import type { DatabaseSync } from 'node:sqlite';
import { HttpApiEvent } from 'matrix-js-sdk/lib/http-api/index.js';
import { ClientEvent, type ISyncResponse, type MatrixClient, SyncState } from 'matrix-js-sdk/lib/matrix.js';
import type { Effect } from '../../../core/desk/effect.ts';
import type { Practice } from '../../../core/practice/practice.ts';
import { lines } from '../../../core/words/message.ts';
import { type Clock, startClock } from '../../clock/clock.ts';
import type { Heard } from '../../keeper/heard.ts';
import type { Keeper } from '../../keeper/keeper.ts';
import type { Transport } from '../../store/transport.ts';
import { openClient, signDevice } from './client.ts';
import { Pulse } from './health/pulse.ts';
import { newRecoveryKey, useBackup, type Vault } from './keys/key-backup.ts';
import { setFact } from './matrix-db.ts';
import { MatrixChat } from './out/matrix-chat.ts';
import { Outbox } from './out/outbox.ts';
import { Sender } from './out/sender.ts';
import { Boards } from './rooms/boards.ts';
import { RoomHomes } from './rooms/homes.ts';
import { Rooms } from './rooms/tend.ts';
import { acceptVerification } from './rooms/verification.ts';
import type { Session } from './sign-in/session.ts';
import { Listener } from './sync/listener.ts';
import { LockedNotes, PATIENCE_MS } from './sync/locked-notes.ts';
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

/** How many of the newest events the homeserver gives at a time; what is left out is read by itself (`readGap`). */
const SYNC_LIMIT = 50;

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
      gaveUp: (effect, why) => this.#gaveUp(effect, why),
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
    client.on(ClientEvent.Sync, (state, before) => {
      if (state === SyncState.Error && before !== SyncState.Error)
        say('The homeserver does not answer; trying on.');
      if (state === SyncState.Syncing && before === SyncState.Error) say('The homeserver answers again.');
    });
    acceptVerification(client, this.#parts.practice, say);
    const ready = new Promise<void>((resolve) => {
      const listen = (state: SyncState) => {
        if (state !== SyncState.Syncing) return;
        client.off(ClientEvent.Sync, listen);
        resolve();
      };
      client.on(ClientEvent.Sync, listen);
    });
    await client.startClient({ initialSyncLimit: SYNC_LIMIT, lazyLoadMembers: false, disablePresence: true });
    await ready;
    const unsigned = await signDevice(client, this.#parts.password);
    if (unsigned !== null) say(unsigned);
    await this.#backUpKeys();
    this.#clock = startClock(
      () => this.#work(),
      () => keeper.next(now()),
    );
    this.#retryLocked();
    this.#work();
  }

  /** Without a backup a lost folder takes the keys of the rooms with it; the record itself is in the folder's own backup. */
  async #backUpKeys(): Promise<void> {
    const { db, vault, say, showRecoveryKey } = this.#parts;
    try {
      if (showRecoveryKey !== null) showRecoveryKey(await newRecoveryKey(this.#client, vault));
      const { version, restored } = await useBackup(this.#client, vault);
      if (restored > 0) say(`${restored} keys of what was said before came back.`);
      if (version === null) db.exec("DELETE FROM fact WHERE name = 'backup'");
      else setFact(db, 'backup', `version ${version}`);
      if (version === null)
        say('The keys are not backed up. Start once with --new-recovery-key, in a terminal.');
    } catch (error) {
      say(`The keys could not be backed up: ${error instanceof Error ? error.message : String(error)}`);
    }
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
      this.#sayLocked();
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

  /** Said once a day and room, with what to do; the note is read by itself if its key still comes. */
  #sayLocked(): void {
    const { transport, now } = this.#parts;
    for (const { id, room, seen } of this.#locked.overdue(now())) {
      const key = `locked/${room}/${new Date(seen).toISOString().slice(0, 10)}`;
      const message = lines(
        'I could not read a note here: its key has not reached me. Please type it again. (Later notes may be meant too.)',
      );
      const post: Effect = {
        does: 'post',
        key,
        room,
        message,
        about: 'question',
        items: [],
        replyTo: id,
        mentions: [],
      };
      transport.enqueue(0, [{ key, room, body: post }]);
    }
  }

  /** What could not be sent is told to the machine's owner; a board that may not be pinned is told in the room, once. */
  #gaveUp(effect: Effect, why: string): void {
    const { say, transport } = this.#parts;
    say(`Could not ${effect.does} in ${effect.room}: ${why}`);
    if (effect.does !== 'pin') return;
    const { room } = effect;
    const key = `board/no-pin/${room}`;
    const message = lines(
      'I may not pin my board here. Whoever runs this chat room can let me: the power to pin messages, mostly that of a moderator (50).',
    );
    const post: Effect = { does: 'post', key, room, message, about: 'board', items: [], mentions: [] };
    transport.enqueue(0, [{ key, room, body: post }]);
  }

  #dropOldTimelines(): void {
    for (const room of this.#client.getRooms()) {
      if (room.getLiveTimeline().getEvents().length > TIMELINE_MOST) room.resetLiveTimeline(null, null);
    }
  }
}
