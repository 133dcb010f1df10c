import type { Effect } from '../../../../core/desk/effect.ts';
import { lines } from '../../../../core/words/message.ts';
import type { Transport } from '../../../store/transport.ts';
import type { LockedNotes } from './locked-notes.ts';

/** Says once a day and room what could not be read, and what to do; the note is read by itself if its key still comes. */
export function sayLocked(locked: LockedNotes, transport: Transport, now: number): void {
  for (const { id, room, seen } of locked.overdue(now)) {
    const key = `locked/${room}/${new Date(seen).toISOString().slice(0, 10)}`;
    const message = lines(
      'I could not read a note here: its key has not reached me. Please type it again, and any later one that I left without a mark.',
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
