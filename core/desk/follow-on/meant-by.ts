import { factWords } from '../../answers/fact-words.ts';
import type { Pronoun } from '../../language/follow-on/pronoun.ts';
import { capital, inWords } from '../../rules/tips/tip-words.ts';
import { itemWords } from '../../words/item-words.ts';
import type { Session } from '../session.ts';
import type { FollowOn } from './follow-on.ts';
import { tightens } from './loosening.ts';
import { passedSince } from './passing.ts';
import { type Meant, readAs } from './read-as.ts';
import { referents } from './referents.ts';
import { bare } from './same-again.ts';
import { type Leaning, type Told, toldBefore } from './told.ts';

/** "Binned it": of the thing that this person told of last, if the reader finds sense in that; else one question or none. */
export function meantBy(session: Session, note: Leaning, pronoun: Pronoun): FollowOn | null {
  const told = toldBefore(session, note);
  const own = told.filter(({ line }) => line.from === note.from);
  const isOwn = own.length > 0;
  const found = referred(session, note, pronoun, isOwn ? own : told.slice(0, 1));
  const [only, more] = found.meant;
  if (only === undefined) return null;
  if (more !== undefined) return isOwn ? which(session, found.meant) : null;
  const mayTake = isOwn && found.sure && only.fits && !passedSince(session, note, found.told?.line ?? null);
  const plain = !only.placeUnsaid && only.facts.every((fact) => tightens(fact) && fact.by === undefined);
  if (found.told !== null && mayTake && plain)
    return { sort: 'taken', facts: only.facts, leans: { on: found.told.line.turn, how: 'meant' } };
  if (!isOwn && !only.fits) return null;
  const label = only.facts.map((fact) => factWords(session.practice, bare(fact))).join('; ');
  return {
    sort: 'asked',
    head: [{ strong: `${capital(label)}?` }],
    options: [{ value: '1', label, facts: only.facts }],
  };
}

/** What of the latest note that gives any sense is meant; of an older one it is sure only where nothing else gives any. */
function referred(
  session: Session,
  note: Leaning,
  pronoun: Pronoun,
  before: readonly Told[],
): { readonly meant: readonly Meant[]; readonly sure: boolean; readonly told: Told | null } {
  const whole = pronoun.standing === 'two' || pronoun.standing === 'several';
  const spans = whole ? before.slice(0, 1) : before;
  const read = spans.map((latest, n) => {
    const { sure, lists } = referents(session, note, pronoun, whole ? before : before.slice(n), latest);
    const all = lists.flatMap((items) => readAs(session, note, pronoun, items));
    const fitting = all.filter((one) => one.fits);
    return { meant: fitting.length > 0 ? fitting : all, sure, told: latest };
  });
  const first = read.findIndex(({ meant }) => meant.length > 0);
  const latest = read[first];
  if (latest === undefined) return { meant: [], sure: false, told: null };
  const things = new Set(read.flatMap(({ meant }) => meant.map(({ items }) => items.join())));
  return { ...latest, sure: latest.sure && (first === 0 || things.size === 1) };
}

function which({ practice }: Session, meant: readonly Meant[]): FollowOn {
  const options = meant.map(({ items, facts }) => ({
    value: items.join(','),
    label: inWords(items.map((item) => itemWords(practice, item))),
    facts,
  }));
  const label = meant[0]?.facts.map((fact) => factWords(practice, bare(fact))).join('; ') ?? '';
  return { sort: 'asked', head: [{ strong: 'Which one?' }, ` Such as: ${label}.`], options };
}
