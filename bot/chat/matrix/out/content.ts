import type { Post } from '../../../../core/desk/effect.ts';
import type { Message } from '../../../../core/words/message.ts';
import { toHtml } from '../../../show/html.ts';
import { toText } from '../../../show/text.ts';

export type Content = Readonly<Record<string, unknown>>;

/**
 * An event may have 65,536 bytes as the homeserver sends it on, and encryption makes a third more of it: a message of
 * more than this goes without its HTML, and one whose text alone is longer goes as a file.
 */
const MOST_BYTES = 40_000;

/**
 * A post as a message: a notice, or `m.text` where phones are to ring (phones are silent at notices). `thread`: what the
 * thread of the note hangs on that is answered. The answer goes there; what rings stays in the room, for everybody to see.
 */
export function postContent(post: Post, replyTo: string | null, thread: string | null = null): Content {
  const { mentions } = post;
  if (replyTo === null) return words(post.message, mentions);
  const inReply = { 'm.in_reply_to': { event_id: replyTo } };
  const isThreaded = thread !== null && mentions.length === 0;
  const inThread = { rel_type: 'm.thread', event_id: thread, is_falling_back: false };
  return {
    ...words(post.message, mentions),
    'm.relates_to': isThreaded ? { ...inThread, ...inReply } : inReply,
  };
}

/** A message in place of an earlier one of ours. Nobody's phone rings again for it. */
export function editContent(message: Message, event: string): Content {
  const next = words(message, []);
  return {
    ...next,
    body: `* ${String(next.body)}`,
    ...('formatted_body' in next ? { formatted_body: `* ${String(next.formatted_body)}` } : {}),
    'm.new_content': next,
    'm.relates_to': { rel_type: 'm.replace', event_id: event },
  };
}

export function reactionContent(event: string, emoji: string): Content {
  return { 'm.relates_to': { rel_type: 'm.annotation', event_id: event, key: emoji } };
}

/** Whether a text is too long for a message of its own. */
export function isTooLong(message: Message): boolean {
  return bytes(toText(message)) > MOST_BYTES / 2;
}

/** The first lines of a message that goes as a file. */
function beginning(message: Message): string {
  const text = toText(message).split('\n').slice(0, 12).join('\n');
  return `${text.slice(0, 2000)}\n… The rest is in the file.`;
}

function words(message: Message, mentions: readonly string[]): Content {
  const body = isTooLong(message) ? beginning(message) : toText(message);
  const html = toHtml(message);
  const plain = {
    msgtype: mentions.length > 0 ? 'm.text' : 'm.notice',
    body,
    'm.mentions': mentions.length > 0 ? { user_ids: [...mentions] } : {},
  };
  if (isTooLong(message) || bytes(html) + bytes(body) > MOST_BYTES / 2) return plain;
  return { ...plain, format: 'org.matrix.custom.html', formatted_body: html };
}

function bytes(text: string): number {
  return Buffer.byteLength(JSON.stringify(text));
}
