import type { Part } from '../part.ts';

/** The number that a part is, in figures or in words; `null` where it is none. */
export function wordsNumber(part: Part): number | null {
  const { entity } = part;
  if (entity?.is === 'number') return Number.isInteger(entity.value) ? entity.value : null;
  if (entity?.is === 'tips' && !entity.named) {
    const [id, more] = [...entity.ids, ...entity.unknown];
    return id !== undefined && more === undefined && /\d+$/.test(id) ? Number(/\d+$/.exec(id)?.[0]) : null;
  }
  const sense = part.senses.find((s) => s.tag === 'number');
  return sense === undefined ? null : Number(sense.ref);
}
