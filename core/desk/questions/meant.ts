import type { Purpose } from '../../rules/question.ts';
import { followUp } from '../after/follow-up.ts';
import { enterFacts } from '../notes/enter-facts.ts';
import { type Session, type Speaker, vouching } from '../session.ts';

/** The answer to what a short note meant: it counts from its own time and is its author's, whoever answered. */
export function takeMeant(
  session: Session,
  speaker: Speaker,
  purpose: Extract<Purpose, { sort: 'meant' }>,
  value: string,
): void {
  const option = purpose.options.find((one) => one.value === value);
  if (option === undefined) {
    session.draft.react(speaker.room, speaker.note, '👍');
    return;
  }
  const { author: from, note, noted, turn } = purpose;
  const author: Speaker = { from, room: speaker.room, noted, note, ...vouching(speaker) };
  session.draft.of = note;
  const entered = enterFacts(session, author, option.facts, turn);
  followUp(session, { ...author, note: speaker.note }, entered, []);
}
