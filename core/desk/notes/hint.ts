import { MINUTE } from '../../time/instant.ts';
import type { Session } from '../session.ts';

/** Talk that merely resembles a note draws one line in ten minutes at most: noise makes people mute us. */
const HINT_MS = 10 * MINUTE;

/** Whether a hint was given in that chat room lately. */
export function hintedLately({ posts, now }: Session, room: string): boolean {
  const last = posts.saidAt(hintOf(room), 'first');
  return last !== null && now - last < HINT_MS;
}

/** Remembers, in the record, that the post with that key was a hint. */
export function rememberHint({ draft }: Session, room: string, post: string): void {
  draft.matterSaid(hintOf(room), 'first', post);
}

function hintOf(room: string): string {
  return `hint|${room}`;
}
