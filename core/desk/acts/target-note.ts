import type { Target } from '../input.ts';
import type { NoteLine } from '../note-log.ts';
import type { Session, Speaker } from '../session.ts';

/** The note that a correction means: the one it replies to (or that our post answered), else the person's latest that told something or still waits for an answer. */
export function targetNote(session: Session, speaker: Speaker, target: Target | undefined): NoteLine | null {
  const { notes, posts, questions, timeline } = session;
  if (target !== undefined) {
    const id = 'note' in target ? target.note : posts.get(target.post)?.post.replyTo;
    const note = id === undefined ? null : notes.get(id);
    if (note !== null) return note;
  }
  const asked = new Set(
    questions
      .all()
      .map(({ purpose }) => (purpose.sort === 'complete' || purpose.sort === 'meant') && purpose.note),
  );
  return notes.latestOf(speaker.room, speaker.from, ({ id, turn }) => {
    return asked.has(id) || timeline.ofTurn(turn).length > 0;
  });
}
