import { isSenior } from '../../rules/rights.ts';
import { strikeReplies } from '../after/strike-replies.ts';
import { closeQuestionsOf } from '../corrections/close-questions.ts';
import { correct } from '../corrections/correct.ts';
import type { Input } from '../input.ts';
import { type Session, type Speaker, vouching } from '../session.ts';

/**
 * A deleted note says nothing, and with an edit deleted it says what it said before: its author's to delete, or the
 * lead's, a deputy's or a manager's.
 */
export function onRedaction(session: Session, input: Extract<Input, { sort: 'redaction' }>): void {
  const { notes, practice, timeline } = session;
  const note = notes.noteOf(input.redacts);
  if (note === null || note.gone) return;
  if (note.from !== input.from && !isSenior(practice, input.from, input.vouched)) return;
  // Nothing can be said under a note that is gone: what is said stands by itself.
  const { from, at: noted } = input;
  const speaker: Speaker = { from, room: note.room, noted, note: '', typed: false, ...vouching(input) };
  if (note.id !== input.redacts) {
    const facts = notes.without(input.redacts);
    if (facts !== null) correct(session, { ...speaker, note: note.id }, note, facts, 'edited');
    return;
  }
  closeQuestionsOf(session, note.id);
  if (timeline.ofTurn(note.turn).length > 0) correct(session, speaker, note, [], 'removed');
  else strikeReplies(session, note, [], input.from);
}
