import { itemWords } from '../../words/item-words.ts';
import { atPlace, because, type FactWords, itemsWords } from './parts.ts';

/** What each sort of fault is called. */
const FAULTS = {
  fogging: 'fogs',
  dropped: 'dropped',
  lens: 'lens at fault',
  mirror: 'mirror at fault',
  cable: 'cable at fault',
  connection: 'connection at fault',
  heating: 'heating at fault',
  pack: 'pack wet, torn or opened',
  indicator: 'indicator not changed',
  other: 'fault noted',
} as const;

/** What may be said of scanners, tips, autoclaves and loads alike. */
export const itemFacts = {
  held: (practice, { items, reason }) => `${itemsWords(practice, items)} held${because(reason)}`,
  released: (practice, { items }) => `${itemsWords(practice, items)} released`,
  missing: (practice, fact) => `${itemsWords(practice, fact.items)} missing${atPlace(practice, fact)}`,
  found: (practice, fact) => `${itemsWords(practice, fact.items)} found${atPlace(practice, fact)}`,
  fault: (practice, { item, sort }) => `${itemWords(practice, item)}: ${FAULTS[sort]}`,
  repaired: (practice, { items }) => `${itemsWords(practice, items)} repaired`,
  doubted: (practice, { item, reason }) => `${itemWords(practice, item)} in doubt${because(reason)}`,
  'doubt-settled': (practice, { item }) => `${itemWords(practice, item)}: doubt settled`,
  'incident-opened': (practice, { items }) => `incident opened: ${itemsWords(practice, items)}`,
  'incident-answered': (_, { reached, tip }) =>
    `incident: ${tip === undefined ? 'it' : `tip ${tip}`} ${reached ? 'reached a patient' : 'did not reach a patient'}`,
  'incident-closed': (_, { reason }) => `incident closed${because(reason)}`,
} satisfies FactWords;
