import type { Clause } from './clause.ts';
import type { Part } from './part.ts';
import type { Result } from './result.ts';

/** Words before what is left out of what was said. */
export const LEAVING_OUT =
  /^(?:except|except for|excepting|bar|barring|but not|apart|apart from|aside|aside from|besides|excluding|minus|other than|save|save for|without|not counting|not including)$/;

/** What is so of all the others; of the one left out it would be a wrong record, and of these a dangerous one. */
const SO_OF_THE_OTHERS: ReadonlySet<unknown> = new Set([
  'sterile',
  'released',
  'washed',
  'bagged',
  'sent',
  'used',
  'inspected',
  'load-started',
]);

/**
 * The last guard: "they're all fine to use bar tip 4" must never tell of tip 4 what is told of the others, whatever frame
 * explains it. A verb behind the one left out may tell of that one ("except 4, used at 9"), unless all were spoken of.
 */
export function tellsOfSpared(c: Clause, { made }: Result): boolean {
  if (!made.some(({ entry }) => SO_OF_THE_OTHERS.has(entry.kind))) return false;
  const spared = c.parts.flatMap((part, i) => (isSpared(c, i) ? sparedIds(part) : []));
  if (spared.length === 0) return false;
  return made.some(
    ({ entry }) => SO_OF_THE_OTHERS.has(entry.kind) && namedIn(entry).some((id) => spared.includes(id)),
  );
}

function sparedIds({ entity }: Part): readonly string[] {
  return entity?.is === 'tips' && entity.which === undefined ? entity.ids : [];
}

/** Stands behind such a word, with nothing but small words and other ids between. */
function isSpared(c: Clause, at: number): boolean {
  if (c.parts[at]?.entity?.is !== 'tips') return false;
  for (let i = at - 1; i >= 0; i--) {
    const part = c.parts[i];
    if (part === undefined) return false;
    if (part.entity === undefined && leavesOut(c, i)) return i > 0 && !tellsOfItself(c, i, at);
    const small = part.mark || /^(?:for|from|the|and|&|or|n|tip|tips|number|no|nos|numbers)$/.test(part.text);
    if (part.entity === undefined ? !small : part.entity.is !== 'tips') return false;
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
  const verb = c.parts.some(
    (p, i) => i > at && p.entity === undefined && p.senses.some((s) => s.sort === 'verb'),
  );
  return verb && !all;
}

function namedIn(entry: Readonly<Record<string, unknown>>): readonly string[] {
  const lists = [entry.tips, entry.items].flatMap((list) => (Array.isArray(list) ? list : []));
  return lists.flatMap((id: unknown) => (typeof id === 'string' ? [id.replace(/^tip:/, '')] : []));
}
