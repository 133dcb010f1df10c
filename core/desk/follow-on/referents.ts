import type { Pronoun } from '../../language/follow-on/pronoun.ts';
import type { Item } from '../../reading/slots.ts';
import type { Session } from '../session.ts';
import { otherThan } from './other-one.ts';
import type { Leaning, Told } from './told.ts';

/** Lists of items that can be meant; `sure`: as many were told of as are spoken of. */
export interface Referents {
  readonly sure: boolean;
  readonly lists: readonly (readonly Item[])[];
}

/** What "it", "both", "them", "the other one" or nothing at all can stand for: `latest` of the notes `before`, the latest first. */
export function referents(
  session: Session,
  note: Leaning,
  { standing }: Pronoun,
  before: readonly Told[],
  latest: Told,
): Referents {
  switch (standing) {
    case 'one':
      return { sure: true, lists: latest.items.filter(isThing).map((item) => [item]) };
    case 'other': {
      const other = otherThan(session, note, latest);
      return { sure: session.practice.scanners.length === 2, lists: other === null ? [] : [other] };
    }
    case 'left-out':
      return { sure: true, lists: listsOf([latest]).filter((items) => items.length > 0) };
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

/**
 * Two of a sort: those of the latest note, else those of the latest notes that told the same ("used tip 3", "used tip 4"),
 * else those that were told of at all; of more, the latest two are asked about.
 */
function two(before: readonly Told[], latest: Told): Referents {
  const other = before.findIndex((one) => kindsOf(one) !== kindsOf(latest));
  const alike = other < 0 ? before : before.slice(0, other);
  for (const notes of [[latest], alike]) {
    const lists = listsOf(notes).filter((items) => items.length === 2);
    if (lists.length > 0) return { sure: true, lists };
  }
  const lists = listsOf(before).filter((items) => items.length >= 2);
  return {
    sure: lists.every((items) => items.length === 2),
    lists: lists.map((items) => items.slice(-2)),
  };
}

/** What those notes told of, by sort, in the order told. */
function listsOf(notes: readonly Told[]): readonly (readonly Item[])[] {
  const all = [...new Set(notes.flatMap(({ items }) => items.toReversed()))].toReversed();
  return SORTS.map((sort) => ofSort(all, sort));
}

function kindsOf({ facts }: Told): string {
  return [...new Set(facts.map(({ kind }) => kind))].join();
}

function isThing(item: Item): boolean {
  return /^(?:tip|scanner|load):/.test(item);
}
