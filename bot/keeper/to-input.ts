import type { Input, Target } from '../../core/desk/input.ts';
import type { Heard } from './heard.ts';

/**
 * What was heard, for the desk: our own posts by their keys, and no instant later than now
 * (a server's or a phone's clock may run ahead; what it says of the future is taken as now).
 */
export function toInput(
  heard: Heard,
  now: number,
  keyOf: (eventId: string) => string | null,
  heardAt: (eventId: string) => number | null,
): Input {
  const at = Math.min(heard.at, now);
  const target = (eventId: string): Target => {
    const post = keyOf(eventId);
    return post === null ? { note: eventId } : { post };
  };
  switch (heard.sort) {
    case 'note': {
      const { replyTo, ...note } = heard;
      return replyTo === undefined ? { ...note, at } : { ...note, at, replyTo: target(replyTo) };
    }
    case 'reaction':
      return { ...heard, at, reacts: target(heard.reacts) };
    case 'edit': {
      const noteAt = heardAt(heard.edits);
      return noteAt === null ? { ...heard, at } : { ...heard, at, noteAt: Math.min(noteAt, at) };
    }
    default:
      return { ...heard, at };
  }
}
