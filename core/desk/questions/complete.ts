import { answer } from '../../answers/answer.ts';
import { ask as askSchema } from '../../reading/ask.ts';
import { fact as factSchema } from '../../reading/fact.ts';
import type { Purpose } from '../../rules/question.ts';
import { lines } from '../../words/message.ts';
import { followUp } from '../after/follow-up.ts';
import { enterFacts } from '../notes/enter-facts.ts';
import { withSlot } from '../notes/fill-gap.ts';
import { refusesExport } from '../notes/guard-export.ts';
import { type Session, type Speaker, viewOf, vouching } from '../session.ts';
import { offerLearning } from './offer-learning.ts';
import { NO_TIPS } from './tips-named.ts';

type Completion = Extract<Purpose, { sort: 'complete' }>;

/** Completes the note that was unclear: it counts from its own time and is its author's, whoever answered. */
export function complete(session: Session, speaker: Speaker, purpose: Completion, value: string): void {
  if (purpose.form === 'confirm' && value !== 'yes') {
    session.draft.react(speaker.room, speaker.note, '👍');
    return;
  }
  const entry =
    value === NO_TIPS
      ? { ...purpose.draft }
      : withSlot(purpose.draft, purpose.slot, purpose.form, value, purpose.about);
  if (purpose.list === 'asks') answerCompleted(session, speaker, entry);
  else if (purpose.list === 'facts') recordCompleted(session, speaker, purpose, entry);
  offerLearning(session, speaker, purpose, value);
}

function answerCompleted(session: Session, speaker: Speaker, entry: unknown): void {
  const ask = askSchema.safeParse(entry);
  if (!ask.success || refusesExport(session, speaker, ask.data)) return;
  const { about, message, items, file } = answer(ask.data, {
    ...viewOf(session),
    room: speaker.room,
    from: speaker.from,
    entries: session.timeline,
  });
  session.draft.post(speaker.room, { about, message, items, replyTo: speaker.note });
  if (file !== undefined) session.draft.file(speaker.room, file);
}

/** Keeps the note that was unclear as the fact that it turned out to be, in its own place. */
export function recordCompleted(
  session: Session,
  speaker: Speaker,
  purpose: Completion,
  entry: unknown,
): void {
  const fact = factSchema.safeParse(entry);
  if (!fact.success) {
    const message = lines('That does not complete the note. Please type it again in full.');
    session.draft.post(speaker.room, { about: 'question', message, replyTo: speaker.note });
    return;
  }
  const author: Speaker = {
    from: purpose.author,
    room: speaker.room,
    noted: purpose.noted,
    note: purpose.note,
    ...vouching(speaker),
  };
  session.draft.of = purpose.note;
  const entered = enterFacts(session, author, [fact.data], purpose.turn);
  followUp(session, { ...author, note: speaker.note }, entered, []);
}
