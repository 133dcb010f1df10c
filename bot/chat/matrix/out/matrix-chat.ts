import { type MatrixClient, MatrixError } from 'matrix-js-sdk/lib/matrix.js';
import type { Effect, Post } from '../../../../core/desk/effect.ts';
import { toText } from '../../../show/text.ts';
import type { SentPosts } from '../../chat.ts';
import type { RoomHomes } from '../rooms/homes.ts';
import { stateOf } from '../rooms/room-state.ts';
import type { Threads } from '../sync/threads.ts';
import { attach } from './attachment.ts';
import { editContent, isTooLong, postContent, reactionContent } from './content.ts';
import type { Delivers } from './outbox.ts';
import type { Sender } from './sender.ts';
import { transactionOf } from './transaction.ts';

const MESSAGE = 'm.room.message';
const PINS = 'm.room.pinned_events';

/** The chat port on a homeserver: each effect becomes one event, the same one when it is delivered again. */
export class MatrixChat implements Delivers {
  readonly #client: MatrixClient;
  readonly #sender: Sender;
  readonly #homes: RoomHomes;
  readonly #threads: Threads;

  constructor(client: MatrixClient, sender: Sender, homes: RoomHomes, threads: Threads) {
    this.#client = client;
    this.#sender = sender;
    this.#homes = homes;
    this.#threads = threads;
  }

  async deliver(effect: Effect, sent: SentPosts, cause = effect): Promise<string | null> {
    const room = this.#homes.nowOf(effect.room);
    const transaction = transactionOf(cause);
    switch (effect.does) {
      case 'post':
        return this.#post(room, effect, transaction, sent);
      case 'react':
        return this.#react(room, effect.to, effect.emoji, transaction);
      case 'edit': {
        const event = sent.eventIdOf(effect.post);
        if (event !== null)
          await this.#sender.send(room, MESSAGE, editContent(effect.message, event), transaction);
        return null;
      }
      case 'redact': {
        const event = sent.eventIdOf(effect.post);
        if (event !== null) await this.#sender.redact(room, event, transaction);
        return null;
      }
      case 'pin': {
        const event = sent.eventIdOf(effect.post);
        const before = effect.instead === undefined ? null : sent.eventIdOf(effect.instead);
        if (event !== null) await this.#pin(room, event, before);
        return null;
      }
      case 'file':
        return this.#file(room, effect, transaction);
    }
  }

  async #post(room: string, post: Post, transaction: string, sent: SentPosts): Promise<string> {
    const replyTo = post.replyTo === undefined ? null : (sent.eventIdOf(post.replyTo) ?? post.replyTo);
    // A key of a post that never went out is no event that could be replied to.
    const known = replyTo?.startsWith('$') === true ? replyTo : null;
    const thread = known === null ? null : this.#threads.rootOf(known);
    const event = await this.#sender.send(room, MESSAGE, postContent(post, known, thread), transaction);
    if (isTooLong(post.message)) {
      const file = { name: `${post.about}.txt`, type: 'text/plain', content: toText(post.message) };
      await this.#file(room, file, `${transaction}-file`);
    }
    return event;
  }

  async #react(room: string, to: string, emoji: string, transaction: string): Promise<string | null> {
    try {
      return await this.#sender.send(room, 'm.reaction', reactionContent(to, emoji), transaction);
    } catch (error) {
      // Sent before, and the homeserver has since forgotten the transaction.
      if (error instanceof MatrixError && error.errcode === 'M_DUPLICATE_ANNOTATION') return null;
      throw error;
    }
  }

  async #file(
    room: string,
    file: { readonly name: string; readonly type: string; readonly content: string },
    transaction: string,
  ): Promise<string> {
    const encrypted = await this.#sender.isEncrypted(this.#sender.loaded(room));
    return this.#sender.send(room, MESSAGE, await attach(this.#client, file, encrypted), transaction);
  }

  /** Adds to what is pinned, in the place of one of ours, and keeps others' pins. */
  async #pin(room: string, event: string, instead: string | null): Promise<void> {
    const pinned: unknown = stateOf(this.#sender.loaded(room), PINS)?.getContent().pinned;
    const before = Array.isArray(pinned) ? pinned.filter((one) => typeof one === 'string') : [];
    if (before.includes(event)) return;
    const others = before.filter((one) => one !== instead);
    await this.#sender.setState(room, PINS, { pinned: [...others, event] });
  }
}
