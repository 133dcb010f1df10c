import { itemsOf } from '../../record/items-of.ts';
import type { About } from '../../rules/about.ts';
import { settledMessage } from '../../rules/compose.ts';
import type { NoteLine } from '../note-log.ts';
import type { Session } from '../session.ts';
import type { TurnEntry } from '../turn.ts';

/** What is said of a note because of what it tells: untrue once it tells that no longer. Answers were true when given. */
const OF_THE_NOTE: ReadonlySet<About> = new Set([
  'record',
  'set-up',
  'settle',
  'load',
  'calibration',
  'fault',
  'question',
  'privacy',
]);

/** Strikes what was said in reply to a note that was corrected, but for what concerns only what it says as before. */
export function strikeReplies(
  { draft, posts, questions, practice, now }: Session,
  note: NoteLine,
  same: readonly TurnEntry[],
  by: string,
  about = OF_THE_NOTE,
): void {
  const stands = new Set<string>(same.flatMap(({ what }) => itemsOf(what)));
  for (const { post } of posts.repliesTo(note.id)) {
    // What is still asked stands as long as its question does.
    if (!about.has(post.about) || questions.get(post.key) !== null) continue;
    if (post.items.length > 0 && post.items.every((item) => stands.has(item))) continue;
    draft.edit(post.room, post.key, settledMessage(post, { practice, by, at: now, how: 'taken back' }));
    draft.settled.push(post.key);
    posts.settle(post.key);
  }
}
