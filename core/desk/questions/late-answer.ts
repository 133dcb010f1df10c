import { ruleValue } from '../../defaults/rule-value.ts';
import type { NoteRead } from '../../language/read.ts';
import { zoneOfChatRoom } from '../../practice/look-up.ts';
import type { Purpose, Question } from '../../rules/question.ts';
import { HOUR, MINUTE } from '../../time/instant.ts';
import { clockWords } from '../../words/clock-words.ts';
import { lines } from '../../words/message.ts';
import type { NoteInput } from '../input.ts';
import type { Session, Speaker } from '../session.ts';

type Reached = Extract<Purpose, { sort: 'reached-patient' }>;

/**
 * Whether a note that does not reply to the question itself may answer it. "Did it reach a patient?" stays until it is
 * answered, so a bare yes or no counts for it only a while after it was asked last; later, or in reply to something else,
 * it has to reply to a post of that incident, or to name the tip.
 */
export function mayAnswer(session: Session, { purpose, asked }: Question, input: NoteInput): boolean {
  if (purpose.sort !== 'reached-patient') return true;
  if (namesTip(input.text, purpose.tip)) return true;
  if (input.replyTo !== undefined) return isOfIncident(session, purpose, input.replyTo);
  const again = session.posts.saidAt(`incident|${purpose.incident}`, 'first') ?? asked;
  const bare = ruleValue(session.practice, 'incidentBareAnswerMinutes') * MINUTE;
  return input.at - Math.max(asked, again) <= bare;
}

/** The warning, the mention of the lead, a brief that names the tip, or the note that it is about. */
function isOfIncident(
  { posts, notes, questions }: Session,
  { tip, entry, incident }: Reached,
  target: NonNullable<NoteInput['replyTo']>,
): boolean {
  if ('note' in target) return notes.get(target.note)?.turn === Number(entry.split('.')[0]);
  const line = posts.get(target.post);
  if (line === null) return false;
  if (line.finding === incident || line.matters.includes(`incident|${incident}`)) return true;
  // A brief may name several: then only the tip's own number says which.
  const asked = questions.all().filter(({ purpose }) => purpose.sort === 'reached-patient');
  return line.post.about === 'brief' && line.post.items.includes(`tip:${tip}`) && asked.length === 1;
}

function namesTip(text: string, tip: string): boolean {
  const words = text.toLowerCase().split(/[^\p{L}\p{N}-]+/u);
  const id = tip.toLowerCase();
  return words.some((word, n) => word === `tip${id}` || (word === 'tip' && words[n + 1] === id));
}

/** A bare yes or no that came too late for an unanswered incident of this chat room: says how it is answered, that day. */
export function sayTooLate(
  session: Session,
  speaker: Speaker,
  input: NoteInput,
  { reading }: NoteRead,
): void {
  if (input.replyTo !== undefined) return;
  const { facts, asks, plans, unclear, acts } = reading;
  const isBare = facts.length + asks.length + plans.length + unclear.length === 0 && acts.length === 1;
  const [act] = acts;
  if (!isBare || (act?.kind !== 'yes' && act?.kind !== 'no')) return;
  const tooLate = ruleValue(session.practice, 'incidentTooLateHours') * HOUR;
  const waiting = session.questions.waitingFor(input.room, input.from, session.now);
  for (const { purpose, asked, items } of waiting) {
    if (purpose.sort !== 'reached-patient' || session.now - asked > tooLate) continue;
    const at = clockWords(asked, session.now, zoneOfChatRoom(session.practice, input.room));
    const message = lines([
      { strong: `Is that for tip ${purpose.tip}?` },
      ` Asked at ${at}, still open. Reply to that post, or type “${act.kind}, tip ${purpose.tip}”.`,
    ]);
    session.draft.post(speaker.room, { about: 'question', message, items, replyTo: speaker.note });
    return;
  }
}
