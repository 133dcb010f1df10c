import { z } from 'zod';
import { item, localDate } from './slots.ts';

const maybe = z.exactOptional;
const site = maybe(z.string());

export const howTopic = z.enum([
  'calibrate',
  'warm-up',
  'clean',
  'move',
  'set-up',
  'fogging',
  'load',
  'tips',
]);

/** Every kind of ask: somebody wants to know. */
export const ask = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('tips'), filter: z.enum(['out', 'sterile', 'used', 'all']), site }),
  z.strictObject({ kind: z.literal('where'), item }),
  z.strictObject({ kind: z.literal('ready'), item: maybe(item) }),
  z.strictObject({ kind: z.literal('due'), site, day: maybe(localDate) }),
  z.strictObject({
    kind: z.literal('last'),
    of: z.enum(['calibration', 'scan', 'wipe', 'move', 'temperature']),
    item: maybe(item),
    site,
  }),
  z.strictObject({ kind: z.literal('history'), item }),
  z.strictObject({ kind: z.literal('supply'), site, day: maybe(localDate) }),
  z.strictObject({ kind: z.literal('load'), load: z.string() }),
  z.strictObject({ kind: z.literal('trace'), load: maybe(z.string()), item: maybe(item) }),
  z.strictObject({ kind: z.literal('record'), from: localDate, to: localDate, site }),
  z.strictObject({ kind: z.literal('how'), topic: howTopic }),
  /** The incidents of a stretch of time, as an inspector asks for them ("incidents this year"); local dates. */
  z.strictObject({ kind: z.literal('incidents'), from: localDate, to: localDate, site }),
  /** Who has been shown how ("who can calibrate?"): answered from the `shown` facts. */
  z.strictObject({ kind: z.literal('who-can'), topic: howTopic }),
  /** "why?" in reply: which words and which rule. */
  z.strictObject({ kind: z.literal('why') }),
  /** Which words the practice has taught. */
  z.strictObject({ kind: z.literal('words') }),
  /** Which rules are in force, and which of them this practice has changed. */
  z.strictObject({ kind: z.literal('rules') }),
  z.strictObject({ kind: z.literal('help') }),
]);

export type Ask = z.infer<typeof ask>;
export type AskOf<K extends Ask['kind']> = Extract<Ask, { kind: K }>;
export type HowTopic = z.infer<typeof howTopic>;
