import { ruleValue } from '../../defaults/rule-value.ts';
import type { Practice } from '../../practice/practice.ts';
import type { Reading } from '../../reading/reading.ts';
import { lines } from '../../words/message.ts';
import type { NoteInput } from '../input.ts';
import type { Session, Speaker } from '../session.ts';
import { answerAsks } from '../turns/answer-asks.ts';

/** Typed to the program alone, by a practice that keeps its notes where colleagues see them. */
export function onlyAsks(practice: Practice, { privately }: { readonly privately?: true }): boolean {
  return privately === true && !ruleValue(practice, 'privateNotes');
}

/** Answers what a private message asks. What it tells is not kept, and that is said: colleagues could not see it. */
export function answerInPrivate(session: Session, speaker: Speaker, input: NoteInput): void {
  const read = session.read(input.text, { at: input.at, from: input.from, room: input.room });
  if (tells(read.reading)) {
    const message = lines(
      [{ strong: 'Not recorded: ' }, 'I take notes in the chat rooms only, where your colleagues see them.'],
      'Please type it there. Here you may ask.',
    );
    session.draft.post(speaker.room, { about: 'record', message, replyTo: speaker.note });
  }
  answerAsks(session, speaker, read, input.replyTo);
}

function tells({ facts, plans, unclear, acts }: Reading): boolean {
  return facts.length + plans.length + unclear.length + acts.length > 0;
}
