import type { Why } from '../../language/read.ts';
import { openMatters } from '../../rules/matters.ts';
import { type Line, lines, type Message } from '../../words/message.ts';
import { ruleWords, slotWords } from '../../words/why-words.ts';
import type { Target } from '../input.ts';
import { type Session, type Speaker, viewOf } from '../session.ts';

/** "why?": which words of a note gave what, or which rule made a post of ours speak. */
export function explain(session: Session, speaker: Speaker, target: Target | undefined): void {
  const { draft } = session;
  draft.post(speaker.room, { about: 'answer', message: whyMessage(session, target), replyTo: speaker.note });
}

function whyMessage(session: Session, target: Target | undefined): Message {
  if (target === undefined) return lines('Reply “why?” to one of your notes, or to a post of mine.');
  if ('note' in target) return ofNote(session, target.note);
  const line = session.posts.get(target.post);
  if (line === null) return lines('I no longer have that post at hand.');
  const rules = openMatters(viewOf(session))
    .filter((matter) => line.matters.includes(matter.key))
    .map((matter) => matter.rule);
  if (rules.length > 0) return lines([{ strong: 'Rule: ' }, `${[...new Set(rules)].join(', ')}.`]);
  if (line.finding !== null) return lines([{ strong: 'Rule: ' }, `${line.finding.split(':')[1] ?? ''}.`]);
  const note = line.post.replyTo;
  return note === undefined ? lines('That post answers nothing that I still have.') : ofNote(session, note);
}

function ofNote(session: Session, note: string): Message {
  const whys = session.notes.whyOf(note);
  if (whys === null) return lines('I do not keep the words of notes for long, so I cannot say any more.');
  if (whys.length === 0) return lines('Nothing in that note was for the record.');
  return [{ points: whys.map(whyLine) }];
}

/** "**moved**: what “green”; where “north clinic”; when: the note's own time". */
function whyLine(why: Why): Line {
  const pieces = slotWords(why);
  return [{ strong: ruleWords(why) }, pieces.length === 0 ? '' : `: ${pieces.join('; ')}`];
}
