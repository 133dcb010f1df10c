import { type Draft, sortOf } from './clauses.ts';
import { hasTag, type Part } from './part.ts';
import { LEAVING_OUT, verbBehind } from './spared.ts';

/**
 * "Tips 1 to 10 sterile and on the shelf except 4": what is left out stands in a later part of the sentence than the ids it
 * is left out of. It is taken from those, so that no part tells it of 4.
 */
export function leftOutLater(drafts: readonly Draft[]): readonly Draft[] {
  const list = [...drafts];
  for (const [i, draft] of list.entries()) {
    const bar = barIn(draft.parts);
    const spared = bar < 0 ? draft.parts.flatMap(exceptIn) : draft.parts.slice(bar).flatMap(idsOf);
    const from = list.findLastIndex(
      (one, at) => at < i && one.sentence === draft.sentence && one.parts.some((p) => holdsMore(p, spared)),
    );
    const own = list[from];
    // "Used 1, 2 and 3 and sent them except 2": all of them were used.
    if (spared.length === 0 || own === undefined || own.parts.some((p) => hasTag(p, 'use'))) continue;
    list[from] = { ...own, parts: own.parts.map((p) => (holdsMore(p, spared) ? without(p, spared) : p)) };
    // "All on the shelf bar 4" says itself what it leaves out.
    if (bar < 0 || draft.parts.slice(0, bar).some(isTips)) continue;
    const kept = draft.parts.slice(0, bar);
    list[i] = { ...draft, parts: kept, sort: sortOf(kept) };
  }
  return list;
}

/** Where what is left out begins, with no ids before it; −1 where nothing is. "Not 4" leaves out where nothing else is told. */
function barIn(parts: readonly Part[]): number {
  const bar = parts.findIndex(
    (p) => p.entity === undefined && (p.text === 'not' || LEAVING_OUT.test(p.text)),
  );
  if (bar < 0 || parts.slice(0, bar).some((p) => idsOf(p).length > 0)) return -1;
  return parts[bar]?.text === 'not' && (verbBehind(parts, bar) || parts[bar + 1]?.entity?.is !== 'tips')
    ? -1
    : bar;
}

function exceptIn({ entity }: Part): readonly string[] {
  return entity?.is === 'tips' ? entity.except : [];
}

function isTips({ entity }: Part): boolean {
  return entity?.is === 'tips';
}

function idsOf({ entity }: Part): readonly string[] {
  return entity?.is === 'tips' && entity.which === undefined ? entity.ids : [];
}

function holdsMore(part: Part, spared: readonly string[]): boolean {
  const ids = idsOf(part);
  return ids.length > spared.length && spared.every((id) => ids.includes(id));
}

function without(part: Part, spared: readonly string[]): Part {
  const { entity } = part;
  if (entity?.is !== 'tips') return part;
  return { ...part, entity: { ...entity, ids: entity.ids.filter((id) => !spared.includes(id)) } };
}
