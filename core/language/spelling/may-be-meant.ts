import { commonness } from '../lexicon/commonness.ts';
import type { NoteRead } from '../read.ts';
import type { Trial } from './likelihood.ts';

interface Tried extends Trial {
  /** The note names something of ours without it. */
  readonly ours: boolean;
  /** The note has more than three words. */
  readonly long: boolean;
  /** The word is a name of the practice. */
  readonly name: boolean;
}

/** A reading with how many words of the note nobody knows. */
interface Other {
  readonly read: { readonly read: NoteRead };
  readonly strange: number;
}

/**
 * True where what a note would say with another word may be what was meant: something is said by it, nothing strange is
 * left, and where nothing else in the note names a thing of ours the word is a likely one.
 */
export function mayBeMeant(
  { read: { read }, strange }: Other,
  { ours, standing, typed, word, near, long, name }: Tried,
): boolean {
  const { facts, asks, acts, plans } = read.reading;
  if (isEmpty(read) || (strange >= 1 && acts.length === 0)) return false;
  if (acts.some((act) => act.kind === 'pick' && (!name || /\d/.test(act.choice)))) return word === 'option';
  if (ours) return true;
  if (near < 2) return false;
  const common = commonness(word) > 0;
  if (facts.length + plans.length > 0)
    return standing === 'none' ? word.length > 3 || common : standing === 'word' && long && (name || common);
  if (asks.length > 0) return standing === 'none' || (standing === 'word' && near > 3);
  if (acts.length > 0) return near > 3 || (standing === 'none' && typed.length > 2);
  return standing === 'none' && (name || OURS.test(word));
}

const OURS = /^(tips?|cal|scanner|load)$/;

export function isEmpty({ reading: { facts, asks, acts, plans, unclear } }: NoteRead): boolean {
  return facts.length + asks.length + acts.length + plans.length + unclear.length === 0;
}

/** True where a reading tells facts, and less of them than another. */
export function saysLess(one: NoteRead, other: NoteRead): boolean {
  return one.reading.facts.length > 0 && slotsIn(one) < slotsIn(other);
}

/** How many slots the facts and plans of a reading have together. */
export function slotsIn({ reading: { facts, plans } }: NoteRead): number {
  return [...facts, ...plans].reduce((sum, entry) => sum + Object.keys(entry).length, 0);
}
