import type { Effect } from '../../core/desk/effect.ts';

/** Event ids of our own posts by key, as far as they were sent. */
export interface SentPosts {
  eventIdOf(key: string): string | null;
}

/**
 * A place where people type. The one port behind which terminal, rehearsal and Matrix stand.
 * `deliver` resolves to the event id that the post got (`null` for what has none) and rejects when it did not go out;
 * delivering the same effect again, after a crash or a lost answer, must not show it twice.
 */
export interface Chat {
  deliver(effect: Effect, sent: SentPosts): Promise<string | null>;
}
