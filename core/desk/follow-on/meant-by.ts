import { factWords } from '../../answers/fact-words.ts';
import type { Pronoun } from '../../language/follow-on/pronoun.ts';
import type { Why } from '../../language/read.ts';
import type { Fact } from '../../reading/fact.ts';
import type { Item } from '../../reading/slots.ts';
import { itemsOf } from '../../record/items-of.ts';
import { capital, inWords, tipsInWords } from '../../rules/tips/tip-words.ts';
import { idOf, itemWords } from '../../words/item-words.ts';
import type { Session } from '../session.ts';
import type { FollowOn } from './follow-on.ts';
import { fits, tightens } from './loosening.ts';
import { otherThan } from './other-one.ts';
import { passedSince } from './passing.ts';
import { bare } from './same-again.ts';
import { type Leaning, type Told, toldBefore } from './told.ts';

/** What the note says with one thing, or several, in the place of "it" or "them". */
interface Meant {
  readonly items: readonly Item[];
  readonly facts: readonly Fact[];
  readonly fits: boolean;
  /** Where it went is not said but filled in. */
  readonly placeUnsaid: boolean;
}

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

/** Lists of items that can be meant; `sure`: as many were told of as are spoken of. */
interface Referents {
  readonly sure: boolean;
  readonly lists: readonly (readonly Item[])[];
}

function referents(
  session: Session,
  note: Leaning,
  { standing }: Pronoun,
  before: readonly Told[],
  latest: Told,
): Referents {
  switch (standing) {
    case 'one': {
      // What was lost may have been told of before something else.
      const lost = before
        .flatMap(({ facts }) => facts.filter(({ kind }) => kind === 'missing'))
        .flatMap(itemsOf);
      const items = [...new Set([...latest.items, ...lost])].filter(isThing);
      return { sure: true, lists: items.map((item) => [item]) };
    }
    case 'other': {
      const other = otherThan(session, note, latest);
      return { sure: session.practice.scanners.length === 2, lists: other === null ? [] : [other] };
    }
    case 'two':
      return two(before, latest);
    case 'several': {
      const own = SORTS.map((sort) => ofSort(latest.items, sort)).filter((items) => items.length > 1);
      return own.length > 0 ? { sure: true, lists: own } : { ...two(before, latest), sure: false };
    }
  }
}

const SORTS = ['tip:', 'scanner:'];

function ofSort(items: readonly Item[], sort: string): readonly Item[] {
  return items.filter((item) => item.startsWith(sort));
}

/** Two of a sort: those of the latest note, else those that were told of at all; of more, the latest two are asked about. */
function two(before: readonly Told[], latest: Told): Referents {
  const own = SORTS.map((sort) => ofSort(latest.items, sort)).filter((items) => items.length === 2);
  if (own.length > 0) return { sure: true, lists: own };
  const all = [...new Set(before.flatMap(({ items }) => items))];
  const each = SORTS.map((sort) => ofSort(all, sort)).filter((items) => items.length >= 2);
  return {
    sure: each.every((items) => items.length === 2),
    lists: each.map((items) => items.slice(0, 2).toReversed()),
  };
}

function isThing(item: Item): boolean {
  return /^(?:tip|scanner|load):/.test(item);
}

/** How the note reads with these things named; nothing where that is no plain fact of just these. */
function readAs(
  session: Session,
  note: Leaning,
  { saying }: Pronoun,
  items: readonly Item[],
): readonly Meant[] {
  const { at, from, room } = note;
  const { reading, why } = session.read(saying(nameOf(session, items)), { at, from, room });
  const { facts, asks, acts, plans, unclear } = reading;
  if (facts.length === 0 || asks.length + acts.length + plans.length + unclear.length > 0) return [];
  const spoken = new Set(facts.flatMap(itemsOf));
  const isOfThese = items.every((item) => spoken.has(item));
  const eachIs = facts.every((fact) => itemsOf(fact).some((item) => items.includes(item)));
  if (!isOfThese || !eachIs) return [];
  const agrees = facts.every((fact) => fits(fact, session.timeline.state));
  // Something is found that was lost; whatever else people find is talk.
  if (!agrees && facts.some(({ kind }) => kind === 'found')) return [];
  const placeUnsaid = why.some(({ slots: { site } }) => isUnsaid(site));
  return [{ items, facts, fits: agrees, placeUnsaid }];
}

/** "It's arrived" says no place: whoever travels with it may type in either site's chat room. */
function isUnsaid(site: Why['slots'][string] | undefined): boolean {
  return site !== undefined && ('filledIn' in site || /^arriv/i.test(site.said));
}

function nameOf({ practice }: Session, items: readonly Item[]): string {
  return items.every((item) => item.startsWith('tip:'))
    ? tipsInWords(items.map(idOf))
    : inWords(items.map((item) => itemWords(practice, item)));
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
