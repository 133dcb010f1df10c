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

/** What "it", "both", "them" or "the other one" can stand for: `latest` of the notes `before`, the latest first. */
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
