import type { Question } from '../../rules/question.ts';
import type { NoteInput } from '../input.ts';
import type { Session } from '../session.ts';

/** "7", "T7", "N-7", "2-5". */
const ID = /^#?\p{L}{0,4}-?\d{1,4}(?:[-–]\p{L}{0,4}\d{1,4})?$/u;
const BETWEEN = /^(?:tips?|and|to|[-–])$/i;
const ALL = /^(?:all|both|all of (?:them|those)|the lot|every one)$/i;
const EMPTY = /^(?:none|no tips|(?:it[’']?s |it was )?empty|empty (?:chamber|cycle|load))$/i;

/** The answer that a load went on empty, as after a repair. */
export const NO_TIPS = 'none';

/**
 * Several tips in answer to "which tips are in load 61?", joined by commas; "all" are those that were offered. `null` where
 * one tip is asked for, or the words are no list of this practice's tips.
 */
export function tipsNamed(session: Session, question: Question, input: NoteInput): string | null {
  const { purpose, choices } = question;
  if (purpose.sort !== 'complete' || purpose.about !== 'tip') return null;
  if (purpose.form !== 'ids' && purpose.form !== 'items') return null;
  const text = input.text.trim().replace(/[.!]+$/, '');
  if (EMPTY.test(text) && purpose.draft.kind === 'load-started') return NO_TIPS;
  if (ALL.test(text)) return choices.length === 0 ? null : choices.map(({ value }) => value).join(',');
  if (!isList(text)) return null;
  // The reader knows ranges and shared prefixes: it is given the list as a note that says nothing but tips.
  const note = /\btips?\b/i.test(text) ? `used ${text}` : `used tips ${text}`;
  const { reading } = session.read(note, { at: input.at, from: input.from, room: input.room });
  const [fact, ...more] = reading.facts;
  const others = more.length + reading.asks.length + reading.plans.length + reading.unclear.length;
  if (fact?.kind !== 'used' || fact.tips === undefined || fact.scanner !== undefined || others > 0)
    return null;
  return fact.tips.join(',');
}

/** Ids and what stands between them on a phone, and no other word: "2 and 5", "T2, T5-T7", "tips 1 to 4". */
function isList(text: string): boolean {
  const words = text.split(/[\s,&+]+/).filter((word) => word !== '');
  return words.some((word) => ID.test(word)) && words.every((word) => ID.test(word) || BETWEEN.test(word));
}
