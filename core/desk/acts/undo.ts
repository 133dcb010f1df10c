import { lines } from '../../answers/message.ts';
import { correct } from '../corrections/correct.ts';
import type { Target } from '../input.ts';
import type { Session, Speaker } from '../session.ts';
import { targetNote } from './target-note.ts';

/** Takes the person's latest note (or the one replied to) back: it says nothing from here on, and both stay in the record. */
export function undo(session: Session, speaker: Speaker, target: Target | undefined): void {
  const { draft } = session;
  const note = targetNote(session, speaker, target);
  if (note === null) {
    const message = lines('There is no note of yours here to take back.');
    draft.post(speaker.room, { about: 'record', message, replyTo: speaker.note });
    return;
  }
  if (correct(session, speaker, note, [], 'undone')) draft.react(speaker.room, speaker.note, '👍');
}
