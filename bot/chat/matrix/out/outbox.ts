import { setTimeout as wait } from 'node:timers/promises';
import { HTTPError } from 'matrix-js-sdk/lib/matrix.js';
import type { Effect } from '../../../../core/desk/effect.ts';
import type { Transport } from '../../../store/transport.ts';
import type { Chat, SentPosts } from '../../chat.ts';
import { withLatestWords } from './latest-words.ts';
import { RoomNotReady } from './sender.ts';
import { transactionOf } from './transaction.ts';
import { waitFor } from './wait-for.ts';

/** `cause`: the effect as it was decided, by which a repeat is known, where it is said in other words by now. */
export interface Delivers extends Chat {
  deliver(effect: Effect, sent: SentPosts, cause?: Effect): Promise<string | null>;
}

/** What the outbox tells the rest. */
export interface OutboxTold {
  /** A post that can never go out; it is passed over so that the room goes on. */
  gaveUp(effect: Effect, why: string): void;
  /** The homeserver no longer knows our token, or the store failed: the process must end. */
  failed(error: unknown): void;
}

/**
 * Sends what is unsent: each chat room in order, rooms apart from one another. A limit and a lost connection are waited
 * out; a room that is not ready holds back itself alone. What was sent is written down before the next is begun.
 */
export class Outbox {
  readonly #transport: Transport;
  readonly #chat: Delivers;
  readonly #told: OutboxTold;
  readonly #busy = new Set<string>();

  constructor(transport: Transport, chat: Delivers, told: OutboxTold) {
    this.#transport = transport;
    this.#chat = chat;
    this.#told = told;
  }

  /** Begins with every room that has something unsent and is not being worked on. */
  kick(): void {
    const rooms = new Set(this.#transport.unsent().map(({ room }) => room));
    for (const room of rooms) {
      if (this.#busy.has(room)) continue;
      this.#busy.add(room);
      void this.#work(room)
        .catch((error: unknown) => this.#told.failed(error))
        .finally(() => this.#busy.delete(room));
    }
  }

  /** Our own events come back with their transactions: what went out before a crash is known to have gone out. */
  echoed(echoes: readonly { readonly transaction: string; readonly event: string }[]): void {
    if (echoes.length === 0) return;
    const events = new Map(echoes.map(({ transaction, event }) => [transaction, event]));
    for (const { body } of this.#transport.unsent()) {
      const effect = body as Effect;
      const event = events.get(transactionOf(effect));
      if (event !== undefined) this.#sent(effect, event);
    }
  }

  async #work(room: string): Promise<void> {
    let tries = 0;
    for (let next = this.#next(room); next !== null; next = this.#next(room)) {
      const { effect, said } = next;
      try {
        this.#sent(said, await this.#chat.deliver(said, this.#transport, effect));
        tries = 0;
      } catch (error) {
        if (error instanceof RoomNotReady) return;
        if (isRefusedToken(error)) throw error;
        const pause = waitFor(error, tries++);
        if (pause === null) this.#giveUp(effect, error);
        else await wait(pause);
      }
    }
  }

  /** The oldest unsent of a room, as it was decided and as it is said by now. */
  #next(room: string): { readonly effect: Effect; readonly said: Effect } | null {
    const here = this.#transport.unsent().filter((each) => each.room === room);
    const [effect, ...later] = here.map(({ body }) => body as Effect);
    return effect === undefined ? null : { effect, said: withLatestWords(effect, later) };
  }

  /** Buttons are reactions of our own under the post, put there once it is known which event it is. */
  #sent(effect: Effect, event: string | null): void {
    this.#transport.together(() => {
      this.#transport.sent(effect.key, effectEvent(effect, event));
      if (effect.does !== 'post' || event === null) return;
      const { room, key } = effect;
      const buttons = (effect.buttons ?? []).map((emoji, index): Effect => {
        return { does: 'react', key: `${key}/button/${index}`, room, to: event, emoji };
      });
      this.#transport.enqueue(
        0,
        buttons.map((one) => ({ key: one.key, room, body: one })),
      );
    });
  }

  #giveUp(effect: Effect, error: unknown): void {
    this.#transport.sent(effect.key, null);
    this.#told.gaveUp(effect, error instanceof Error ? error.message : String(error));
  }
}

/** Only a post or a file may be pointed at later. */
function effectEvent(effect: Effect, event: string | null): string | null {
  return effect.does === 'post' || effect.does === 'file' ? event : null;
}

function isRefusedToken(error: unknown): boolean {
  return error instanceof HTTPError && error.httpStatus === 401;
}
