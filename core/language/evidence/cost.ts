import { LIGHT_VERBS } from '../lexicon/light.ts';
import type { Entity, Part } from '../part.ts';
import type { Sense } from '../table.ts';

/** What a mention costs by its kind where no frame explains it. */
const LEFT: Readonly<Record<string, number>> = {
  load: 2,
  site: 0.5,
  room: 0.5,
  time: 0,
  number: 0.8,
  celsius: 0.8,
};

function mentionCost(entity: Entity): number {
  if (entity.is === 'tips') return entity.named || entity.ids.length > 0 ? 3.6 : 1;
  if (entity.is === 'scanner') return entity.named === 'bare' ? 1 : 1.6;
  if (entity.is === 'person') return entity.known ? 0.02 : 0.06;
  return LEFT[entity.is] ?? 1;
}

/** What a meaning costs where no frame explains its word. */
function senseCost(sense: Sense): number {
  switch (sense.sort) {
    case 'glue':
    case 'mood':
      return sense.tag === 'timeword' ? 1.2 : 0;
    case 'verb':
      return LIGHT_VERBS.has(sense.tag) ? 0.25 : 0.9;
    case 'noun':
      return sense.tag === 'patient' ? 0 : 0.5;
    case 'number':
      return 0.4;
    default:
      return 0.6;
  }
}

/** What a part that no frame explains tells against the reading; 0 for glue. */
export function costOf(part: Part): number {
  if (part.mark) return 0;
  if (part.entity !== undefined) return mentionCost(part.entity);
  if (part.senses.some((s) => s.sort === 'other') && !part.senses.some((s) => s.sort === 'glue')) return 2.6;
  return Math.min(1.1, ...part.senses.map(senseCost));
}
