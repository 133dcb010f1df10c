import type { Vouched } from '../../../../core/record/vouched.ts';
import type { Heard } from '../../../keeper/heard.ts';
import { withoutQuote } from './without-quote.ts';

/** An event of a chat room once it could be read. `wire` is the content as it travelled: relations stand there in clear. */
export interface ReadEvent {
  readonly id: string;
  /** Id of the room as the practice file names it. */
  readonly room: string;
  readonly sender: string;
  readonly at: number;
  readonly type: string;
  readonly content: Fields;
  readonly wire: Fields;
  /** Event that a redaction takes away, where it stands outside the content (rooms before version 11). */
  readonly redacts: string | null;
  /** The sender's power in the room, and whether the event was locked by a device that its owner has signed. */
  readonly vouched?: Vouched;
}

export type Fields = Readonly<Record<string, unknown>>;

/** Kinds of message that people type into; a caption counts as typed. Notices are machines' and are never read. */
const TYPED = new Set(['m.text', 'm.emote']);
const CAPTIONED = new Set(['m.image', 'm.file', 'm.video', 'm.audio']);

/** What an event says to the desk; null for what is none of its business: notices, our own, pictures without words. */
export function toHeard(event: ReadEvent, me: string): Heard | null {
  if (event.sender === me) return null;
  const { id, room, sender: from, at, vouched } = event;
  const base = { id, room, from, at, ...(vouched === undefined ? {} : { vouched }) };
  switch (event.type) {
    case 'm.room.message':
      return message(base, event);
    case 'm.reaction': {
      const { rel_type, event_id, key } = fields(event.content['m.relates_to']);
      if (rel_type !== 'm.annotation' || typeof event_id !== 'string' || typeof key !== 'string') return null;
      return { sort: 'reaction', ...base, reacts: event_id, emoji: key };
    }
    case 'm.room.redaction': {
      const redacts = event.content.redacts ?? event.redacts;
      return typeof redacts === 'string' ? { sort: 'redaction', ...base, redacts } : null;
    }
    default:
      return null;
  }
}

function message(
  base: Omit<Extract<Heard, { sort: 'note' }>, 'sort' | 'text'>,
  event: ReadEvent,
): Heard | null {
  const relation = relationOf(event);
  if (relation.rel_type === 'm.replace') {
    const text = typed(fields(event.content['m.new_content']));
    if (text === null || typeof relation.event_id !== 'string') return null;
    return { sort: 'edit', ...base, edits: relation.event_id, text };
  }
  const text = typed(event.content);
  if (text === null) return null;
  const replyTo = repliesTo(relation);
  return { sort: 'note', ...base, text, ...(replyTo === null ? {} : { replyTo }) };
}

/** The words of a message, without what a reply quotes; null where nobody typed any. */
function typed(content: Fields): string | null {
  const { msgtype, body, filename } = content;
  if (typeof msgtype !== 'string' || typeof body !== 'string') return null;
  const counts =
    TYPED.has(msgtype) || (CAPTIONED.has(msgtype) && typeof filename === 'string' && filename !== body);
  const text = counts ? withoutQuote(body).trim() : '';
  return text === '' ? null : text;
}

/** In a thread the reply is to what began it, unless the person chose a message in it. */
function repliesTo(relation: Fields): string | null {
  const { event_id } = fields(relation['m.in_reply_to']);
  const fallback = relation.rel_type === 'm.thread' && relation.is_falling_back === true;
  const meant = fallback
    ? relation.event_id
    : (event_id ?? (relation.rel_type === 'm.thread' ? relation.event_id : null));
  return typeof meant === 'string' ? meant : null;
}

/** In an encrypted room the relation travels in clear; some clients put it inside as well. */
function relationOf(event: ReadEvent): Fields {
  return fields(event.wire['m.relates_to'] ?? event.content['m.relates_to']);
}

export function fields(value: unknown): Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? { ...value } : {};
}
