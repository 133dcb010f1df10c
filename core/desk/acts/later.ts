import { ruleValue } from '../../defaults/rule-value.ts';
import { openMatters } from '../../rules/matters.ts';
import { HOUR, MINUTE, toIso } from '../../time/instant.ts';
import { lines } from '../../words/message.ts';
import type { Target } from '../input.ts';
import { type Session, type Speaker, viewOf } from '../session.ts';

/** Puts off the reminder replied to, else the latest open one in this chat room. */
export function later(
  session: Session,
  speaker: Speaker,
  until: string | undefined,
  target: Target | undefined,
): void {
  const { draft, posts, practice, now } = session;
  const named = target !== undefined && 'post' in target ? posts.get(target.post) : null;
  // In reply to a colleague it speaks to them.
  if (target !== undefined && named === null) return;
  const open = new Set(openMatters(viewOf(session)).map(({ key }) => key));
  const latest = posts.open(speaker.room).findLast(({ matters }) => matters.some((key) => open.has(key)));
  const post = named ?? latest ?? null;
  // "later" where nothing was asked is talk.
  if (post === null) return;
  if (post.matters.length === 0) {
    draft.post(speaker.room, {
      about: 'record',
      message: lines('Nothing is being asked for here just now.'),
      replyTo: speaker.note,
    });
    return;
  }
  const asked = until === undefined ? now + ruleValue(practice, 'laterMinutes') * MINUTE : Date.parse(until);
  const at = Math.min(Math.max(asked, now + MINUTE), now + ruleValue(practice, 'laterMostHours') * HOUR);
  for (const matter of post.matters) draft.putOff.push({ matter, until: toIso(at) });
  draft.react(speaker.room, speaker.note, '👍');
}
