import type { Clause } from './clause.ts';
import type { Part } from './part.ts';
import type { Made, Result } from './result.ts';

/** Words before what is left out of what was said. */
export const LEAVING_OUT =
  /^(?:except|except for|excepting|bar|barring|but not|apart|apart from|aside|aside from|besides|excluding|minus|other than|save|save for|without|not counting|not including|exception|exceptions|with the exception of|with exception of|the exception of)$/;

/** What is so of all the others; told of the one left out it would be a wrong record, and a dangerous one. */
const SO_OF_THE_OTHERS: ReadonlySet<unknown> = new Set([
  'sterile',
  'released',
  'washed',
  'bagged',
  'sent',
  'used',
  'inspected',
  'load-started',
  'calibrated',
  'wiped',
  'covered',
  'moved',
  'departed',
  'repaired',
  'found',
]);

/**
 * The last guard: "they're all fine to use bar tip 4", "blue calibrated not red" must never tell of tip 4 and of red what is
 * told of the others, whatever frame explains it. A verb behind the one left out may tell of that one ("except 4, used at
 * 9"), unless all were spoken of. `null` where nothing is left to tell.
 */
export function withoutSpared(c: Clause, result: Result): Result | null {
  const spared = c.parts.flatMap((part, i) => (isSpared(c, i) ? itemsOf(part) : []));
  if (spared.length === 0 || !result.made.some(({ entry }) => SO_OF_THE_OTHERS.has(entry.kind)))
    return result;
  const made = result.made.flatMap((one) =>
    SO_OF_THE_OTHERS.has(one.entry.kind) ? others(one, spared) : [one],
  );
  return made.length === 0 ? null : { ...result, made };
}

/** The entry without them; none where it tells of nothing else. */
function others(one: Made, spared: readonly string[]): readonly Made[] {
  const { entry } = one;
  if (spared.includes(`scanner:${entry.scanner}`)) return [];
  const tips = Array.isArray(entry.tips)
    ? entry.tips.filter((id) => !spared.includes(`tip:${id}`))
    : undefined;
  const items = Array.isArray(entry.items) ? entry.items.filter((item) => !spared.includes(item)) : undefined;
  const isEmptied = (kept: unknown[] | undefined, was: unknown) =>
    kept !== undefined && kept.length === 0 && Array.isArray(was) && was.length > 0;
  if (isEmptied(items, entry.items) || (isEmptied(tips, entry.tips) && entry.which === undefined)) return [];
  const kept = {
    ...entry,
    ...(tips === undefined ? {} : { tips }),
    ...(items === undefined ? {} : { items }),
  };
  return [{ ...one, entry: kept }];
}

function itemsOf({ entity }: Part): readonly string[] {
  if (entity?.is === 'scanner') return entity.ids.map((id) => `scanner:${id}`);
  return entity?.is === 'tips' && entity.which === undefined ? entity.ids.map((id) => `tip:${id}`) : [];
}

/** Stands behind such a word, with nothing but small words and other ids between. */
function isSpared(c: Clause, at: number): boolean {
  const sort = c.parts[at]?.entity?.is;
  if (sort !== 'tips' && sort !== 'scanner') return false;
  for (let i = at - 1; i >= 0; i--) {
    const part = c.parts[i];
    if (part === undefined) return false;
    if (part.entity === undefined && leavesOut(c, i)) return i > 0 && !tellsOfItself(c, i, at);
    const small =
      part.mark || /^(?:for|from|of|the|and|&|or|n|tip|tips|number|no|nos|numbers)$/.test(part.text);
    if (part.entity === undefined ? !small : part.entity.is !== sort) return false;
  }
  return false;
}

function leavesOut(c: Clause, i: number): boolean {
  const text = c.parts[i]?.text ?? '';
  const uncounted = /^(?:counting|including)$/.test(text) && c.parts[i - 1]?.text === 'not';
  return uncounted || text === 'not' || LEAVING_OUT.test(text);
}

function tellsOfItself(c: Clause, bar: number, at: number): boolean {
  const all = c.parts
    .slice(0, bar)
    .some((p) => p.entity === undefined && /^(?:all|every|everything)$/.test(p.text));
  return verbBehind(c.parts, at) && !all;
}

/** A verb behind a part: what stands there may be told of that part. */
export function verbBehind(parts: readonly Part[], at: number): boolean {
  return parts.some((p, i) => i > at && p.entity === undefined && p.senses.some((s) => s.sort === 'verb'));
}
