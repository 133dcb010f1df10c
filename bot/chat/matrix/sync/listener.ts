import { setTimeout as wait } from 'node:timers/promises';
import type { ISyncResponse, MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import type { Heard } from '../../../keeper/heard.ts';
import { isLedgerRoom } from '../ledger/ledger-room.ts';
import { waitFor } from '../out/wait-for.ts';
import type { RoomHomes } from '../rooms/homes.ts';
import { editTakenBack } from './edit-taken-back.ts';
import { readGap } from './gap.ts';
import { type ReadBack, readBack } from './read-back.ts';
import { type RawEvent, readEvent } from './read-event.ts';
import { type InThread, threadOf } from './threads.ts';
import { fields, type ReadEvent, toHeard } from './to-heard.ts';

/** What one sync brought. */
export interface Brought {
  readonly heard: readonly Heard[];
  /** Events whose key is not there yet, as they came. */
  readonly locked: readonly { readonly id: string; readonly room: string; readonly event: RawEvent }[];
  /** Our own events come back: the event id for the transaction that sent it, and the key that locked it. */
  readonly echoes: readonly Echo[];
  /** Edits by their ids, so that taking one away brings back what stood before. */
  readonly edits: readonly { readonly id: string; readonly original: string }[];
  readonly threads: readonly InThread[];
}

export interface Echo {
  readonly transaction: string;
  readonly event: string;
  readonly session: string | null;
}

type Joined = ISyncResponse['rooms']['join'][string];

/** Reads syncs into what the desk understands, every room in the homeserver's order. */
export class Listener {
  readonly #client: MatrixClient;
  readonly #homes: RoomHomes;
  readonly #me: string;
  readonly #editOf: (event: string) => string | null;

  /** `editOf`: the note that an event was an edit of, or null. */
  constructor(client: MatrixClient, homes: RoomHomes, editOf: (event: string) => string | null) {
    this.#editOf = editOf;
    this.#client = client;
    this.#homes = homes;
    this.#me = client.getSafeUserId();
  }

  /**
   * `since` is the position before this sync; null at the first start, when all that comes is history: only what is
   * younger than a record that came `back` from the ledger room is then read.
   */
  async read(sync: ISyncResponse, since: string | null, back: ReadBack | null = null): Promise<Brought> {
    const echoes: Echo[] = [];
    const brought = { heard: [] as Heard[], locked: [], echoes, edits: [], threads: [] };
    if (since === null && back === null) return brought;
    for (const [room, joined] of Object.entries(sync.rooms?.join ?? {})) {
      if (this.#isLedger(room)) brought.echoes.push(...joined.timeline.events.map(fields).flatMap(echoIn));
      const home = this.#isLedger(room) ? null : this.#homes.homeOf(room);
      if (home === null) continue;
      for (const event of await this.#eventsOf(room, joined, since ?? back)) {
        await this.#take(event, { room, home }, brought);
      }
    }
    return brought;
  }

  #isLedger(room: string): boolean {
    const known = this.#client.getRoom(room);
    return known !== null && isLedgerRoom(known, this.#me);
  }

  /** Deleting an edit is no deletion of the note: it says again what stood before. */
  async #deletion(
    redaction: Extract<Heard, { sort: 'redaction' }>,
    at: { room: string; home: string },
    fresh: readonly { id: string; original: string }[],
  ): Promise<Heard> {
    const original =
      fresh.find(({ id }) => id === redaction.redacts)?.original ?? this.#editOf(redaction.redacts);
    if (original === null) return redaction;
    for (let tries = 0; ; tries++) {
      try {
        return (await editTakenBack(this.#client, this.#me, at, redaction, original)) ?? redaction;
      } catch (error) {
        const pause = waitFor(error, tries);
        if (pause === null) return redaction;
        await wait(pause);
      }
    }
  }

  /** Tries an event again whose key may have come: what it says, or `'locked'`. */
  async retry(room: string, event: RawEvent): Promise<Heard | 'locked' | null> {
    const home = this.#homes.homeOf(room);
    if (home === null) return null;
    const read = await readEvent(this.#client, event, { room, home, fresh: true });
    if (read === 'locked' || read === null) return read;
    return this.#heard(read, room);
  }

  #heard(read: ReadEvent, room: string): Heard | null {
    const heard = toHeard(read, this.#me);
    const typed = heard?.sort === 'note' || heard?.sort === 'edit';
    return typed && this.#homes.isPrivate(room) ? { ...heard, privately: true } : heard;
  }

  /** The events of a room since the last sync; of a room just joined, what came after the joining. */
  async #eventsOf(
    room: string,
    { timeline }: Joined,
    since: string | ReadBack | null,
  ): Promise<readonly RawEvent[]> {
    const newest: readonly RawEvent[] = (timeline?.events ?? []).map(fields);
    const from = timeline?.prev_batch ?? undefined;
    const isBack = typeof since === 'object' && since !== null;
    const events = isBack ? await readBack(this.#client, room, { newest, from }, since) : newest;
    const joined = events.findLastIndex((event) => this.#isOurJoin(event));
    if (joined !== -1) return events.slice(joined + 1);
    if (typeof since !== 'string' || timeline?.limited !== true || typeof timeline.prev_batch !== 'string')
      return events;
    return [...(await readGap(this.#client, room, since, timeline.prev_batch)), ...events];
  }

  #isOurJoin(event: RawEvent): boolean {
    if (event.type !== 'm.room.member' || event.state_key !== this.#me) return false;
    const before = fields(fields(event.unsigned).prev_content).membership;
    return fields(event.content).membership === 'join' && before !== 'join';
  }

  async #take(
    event: RawEvent,
    at: { room: string; home: string },
    brought: {
      heard: Heard[];
      locked: { id: string; room: string; event: RawEvent }[];
      echoes: Echo[];
      edits: { id: string; original: string }[];
      threads: InThread[];
    },
  ): Promise<void> {
    if (event.sender === this.#me) {
      brought.echoes.push(...echoIn(event));
      return;
    }
    brought.threads.push(...threadOf(event));
    const read = await readEvent(this.#client, event, at);
    if (read === 'locked') {
      brought.locked.push({ id: String(event.event_id), room: at.room, event });
      return;
    }
    const heard = read === null ? null : this.#heard(read, at.room);
    if (heard === null) return;
    if (heard.sort === 'redaction') {
      brought.heard.push(await this.#deletion(heard, at, brought.edits));
      return;
    }
    if (heard.sort === 'edit') brought.edits.push({ id: heard.id, original: heard.edits });
    brought.heard.push(heard);
  }
}

/** An event that this device sent comes back with its transaction. */
function echoIn(event: RawEvent): readonly Echo[] {
  const transaction = fields(event.unsigned).transaction_id;
  const { session_id: session } = fields(event.content);
  if (typeof transaction !== 'string') return [];
  return [
    { transaction, event: String(event.event_id), session: typeof session === 'string' ? session : null },
  ];
}
