import type { Entity, Part } from '../part.ts';

/** What a part that a frame used shows: how sure it makes it that the clause speaks of our things. */
const VERBS: Readonly<Record<string, number>> = {
  calibrate: 2.2,
  bag: 1.2,
  wipe: 1.2,
  sterile: 1.5,
  sterilise: 1.5,
  fog: 1,
  scan: 1,
  cover: 0.8,
  retire: 0.8,
  use: 0.5,
  wash: 0.8,
  send: 0.5,
  hold: 0.8,
  release: 1,
  fit: 0.5,
  remove: 0.5,
  check: 0.5,
  lose: 0.6,
  find: 0.5,
  disconnect: 1,
  cold: 1.2,
  travel: 0.7,
  repair: 0.7,
  pass: 0.6,
  fail: 0.7,
  finish: 0.3,
  start: 0.3,
  cancel: 0.8,
  book: 0.6,
  shut: 0.8,
  open: 0.5,
  drop: 0.5,
  fall: 0.4,
  clean: 0.5,
  take: 0.3,
  move: 0.6,
  crack: 0.6,
  scratch: 0.6,
  sick: 0.8,
  dead: 0.6,
  tear: 0.6,
  fray: 0.6,
  add: 0.5,
  incubate: 1,
};
const NOUNS: Readonly<Record<string, number>> = {
  tip: 0.8,
  scanner: 1.5,
  caltip: 2.5,
  cover: 0.8,
  base: 0.6,
  lens: 0.8,
  mirror: 0.5,
  pouch: 0.8,
  strip: 0.8,
  load: 0.5,
  autoclave: 1.5,
  spore: 2.5,
  penetration: 2.5,
  control: 1.5,
  leak: 2,
  temp: 1.3,
  degree: 0.8,
  magnifier: 1.5,
  inspection: 0.5,
  debris: 0.6,
  shelf: 0.3,
  booking: 0.8,
  seal: 0.5,
  heater: 0.8,
  record: 0.8,
};

/** Evidence that a mention gives by its kind, where nothing finer is known. */
const MENTIONS: Readonly<Record<string, number>> = {
  'no-scanner': 2,
  load: 2.6,
  autoclave: 2,
  some: 2.5,
  room: 1,
  cycle: 1.2,
  time: 0.4,
};

function mentionStrength(entity: Entity): number {
  if (entity.is === 'tips') return entity.named ? (entity.which === undefined ? 3 : 2.4) : 1.2;
  if (entity.is === 'scanner') return entity.named === 'name' ? 2.5 : 1.2;
  if (entity.is === 'site') return entity.bare ? 0.8 : 1;
  if (entity.is === 'celsius') return entity.unit ? 1.2 : 0.8;
  return MENTIONS[entity.is] ?? 0.3;
}

/** Evidence that one used part gives. */
export function strengthOf(part: Part): number {
  if (part.entity !== undefined) return mentionStrength(part.entity);
  let best = 0;
  for (const sense of part.senses) {
    if (sense.sort === 'verb') best = Math.max(best, VERBS[sense.tag] ?? 0.2);
    else if (sense.sort === 'noun') best = Math.max(best, NOUNS[sense.tag] ?? 0.3);
    else if (sense.sort === 'name') best = Math.max(best, sense.tag === 'steri' ? 1.3 : 0.8);
  }
  return best;
}
