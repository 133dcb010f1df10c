import type { Effect } from '../effect.ts';
import type { NoteInput } from '../input.ts';
import type { Session } from '../session.ts';
import { answerAsks } from './answer-asks.ts';

/** What a note that cannot be kept just now asks, and whether it does anything else. */
export interface Looked {
  readonly effects: readonly Effect[];
  /** It only asks: nothing of it has to wait. */
  readonly onlyAsks: boolean;
}

/** Answers what a note asks, from what is known, and keeps nothing: for when the record cannot be written. */
export function look(session: Session, input: NoteInput): Looked {
  const read = session.read(input.text, { at: input.at, from: input.from, room: input.room });
  answerAsks(session, { from: input.from, room: input.room, noted: input.at, note: input.id }, read);
  const { facts, acts, plans, unclear, asks } = read.reading;
  const effects = session.draft.effects.map((effect, index) => ({
    ...effect,
    key: `look/${input.id}/${index}`,
  }));
  return { effects, onlyAsks: asks.length > 0 && [facts, acts, plans, unclear].flat().length === 0 };
}
