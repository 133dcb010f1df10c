import { factWords } from '../../answers/fact-words.ts';
import { zoneOfChatRoom } from '../../practice/look-up.ts';
import type { Entry } from '../../record/entry.ts';
import { capital } from '../../rules/tips/tip-words.ts';
import type { Instant } from '../../time/instant.ts';
import { clockWords } from '../../words/clock-words.ts';
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
  const kept = timeline.ofTurn(note.turn);
  if (kept.length === 0) strikeReplies(session, note, [], speaker.from);
  else if (!correct(session, speaker, note, [], 'undone')) return;
  // A bare "undo" does not say which note it means: so the answer does.
  if (target === undefined && kept.length > 0) sayTakenBack(session, speaker, kept, note.noted);
  draft.react(speaker.room, speaker.note, '👍');
}

function sayTakenBack(session: Session, speaker: Speaker, kept: readonly Entry[], noted: Instant): void {
  const { draft, practice, now } = session;
  const at = clockWords(noted, now, zoneOfChatRoom(practice, speaker.room));
  const what = kept.map(({ fact }) => factWords(practice, fact)).join('; ');
  const message = lines([{ strong: 'Taken back' }, ` (noted ${at}): ${capital(what)}.`]);
  draft.post(speaker.room, { about: 'record', message, replyTo: speaker.note });
}
