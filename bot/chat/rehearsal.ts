import type { Effect } from '../../core/desk/effect.ts';
import type { About } from '../../core/rules/about.ts';
import { toIso } from '../../core/time/instant.ts';
import { toHtml } from '../show/html.ts';
import { toText } from '../show/text.ts';
import type { Chat, SentPosts } from './chat.ts';

/**
 * The chat of a rehearsal: whatever the bot does becomes one JSON object, in order, and posts are numbered `$out1`, `$out2`, …
 * It outlives a restart of the bot, as a real chat does.
 */
export class RehearsalChat implements Chat {
  readonly #print: (line: string) => void;
  readonly #now: () => number;
  readonly #ids = new Map<string, string>();
  readonly #latest = new Map<string, string>();
  #posts = 0;

  constructor(print: (line: string) => void, now: () => number) {
    this.#print = print;
    this.#now = now;
  }

  deliver(effect: Effect, sent: SentPosts): Promise<string | null> {
    // Delivered before a crash: the same event again, as a homeserver would answer a repeated transaction.
    const before = this.#ids.get(effect.key);
    if (before !== undefined) return Promise.resolve(before);
    const id = effect.does === 'post' ? `$out${++this.#posts}` : '';
    this.#ids.set(effect.key, id);
    this.#print(JSON.stringify({ at: toIso(this.#now()), ...shown(effect, id, sent) }));
    if (effect.does === 'post') this.#latest.set(`${effect.room} ${effect.about}`, id);
    return Promise.resolve(id === '' ? null : id);
  }

  /** The bot's latest post about something in a chat room: what `{"last": …}` in a script means. */
  latest(room: string, about: About | string): string | null {
    return this.#latest.get(`${room} ${about}`) ?? null;
  }

  /** Goes on from posts that a store holds from a rehearsal before, oldest first: their numbers are taken. */
  resume(posts: readonly { readonly room: string; readonly about: About; readonly id: string }[]): void {
    for (const { room, about, id } of posts) {
      this.#latest.set(`${room} ${about}`, id);
      this.#posts = Math.max(this.#posts, Number(/^\$out(\d+)$/.exec(id)?.[1] ?? 0));
    }
  }
}

function shown(effect: Effect, id: string, sent: SentPosts): Record<string, unknown> {
  const { room, does } = effect;
  const postId = (key: string) => sent.eventIdOf(key) ?? key;
  switch (effect.does) {
    case 'post': {
      const text = toText(effect.message);
      const replyTo = effect.replyTo === undefined ? {} : { replyTo: postId(effect.replyTo) };
      const { mentions, about, items } = effect;
      return { room, id, does, text, html: toHtml(effect.message), ...replyTo, mentions, about, items };
    }
    case 'react':
      return { room, does, to: effect.to, key: effect.emoji };
    case 'edit':
      return {
        room,
        does,
        id: postId(effect.post),
        text: toText(effect.message),
        html: toHtml(effect.message),
      };
    case 'redact':
    case 'pin':
      return { room, does, id: postId(effect.post) };
    case 'file':
      return {
        room,
        does,
        name: effect.name,
        type: effect.type,
        bytes: new TextEncoder().encode(effect.content).length,
      };
  }
}
