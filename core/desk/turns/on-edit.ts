import { correct } from '../corrections/correct.ts';
import type { Input } from '../input.ts';
import { guardPrivacy } from '../notes/guard-privacy.ts';
import { askGaps, fillGaps } from '../notes/raise-gaps.ts';
import type { Session, Speaker } from '../session.ts';
import { answerAsks } from './on-note.ts';

/** An edited note says what it now says, from the time of the note; only its author can edit it. */
export function onEdit(session: Session, input: Extract<Input, { sort: 'edit' }>): void {
  const { draft, notes } = session;
  const note = notes.get(input.edits);
  if (note === null || note.from !== input.from) return;
  const asTyped = session.read(input.text, { at: note.noted, from: note.from, room: note.room });
  const { read, message } = guardPrivacy(session.practice, note.noted, input.text, asTyped);
  draft.reading = read.reading;
  closeQuestionsOf(session, note.id);
  const speaker: Speaker = { from: note.from, room: note.room, noted: note.noted, note: note.id };
  const { filled, open } = fillGaps(session, speaker, read.gaps);
  const meant = [...read.reading.facts, ...filled.map((one) => one.entry)];
  if (meant.length > 0 || session.timeline.ofTurn(note.turn).length > 0) {
    correct(session, speaker, note, meant, 'edited');
  }
  askGaps(session, speaker, open);
  if (!note.asked) answerAsks(session, speaker, read);
  if (message !== null) {
    draft.post(note.room, { about: 'privacy', message, replyTo: note.id, mentions: [note.from] });
  }
}

/** What was asked about the note as it stood is no longer the question. */
function closeQuestionsOf(session: Session, note: string): void {
  for (const question of session.questions.all()) {
    if (question.purpose.sort !== 'complete' || question.purpose.note !== note) continue;
    session.draft.answered.push(question.key);
    session.questions.close(question.key);
  }
}
