import type { NoteRead } from '../../language/read.ts';
import type { Fact } from '../../reading/fact.ts';
import type { Purpose, Question } from '../../rules/question.ts';
import { closeWith } from '../acts/close.ts';
import type { NoteInput } from '../input.ts';
import type { Session, Speaker } from '../session.ts';
import { allowCorrection } from './allow-correction.ts';
import { closeReason } from './close-reason.ts';
import { complete, recordCompleted } from './complete.ts';
import { completeEntry } from './complete-entry.ts';
import { fullerOutcome } from './fuller-outcome.ts';
import { mayAnswer } from './late-answer.ts';
import { learn } from './learn.ts';
import { matchChoice } from './match-choice.ts';
import { takeMeant } from './meant.ts';
import { reachedPatient } from './reached-patient.ts';
import { releaseLoad } from './release-load.ts';
import { settledAnswer } from './settled-answer.ts';
import { tipsNamed } from './tips-named.ts';
import { walkAnswered, walkWord } from './walk.ts';
import { sayWhichDone } from './which-done.ts';

/** An answer to something that was asked. */
export interface Answered {
  readonly question: Question;
  readonly value: string;
  /** The whole fact, where the answer told more than the outcome that was asked for. */
  readonly told?: Fact;
  /** The note says nothing else. */
  readonly wholeNote: boolean;
}

/** The question that a note answers: the one it replies to, else the latest that waits for this person here. */
export function questionAnsweredBy(session: Session, input: NoteInput, read: NoteRead): Answered | null {
  const { questions, now } = session;
  const replied =
    input.replyTo !== undefined && 'post' in input.replyTo ? questions.get(input.replyTo.post) : null;
  const here = questions.waitingFor(input.room, input.from, now);
  const waiting = replied === null ? here.filter((one) => mayAnswer(session, one, input)) : [replied];
  // The latest that the words can answer: "yes" is not for "which autoclave?", and "2" not for "did it reach a patient?".
  const [answered] = waiting.flatMap((question) => {
    if (question.purpose.sort === 'walk') {
      // In reply to something else ("done" to a reminder) it speaks to that.
      const elsewhere = input.replyTo !== undefined && replied === null;
      const word = elsewhere ? null : walkWord(question.purpose, input.text);
      return word === null ? [] : [{ question, value: word }];
    }
    if (question.purpose.sort === 'close-reason') {
      const reason = closeReason(session, question, question === replied, input, read);
      return reason === null ? [] : [{ question, value: reason }];
    }
    const value = matchChoice(question, input.text, read) ?? tipsNamed(session, question, input);
    return value === null ? [] : [{ question, value }];
  });
  const { facts, asks, plans, unclear } = read.reading;
  if (answered === undefined) {
    if (facts.length + asks.length + plans.length > 0) return null;
    for (const question of waiting) {
      const told = fullerOutcome(session, question, input);
      if (told !== null) return { question, value: '', told, wholeNote: true };
    }
    return null;
  }
  const more = facts.length + asks.length + plans.length + unclear.length > 0;
  // "dentist told, tip 4 binned": what was done, and a fact of its own.
  if (answered.question.purpose.sort === 'close-reason') return { ...answered, wholeNote: !more };
  return { ...answered, wholeNote: !more || read.reading.acts.length === 0 };
}

/** Carries out what an answer is for, and closes the question. */
export function answerQuestion(
  session: Session,
  speaker: Speaker,
  question: Question,
  value: string,
  told?: Fact,
): void {
  session.draft.answered.push(question.key);
  session.questions.close(question.key);
  if (told !== undefined && question.purpose.sort === 'complete') {
    recordCompleted(session, speaker, question.purpose, told);
    return;
  }
  act(session, speaker, question, question.purpose, value);
}

function act(session: Session, speaker: Speaker, question: Question, purpose: Purpose, value: string): void {
  switch (purpose.sort) {
    case 'complete':
      complete(session, speaker, purpose, value);
      break;
    case 'complete-entry':
      completeEntry(session, speaker, purpose, value);
      break;
    case 'meant':
      takeMeant(session, speaker, purpose, value);
      break;
    case 'learn':
      learn(session, speaker, purpose, value);
      break;
    case 'reached-patient':
      reachedPatient(session, speaker, purpose, value);
      break;
    case 'release-load':
      releaseLoad(session, speaker, purpose, value);
      break;
    case 'settled':
      settledAnswer(session, speaker, purpose, value);
      break;
    case 'close-reason':
      closeWith(session, speaker, purpose.incidents, value);
      break;
    case 'which-done':
      sayWhichDone(session, speaker, purpose, value);
      break;
    case 'allow-correction':
      allowCorrection(session, speaker, question, purpose, value);
      break;
    case 'walk':
      walkAnswered(session, speaker, question, purpose, value);
      break;
    case 'stocktake':
      // The count itself is a note; a choice only says that it was seen.
      session.draft.react(speaker.room, speaker.note, '👍');
      break;
  }
}
