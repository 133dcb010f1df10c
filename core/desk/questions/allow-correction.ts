import { isProven } from '../../record/vouched.ts';
import type { Purpose, Question } from '../../rules/question.ts';
import { fromSignedDevice, isSenior } from '../../rules/rights.ts';
import { lines } from '../../words/message.ts';
import { correct } from '../corrections/correct.ts';
import type { Session, Speaker } from '../session.ts';

/** The lead's word on a correction that would loosen something; anybody else's leaves the question open. */
export function allowCorrection(
  session: Session,
  speaker: Speaker,
  question: Question,
  purpose: Extract<Purpose, { sort: 'allow-correction' }>,
  value: string,
): void {
  const { draft, notes, practice } = session;
  const { from, vouched } = speaker;
  const senior = isSenior(practice, from, vouched);
  if (!senior || (value === 'yes' && !isProven(practice, vouched))) {
    draft.asked.push(question);
    const message = senior
      ? fromSignedDevice('Nothing is changed yet.')
      : lines('The lead, a deputy or a manager has to allow that; nothing is changed until then.');
    draft.post(speaker.room, { about: 'question', message, replyTo: speaker.note });
    return;
  }
  const note = notes.get(purpose.correction.note);
  if (value === 'yes' && note !== null)
    correct(session, speaker, note, purpose.correction.facts, purpose.correction.why);
  draft.react(speaker.room, speaker.note, '👍');
}
