import { zoneOfChatRoom } from '../../practice/look-up.ts';
import type { Practice } from '../../practice/practice.ts';
import type { Instant } from '../../time/instant.ts';
import { clockWords } from '../../words/clock-words.ts';
import { type Message, struck } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import { withoutHowToAnswer } from './how-to-answer.ts';
import { withoutLeadWords } from './lead-words.ts';

/** How a post came to hold no longer; `by` is `null` where nobody's note did it. */
export interface Settling {
  readonly practice: Practice;
  readonly by: string | null;
  readonly at: Instant;
  readonly how: 'done' | 'taken back';
}

/** What was said, and in which chat room. */
interface Settled {
  readonly room: string;
  readonly message: Message;
}

/** The post as it reads from then on: who settled it and when, in front of its own words struck through. */
export function settledMessage(post: Settled, { practice, by, at, how }: Settling): Message {
  const time = clockWords(at, at, zoneOfChatRoom(practice, post.room));
  return [
    {
      line: [{ strong: words(how, by) }, by === null ? `, ${time}` : ` by ${nameOf(practice, by)}, ${time}`],
    },
    ...struck(withoutLeadWords(withoutHowToAnswer(post.message))),
  ];
}

/** A question that was answered by a tap: what was taken, by whom and when, in front of the question struck through. */
export function takenMessage(
  post: Settled,
  { practice, by, at, label }: { practice: Practice; by: string; at: Instant; label: string },
): Message {
  const time = clockWords(at, at, zoneOfChatRoom(practice, post.room));
  return [
    { line: [{ strong: `Taken: ${label}` }, `, by ${nameOf(practice, by)}, ${time}`] },
    ...struck(withoutHowToAnswer(post.message)),
  ];
}

function words(how: Settling['how'], by: string | null): string {
  if (how === 'taken back') return 'Taken back';
  return by === null ? 'No longer due' : 'Done';
}

/** The post as it reads once a correction has made what it asks for due again. */
export function dueAgainMessage(post: Settled, { practice, by, at }: Omit<Settling, 'how'>): Message {
  const time = clockWords(at, at, zoneOfChatRoom(practice, post.room));
  const who = by === null ? '' : ` ${nameOf(practice, by)} took that back,`;
  return [{ line: [{ strong: 'Due again:' }, `${who} ${time}.`] }, ...post.message];
}
