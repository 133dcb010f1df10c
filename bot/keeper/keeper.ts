import { Desk } from '../../core/desk/desk.ts';
import type { Turn } from '../../core/desk/turn.ts';
import { fromIso, toIso } from '../../core/time/instant.ts';
import type { Chat } from '../chat/chat.ts';
import type { Store } from '../store/store.ts';
import type { Heard } from './heard.ts';
import { toInput } from './to-input.ts';

/** A note that makes the reader fail is tried this often, then set aside and said so: never a crash loop. */
const TRIES = 3;

/**
 * The one way through: inbox → desk → journal (synced) → outbox → chat. A note leaves the inbox only when its turn is in
 * the journal, and nothing is said before that; so a crash at any point loses nothing and says nothing twice.
 */
export class Keeper {
  readonly #store: Store;
  #desk: Desk;

  constructor(store: Store) {
    this.#store = store;
    this.#desk = this.#rebuilt();
    this.#enqueueWhatACrashLeft();
  }

  /** Takes the practice file into the record where it differs from the one in force. */
  settle(practiceText: string, now: number): void {
    const turn = this.#desk.settings(practiceText, now);
    if (turn !== null) this.#keep(turn, now);
  }

  /** Keeps what was heard before anything else happens to it; an event heard before changes nothing. */
  receive(heard: readonly Heard[], position?: string): void {
    const rows = heard.map((one) => ({ id: one.id, room: one.room, at: toIso(one.at), body: one }));
    this.#store.transport.receive(rows, position);
  }

  /** Works through the inbox, oldest first. */
  work(now: number): void {
    const { transport } = this.#store;
    for (let row = transport.next(); row !== null; row = transport.next()) {
      if (this.#desk.knows(row.id) || this.#turn(row.body as Heard, now)) transport.done(row.id);
    }
  }

  /** Says what has fallen due. */
  wake(now: number): void {
    const turn = this.#desk.tick(now);
    if (turn !== null) this.#keep(turn, now);
  }

  /** The next instant after `after` at which something may fall due. */
  next(after: number): number | null {
    return this.#desk.next(after);
  }

  /** What the desk knows, for commands that show it. */
  get desk(): Desk {
    return this.#desk;
  }

  /** Hands everything unsent to the chat, in order; stops at the first that does not go out, to try again later. */
  async send(chat: Chat): Promise<void> {
    const { transport } = this.#store;
    for (const row of transport.unsent()) {
      const eventId = await chat.deliver(row.body as Turn['effects'][number], transport);
      transport.sent(row.key, eventId);
    }
  }

  /** True when the note is dealt with; false when it is to be tried again. */
  #turn(heard: Heard, now: number): boolean {
    const { transport } = this.#store;
    const input = toInput(
      heard,
      now,
      (id) => transport.keyOf(id),
      (id) => instantOrNull(transport.heardAt(id)),
    );
    try {
      const turn = this.#desk.take(input, now);
      if (turn !== null) this.#keep(turn, now);
      return true;
    } catch (error) {
      if (!(error instanceof Error) || error.name === 'StoreTrouble') throw error;
      // The desk may be half way through the note: what the journal says is the truth.
      this.#desk = this.#rebuilt();
      if (transport.tried(heard.id) < TRIES) return false;
      transport.setAside(heard.id, error.message);
      this.#keep(this.#desk.setAside(heard.id, heard.room, error.message, now), now);
      return true;
    }
  }

  #keep(turn: Turn, now: number): void {
    const [line] = this.#store.append([{ at: toIso(now), turn }]);
    if (line !== undefined) this.#store.transport.enqueue(line.n, turn.effects.map(toRow));
  }

  #rebuilt(): Desk {
    const desk = new Desk();
    for (const line of this.#store.lines()) desk.replay(line.n, line.turn as Turn);
    return desk;
  }

  #enqueueWhatACrashLeft(): void {
    const { transport } = this.#store;
    for (const line of this.#store.lines(transport.enqueuedThrough())) {
      transport.enqueue(line.n, (line.turn as Turn).effects.map(toRow));
    }
  }
}

function toRow(effect: Turn['effects'][number]) {
  return { key: effect.key, room: effect.room, body: effect };
}

function instantOrNull(iso: string | null): number | null {
  return iso === null ? null : fromIso(iso);
}
