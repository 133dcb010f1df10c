import { settledMessage } from '../../rules/compose.ts';
import type { Question } from '../../rules/question.ts';
import type { Session } from '../session.ts';

/** What was asked about a note as it stood is no longer the question. */
export function closeQuestionsOf(session: Session, note: string): void {
  closeWhere(
    session,
    ({ purpose }) => (purpose.sort === 'complete' || purpose.sort === 'meant') && purpose.note === note,
  );
}

/** A correction that waits for the lead is out of date once the note was corrected in another way, and says so. */
export function closeWaitingCorrections(session: Session, note: string, by: string): void {
  const { draft, posts, practice, now } = session;
  const closed = closeWhere(session, ({ purpose }) => {
    return purpose.sort === 'allow-correction' && purpose.correction.note === note;
  });
  for (const { key } of closed) {
    const post = posts.get(key)?.post;
    if (post === undefined) continue;
    draft.edit(post.room, key, settledMessage(post, { practice, by, at: now, how: 'taken back' }));
    draft.settled.push(key);
    posts.settle(key);
  }
}

function closeWhere(
  { draft, questions }: Session,
  fits: (question: Question) => boolean,
): readonly Question[] {
  const closed = questions.all().filter(fits);
  for (const { key } of closed) {
    draft.answered.push(key);
    questions.close(key);
  }
  return closed;
}
