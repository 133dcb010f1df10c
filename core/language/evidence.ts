import type { Clause } from './clause.ts';
import { LIGHT_VERBS } from './lexicon/light.ts';
import type { Entity, Part } from './part.ts';
import type { Sense } from './table.ts';

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

export interface Evidence {
  readonly strength: number;
  readonly cost: number;
}

/** What speaks for and against a frame's reading of a clause. */
export function weigh(c: Clause): Evidence {
  let strength = 0;
  let cost = 0;
  const used = [...c.used];
  const first = Math.min(...used);
  const last = Math.max(...used);
  for (const [i, part] of c.parts.entries()) {
    if (c.used.has(i)) strength += strengthOf(part);
    else {
      // Beyond the words that are explained, a strange word tells less than one among them.
      const outside = i < first || i > last;
      cost += costOf(part) * (outside ? 0.75 : 1);
    }
  }
  return { strength, cost };
}

/** The leftover test: how much unexplained there may be beside how much is explained. */
export function holds({ strength, cost }: Evidence): boolean {
  if (strength < 1.6) return false;
  if (strength < 1.9) return cost <= 0.05;
  if (strength < 2.6) return cost <= 0.3;
  if (strength < 3.4) return cost <= 1.15;
  if (strength < 5) return cost <= 2.3;
  return cost <= 3.4;
}

/** Words that speak of something else, or of nothing that is known. */
export function strangeIn(parts: readonly Part[]): number {
  let count = 0;
  for (const part of parts) {
    if (part.unknown) count += 1;
    else if (part.entity === undefined && part.senses.some((s) => s.sort === 'other')) count += 1.5;
    else if (part.entity?.is === 'number') count += 0.5;
  }
  return count;
}

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
