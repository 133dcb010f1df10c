import type { DatabaseSync } from 'node:sqlite';
import { type ISyncResponse, MemoryStore, SyncAccumulator } from 'matrix-js-sdk/lib/matrix.js';
import type { ISavedSync } from 'matrix-js-sdk/lib/store/index.js';
import { factOf, setFact } from '../matrix-db.ts';

/** What the store asks of the rest. */
export interface SyncKeeping {
  /** How far the chat was read, from where the events are kept; null at the first start. */
  position(): string | null;
  /** Keeps what a sync brought, with the new position, in one write; the next sync waits for it. */
  keep(sync: ISyncResponse, since: string | null): Promise<void>;
  /** A failure to keep: nothing may go on as if it had been. */
  failed(error: unknown): void;
}

/** Timeline entries kept with a room's state: only its newest are of use to anyone, and the record is not here. */
const TAIL = 2;

/**
 * The SDK's store. It moves its own sync token on before it works on a sync, so that token is never kept: what counts is
 * the position that was written together with the events. The state of the rooms is kept beside it, since sending into an
 * encrypted room after a restart needs it; it may be newer than the position, never older.
 */
export class SyncStore extends MemoryStore {
  readonly #db: DatabaseSync;
  readonly #keeping: SyncKeeping;
  #rooms: SyncAccumulator;

  constructor(db: DatabaseSync, keeping: SyncKeeping) {
    super();
    this.#db = db;
    this.#keeping = keeping;
    this.#rooms = new SyncAccumulator({ maxTimelineEntries: TAIL });
    const saved = this.#saved();
    if (saved !== null) this.#rooms.accumulate(asSync(saved), true);
  }

  override async setSyncData(sync: ISyncResponse): Promise<void> {
    try {
      const since = this.#keeping.position();
      // Through text, since the accumulator may change what it is given. The rooms first: with the position kept and them
      // not, a room just joined would not be known after a kill, and nothing would tell of it again.
      if (changesRooms(sync)) {
        this.#rooms.accumulate(JSON.parse(JSON.stringify(sync)), false);
        setFact(this.#db, 'rooms', JSON.stringify(this.#rooms.getJSON(true)));
        await this.#keeping.keep(sync, since);
      } else {
        await this.#keeping.keep(sync, since);
        this.#rooms.accumulate(sync, false);
      }
    } catch (error) {
      this.#keeping.failed(error);
    }
  }

  override async getSavedSync(): Promise<ISavedSync | null> {
    return this.#saved();
  }

  override async getSavedSyncToken(): Promise<string | null> {
    return this.#saved()?.nextBatch ?? null;
  }

  /** Rooms without a position, or a position without rooms, are of no use: the chat then starts from now. */
  #saved(): ISavedSync | null {
    const position = this.#keeping.position();
    const text = factOf(this.#db, 'rooms');
    if (position === null || text === null) return null;
    const saved: ISavedSync = JSON.parse(text);
    return { ...saved, nextBatch: position };
  }
}

function asSync(saved: ISavedSync): ISyncResponse {
  return {
    next_batch: saved.nextBatch,
    rooms: saved.roomsData,
    account_data: { events: saved.accountData },
  };
}

/** Whether a sync changes what has to be known at a restart: state, joins, invitations, leavings, account data. */
function changesRooms(sync: ISyncResponse): boolean {
  if ((sync.account_data?.events ?? []).length > 0) return true;
  const { join = {}, invite = {}, leave = {}, knock = {} } = sync.rooms ?? {};
  if ([invite, leave, knock].some((rooms) => Object.keys(rooms).length > 0)) return true;
  return Object.values(join).some(
    ({ state, timeline }) =>
      (state?.events ?? []).length > 0 || (timeline?.events ?? []).some((event) => 'state_key' in event),
  );
}
