import { isSenior } from '../../rules/rights.ts';
import { correct } from '../corrections/correct.ts';
import type { Input } from '../input.ts';
import type { Session, Speaker } from '../session.ts';

/** A deleted note says nothing: its author's to delete, or the lead's, a deputy's or a manager's. */
export function onRedaction(session: Session, input: Extract<Input, { sort: 'redaction' }>): void {
  const { notes, practice, timeline, questions, draft } = session;
  const note = notes.get(input.redacts);
  if (note === null) return;
  if (note.from !== input.from && !isSenior(practice, input.from)) return;
  for (const question of questions.all()) {
    if (question.purpose.sort !== 'complete' || question.purpose.note !== note.id) continue;
    draft.answered.push(question.key);
    questions.close(question.key);
  }
  if (timeline.ofTurn(note.turn).length === 0) return;
  // Nothing can be said under a note that is gone: what is said stands by itself.
  const speaker: Speaker = { from: input.from, room: note.room, noted: input.at, note: '' };
  correct(session, speaker, note, [], 'removed');
}
