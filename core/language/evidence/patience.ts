import type { Clause } from '../clause.ts';
import type { Entity, Part } from '../part.ts';

/** How much of the rest of the note may be strange, by how surely the clause names our things. */
export function bearsOutside(c: Clause, outside: number, listing: boolean): boolean {
  let most = 0;
  for (const i of c.used) most = Math.max(most, patience(c.parts[i]));
  if (listing) return most > 20;
  return outside <= most;
}

/** What is named outright is meant however much else the note says. */
const SURE = 1_000_000;

const SCANNER_PATIENCE = { name: SURE, noun: 2.5, bare: 2.5, letter: 0.4 } as const;
const MENTION_PATIENCE: Readonly<Record<string, number>> = {
  some: SURE,
  'no-scanner': SURE,
  autoclave: 12,
  site: 1.5,
  room: 1.5,
};

function mentionPatience(entity: Entity): number {
  if (entity.is === 'tips') return entity.named ? SURE : 1;
  if (entity.is === 'load') return entity.named ? SURE : 0;
  if (entity.is === 'scanner') return SCANNER_PATIENCE[entity.named];
  if (entity.is === 'celsius') return entity.unit ? 3 : 2.5;
  return MENTION_PATIENCE[entity.is] ?? 0.5;
}

function patience(part: Part | undefined): number {
  if (part === undefined) return 0;
  if (part.entity !== undefined) return mentionPatience(part.entity);
  let most = 0.5;
  for (const sense of part.senses) {
    if (sense.sort === 'noun') most = Math.max(most, NOUN_PATIENCE[sense.tag] ?? 0.5);
    if (sense.sort === 'verb' && sense.tag === 'calibrate') most = Math.max(most, 4);
    if (sense.sort === 'verb' && sense.tag === 'cancel') most = Math.max(most, 4);
  }
  return most;
}

const NOUN_PATIENCE: Readonly<Record<string, number>> = {
  tip: 4,
  scanner: 10,
  caltip: 30,
  spore: 12,
  penetration: 12,
  control: 2,
  autoclave: 8,
  lens: 1,
  cover: 1.5,
  record: 1.2,
  temp: 2,
  magnifier: 3,
  booking: 3,
};
