import { pronounIn } from '../../language/follow-on/pronoun.ts';
import { samenessIn } from '../../language/follow-on/sameness.ts';
import { knowsEachWord } from '../../language/suggest.ts';
import type { Fact } from '../../reading/fact.ts';
import type { Reading } from '../../reading/reading.ts';
import type { Line } from '../../words/message.ts';
import type { Session } from '../session.ts';
import type { Leans } from '../turn.ts';
import { meantBy } from './meant-by.ts';
import { sameAgain } from './same-again.ts';
import type { Leaning } from './told.ts';

/** One thing that a short note can mean. */
export interface Option {
  /** What is typed or tapped for it. */
  readonly value: string;
  readonly label: string;
  readonly facts: readonly Fact[];
}

/** What a short note means by what was told before it: taken and read back, or asked. */
export type FollowOn =
  | { readonly sort: 'taken'; readonly facts: readonly Fact[]; readonly leans: Leans }
  /** With one option a yes or no; with none the note has to be typed again. */
  | { readonly sort: 'asked'; readonly head: Line; readonly options: readonly Option[] };

/**
 * What a note that tells nothing by itself means by what the same person told in this chat room a few minutes before
 * ("blue too", "binned it"); `null` where it leans on nothing. Never a guess across people or chat rooms: there it is asked.
 */
export function followOn(session: Session, note: Leaning, text: string, reading: Reading): FollowOn | null {
  const same = samenessIn(text);
  if (same !== null && (isEmpty(reading) || isBareDone(reading, text))) {
    const again = sameAgain(session, note, same);
    if (again !== null) return again;
  }
  const pronoun = pronounIn(text);
  if (
    pronoun === null ||
    !knowsEachWord(session.practice, text) ||
    !isEmpty({ ...reading, unclear: [] }) ||
    !lacksItem(reading)
  )
    return null;
  const meant = meantBy(session, note, pronoun);
  // Where a question is asked anyway it is that one, with what was told of last in front.
  return meant?.sort === 'asked' && reading.unclear.length > 0 ? null : meant;
}

/** A bare number is an answer where nothing was asked. */
function isEmpty({ facts, asks, acts, plans, unclear }: Reading): boolean {
  return (
    facts.length + asks.length + plans.length + unclear.length === 0 &&
    acts.every(({ kind }) => kind === 'pick')
  );
}

/** "Blue done too": done is whatever was done before. */
function isBareDone({ facts, asks, acts, plans, unclear }: Reading, text: string): boolean {
  const others = asks.length + acts.length + plans.length + unclear.length;
  return others === 0 && facts.every(({ kind }) => kind === 'scan-finished') && /\bdone\b/i.test(text);
}

function lacksItem({ unclear }: Reading): boolean {
  return unclear.every(({ about, of }) => of === undefined && (about === 'scanner' || about === 'tip'));
}
