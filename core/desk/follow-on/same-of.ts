import { canonical } from '../../reading/canonical.ts';
import { type Fact, fact as factSchema } from '../../reading/fact.ts';
import type { Item } from '../../reading/slots.ts';
import { idOf } from '../../words/item-words.ts';

type Slots = Readonly<Record<string, unknown>>;

/** What belongs to the note that told it, and to no other. */
const OWN = ['when', 'earliest', 'samePatient', 'which', 'except'];

/**
 * The same that facts of one kind told, of other items and at another instant; `null` where they are of several kinds or
 * told several things, or where the items are of a sort that this kind does not speak of.
 */
export function sameOf(facts: readonly Fact[], items: readonly Item[], when: string): readonly Fact[] | null {
  const [first] = facts;
  const [item] = items;
  if (first === undefined || item === undefined) return null;
  const sort = sortOf(item);
  if (items.some((one) => sortOf(one) !== sort)) return null;
  const bodies = new Set(facts.map((fact) => canonical(bodyOf(fact, sort))));
  const body = bodyOf(first, sort);
  if (bodies.size !== 1 || body === null) return null;
  const written = writtenFor(first, items, sort);
  const parsed = written?.map((slots) => factSchema.safeParse({ ...body, ...slots, when }));
  if (parsed === undefined) return null;
  const same = parsed.flatMap((one) => (one.success ? [one.data] : []));
  return same.length === parsed.length ? same : null;
}

function sortOf(item: Item): string {
  return item.slice(0, item.indexOf(':'));
}

/** The fact without its items and without what is its own note's; `null` where its kind is not told of that sort. */
function bodyOf(fact: Fact, sort: string): Slots | null {
  const slots: Record<string, unknown> = { ...fact };
  for (const slot of OWN) delete slots[slot];
  for (const slot of ['items', 'item', 'tips']) delete slots[slot];
  if (sort === 'load') return loadBody(fact);
  if (sort !== 'scanner') return slots;
  delete slots.scanner;
  // A scan on another scanner is with another tip, in another room.
  delete slots.tip;
  if (fact.kind === 'scan-started' || fact.kind === 'scan-finished') delete slots.room;
  return slots;
}

/** Another load has figures of its own: only how it came out is said to be the same. */
function loadBody(fact: Fact): Slots | null {
  return fact.kind === 'load-finished' ? { kind: fact.kind, outcome: fact.outcome } : null;
}

/** The item slots of each fact; `null` where that kind has none for the sort. */
function writtenFor(fact: Fact, items: readonly Item[], sort: string): readonly Slots[] | null {
  const ids = items.map(idOf);
  if (sort === 'load') return 'load' in fact ? ids.map((load) => ({ load })) : null;
  // A fault of a cable or a mirror is no other thing's: only what any may suffer is.
  if ('item' in fact) return sortOf(fact.item) === sort ? items.map((item) => ({ item })) : null;
  if ('items' in fact) return isOfSort(fact.items, sort) ? [{ items }] : null;
  if (sort === 'tip') return 'tips' in fact && fact.tips !== undefined ? [{ tips: ids }] : null;
  if (fact.kind === 'fitted' || fact.kind === 'used') return null;
  return 'scanner' in fact ? ids.map((scanner) => ({ scanner })) : null;
}

/** What is moved, lost or held may be a scanner or a tip; of a load it is another matter. */
function isOfSort(items: readonly Item[], sort: string): boolean {
  return items.every(
    (item) => sortOf(item) === sort || /^(?:scanner|tip|calibration-tip)$/.test(sortOf(item)),
  );
}
