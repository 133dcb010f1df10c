import type { Desk } from '../../core/desk/desk.ts';
import type { Effect } from '../../core/desk/effect.ts';
import { lines } from '../../core/words/message.ts';
import type { Store } from '../store/store.ts';
import { isTrouble } from '../store/trouble.ts';
import type { Heard } from './heard.ts';
import { toInput } from './to-input.ts';

/** Heard in this run and kept for answering at most: what is older is answered when it can be written. */
const KEPT = 200;

/**
 * While nothing can be written: tells every chat room once, and answers questions from what is known. Its posts are in the
 * outbox alone, since the journal cannot take them; notes stay in the inbox.
 */
export class Unwritten {
  readonly #store: Store;
  #heard: Heard[] = [];
  #told = new Set<string>();

  constructor(store: Store) {
    this.#store = store;
  }

  /** What was heard: questions in it may have to be answered from here. */
  heard(heard: readonly Heard[]): void {
    this.#heard = [...this.#heard, ...heard].slice(-KEPT);
  }

  /** Everything was written again. */
  over(): void {
    this.#heard = [];
    this.#told = new Set();
  }

  /** Tells the rooms why nothing is written, and answers what was asked since the last time. */
  say(desk: Desk, why: string, now: number): void {
    const heard = this.#heard;
    this.#heard = [];
    for (const room of new Set([...roomsOf(desk, now), ...heard.map((one) => one.room)]))
      this.#tell(room, why);
    for (const one of heard) this.#answer(desk, one, now);
  }

  #tell(room: string, why: string): void {
    if (this.#told.has(room)) return;
    this.#told.add(room);
    const message = lines(
      `I can write nothing down just now. ${why}`,
      'Your notes wait and are taken in when that is put right. Until then I remind nobody of anything; keep a paper list. I still answer questions.',
    );
    const key = `unwritten/${this.#store.head.n}/${room}`;
    const post = { does: 'post', key, room, message, about: 'caution', items: [], mentions: [] } as const;
    this.#enqueue([post]);
  }

  #answer(desk: Desk, heard: Heard, now: number): void {
    const input = toInput(
      heard,
      now,
      (id) => this.#store.transport.keyOf(id),
      () => null,
    );
    if (input.sort !== 'note' || desk.knows(input.id)) return;
    const { effects, onlyAsks } = desk.look(input, now);
    this.#enqueue(effects);
    if (onlyAsks) this.#tryTo(() => this.#store.transport.done(heard.id));
  }

  #enqueue(effects: readonly Effect[]): void {
    const { transport } = this.#store;
    const rows = effects.map((effect) => ({ key: effect.key, room: effect.room, body: effect }));
    // No line of the journal has these: what is known to be in the outbox does not change.
    this.#tryTo(() => transport.enqueue(transport.enqueuedThrough(), rows));
  }

  /** The disk may take nothing at all: then nothing can be said either, and the next time is another try. */
  #tryTo(work: () => void): void {
    try {
      work();
    } catch (error) {
      if (!isTrouble(error)) throw error;
    }
  }
}

function roomsOf(desk: Desk, now: number): readonly string[] {
  return desk.turns === 0 ? [] : desk.view(now).practice.chat.map(({ room }) => room);
}
