import type { NoteRead } from '../../language/read.ts';
import type { Act } from '../../reading/act.ts';
import { carryOut } from '../acts/carry-out.ts';
import { closingWords } from '../acts/closing-words.ts';
import { followUp } from '../after/follow-up.ts';
import { rememberPassing } from '../follow-on/passing.ts';
import { leant, whyLeant } from '../follow-on/take-follow-on.ts';
import type { NoteInput } from '../input.ts';
import { STALE_MS } from '../late-notes.ts';
import { enterFacts } from '../notes/enter-facts.ts';
import { forgetWord } from '../notes/forget-word.ts';
import { guardPrivacy } from '../notes/guard-privacy.ts';
import { answerInPrivate, onlyAsks } from '../notes/in-private.ts';
import { askGaps, fillGaps } from '../notes/raise-gaps.ts';
import { suggest } from '../notes/suggest.ts';
import { throughSlips } from '../notes/through-slips.ts';
import { answerQuestion, questionAnsweredBy } from '../questions/answer-question.ts';
import { sayTooLate } from '../questions/late-answer.ts';
import { type Session, type Speaker, vouching } from '../session.ts';
import { answerAsks } from './answer-asks.ts';

/** One note: what it answers, what it corrects, what it tells, what it asks; warnings come first. */
export function onNote(session: Session, input: NoteInput): void {
  const { draft, practice } = session;
  const { id: note, from, room, at: noted } = input;
  const speaker: Speaker = { from, room, noted, note, ...vouching(input) };
  if (onlyAsks(practice, input)) {
    answerInPrivate(session, speaker, input);
    return;
  }
  const asTyped = session.read(input.text, { at: input.at, from: input.from, room: input.room });
  const { read, message } = guardPrivacy(practice, input.at, input.text, asTyped);
  draft.reading = read.reading;
  session.notes.explain(input.id, read.why);
  if (forgetWord(session, speaker, input.text)) return;
  const waiting = questionAnsweredBy(session, input, read);
  if (waiting !== null) answerQuestion(session, speaker, waiting.question, waiting.value, waiting.told);
  else sayTooLate(session, speaker, input, read);
  const mayLean = waiting === null && message === null;
  if (waiting?.wholeNote !== true)
    takeNote(session, speaker, input, read, { answered: waiting !== null, mayLean });
  if (waiting === null && message === null) suggest(session, speaker, input, read);
  rememberPassing(session, input, read.reading);
  if (message !== null) {
    draft.post(speaker.room, { about: 'privacy', message, replyTo: speaker.note, mentions: [speaker.from] });
  }
}

/** The parts of a note in the order in which a person wants to hear of them. */
function takeNote(
  session: Session,
  speaker: Speaker,
  input: NoteInput,
  read: NoteRead,
  { answered, mayLean }: { readonly answered: boolean; readonly mayLean: boolean },
): void {
  const acts = answered ? read.reading.acts.filter(isNoAnswer) : read.reading.acts;
  carryOut(session, speaker, [...acts, ...doneFirst(session, input, acts), ...closing(input, acts)], input);
  const leaning = mayLean ? leant(session, speaker, input, read) : null;
  if (leaning === 'asked') return;
  if (leaning !== null) {
    session.notes.explain(input.id, whyLeant(leaning));
    const entered = enterFacts(session, speaker, leaning.facts, session.draft.number);
    session.draft.leans = leaning.leans;
    followUp(session, speaker, entered, [], leaning.leans.how);
    return;
  }
  const { filled, open } = fillGaps(session, speaker, read.gaps);
  const facts = [...read.reading.facts, ...filled.map((one) => one.entry)];
  const entered = enterFacts(session, speaker, facts, session.draft.number);
  const { practice, learned } = session;
  const filledIn = [...filled.map((one) => one.filledIn), ...throughSlips(practice, learned, read)];
  if (entered.length > 0) followUp(session, speaker, entered, filledIn);
  askGaps(session, speaker, open);
  if (session.now - input.at <= STALE_MS) answerAsks(session, speaker, read, input.replyTo, input.text);
  else if (read.reading.asks.length > 0) session.draft.unanswered = true;
}

function isNoAnswer(act: NoteRead['reading']['acts'][number]): boolean {
  return act.kind !== 'pick' && act.kind !== 'yes' && act.kind !== 'no';
}

/** "done, tip 2 sent to autoclave" in reply to a reminder ticks it off and tells more: only the reply says what "done" is of. */
function doneFirst(session: Session, { replyTo, text }: NoteInput, acts: readonly Act[]): readonly Act[] {
  if (replyTo === undefined || !('post' in replyTo) || acts.some(({ kind }) => kind === 'done')) return [];
  const asks = (session.posts.get(replyTo.post)?.matters.length ?? 0) > 0;
  return asks && /^\s*(?:all )?done\s*[,.;!–-]/i.test(text) ? [{ kind: 'done' }] : [];
}

/** "look-back closed: all seen by the dentist"; "closed", with or without what was done, alone only in reply to a post of ours. */
function closing({ replyTo, text }: NoteInput, acts: readonly Act[]): readonly Act[] {
  if (acts.some(({ kind }) => kind === 'close')) return [];
  const said = closingWords(text);
  const ours = replyTo !== undefined && 'post' in replyTo;
  if (said === null || (said.named === undefined && !ours)) return [];
  return [said.reason === undefined ? { kind: 'close' } : { kind: 'close', reason: said.reason }];
}
