import { lines } from '../../words/message.ts';
import { strikeReplies } from '../after/strike-replies.ts';
import { closeQuestionsOf } from '../corrections/close-questions.ts';
import { correct } from '../corrections/correct.ts';
import type { Target } from '../input.ts';
import type { Session, Speaker } from '../session.ts';
import { targetNote } from './target-note.ts';

/** Takes the person's latest note (or the one replied to) back: it says nothing from here on, and both stay in the record. */
export function undo(session: Session, speaker: Speaker, target: Target | undefined): void {
  const { draft, timeline } = session;
  const note = targetNote(session, speaker, target);
  if (note === null) {
    const message = lines('There is no note of yours here to take back.');
    draft.post(speaker.room, { about: 'record', message, replyTo: speaker.note });
    return;
  }
  closeQuestionsOf(session, note.id);
  if (timeline.ofTurn(note.turn).length === 0) strikeReplies(session, note, [], speaker.from);
  else if (!correct(session, speaker, note, [], 'undone')) return;
  draft.react(speaker.room, speaker.note, '👍');
}
