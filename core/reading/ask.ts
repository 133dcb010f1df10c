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

/** Tests that are noted of an autoclave. */
export const testSort = z.enum(['spore', 'penetration', 'control', 'leak']);

/** Every kind of ask: somebody wants to know. */
export const ask = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('tips'), filter: z.enum(['out', 'sterile', 'used', 'all']), site }),
  /** Where something is; with no item every scanner, or what is at the site (and in the room) named. */
  z.strictObject({ kind: z.literal('where'), item: maybe(item), site, room: maybe(z.string()) }),
  z.strictObject({ kind: z.literal('ready'), item: maybe(item), site }),
  /** What is due; with `all` how everything stands, as the day's brief tells it ("give me the rundown"). */
  z.strictObject({ kind: z.literal('due'), site, day: maybe(localDate), all: maybe(z.literal(true)) }),
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
  /** The record of a stretch of days; with `person` what that person noted or did. */
  z.strictObject({
    kind: z.literal('record'),
    from: localDate,
    to: localDate,
    site,
    person: maybe(z.string()),
  }),
  z.strictObject({ kind: z.literal('how'), topic: howTopic }),
  /** The incidents of a stretch of time, as an inspector asks for them ("incidents this year"); local dates, all where none. */
  z.strictObject({
    kind: z.literal('incidents'),
    from: maybe(localDate),
    to: maybe(localDate),
    site,
    /** Only those that nobody has closed. */
    open: maybe(z.literal(true)),
  }),
  /** Who has been shown how ("who can calibrate?"), or what one person was shown: answered from the `shown` facts. */
  z.strictObject({ kind: z.literal('who-can'), topic: maybe(howTopic), person: maybe(z.string()) }),
  /** Scans booked for a day ("what's booked tomorrow?"); today where none is said. */
  z.strictObject({ kind: z.literal('bookings'), site, day: maybe(localDate) }),
  /** Tests of the autoclaves, last and next ("when's the spore test due?"); every sort that is practised where none is said. */
  z.strictObject({ kind: z.literal('tests'), sort: maybe(testSort), autoclave: maybe(z.string()), site }),
  /**
   * Loads with no result yet ("what's in the autoclave?"), those that failed in a stretch of days, or all of it; local
   * dates, all that is at hand where none is said.
   */
  z.strictObject({
    kind: z.literal('loads'),
    which: z.enum(['open', 'failed', 'all']),
    autoclave: maybe(z.string()),
    from: maybe(localDate),
    to: maybe(localDate),
    site,
  }),
  /** Cycles that tips have done and have left ("which tips are nearly worn out?"). */
  z.strictObject({ kind: z.literal('wear'), item: maybe(item), site }),
  /** Whether tips are to be ordered, when and how many. */
  z.strictObject({ kind: z.literal('order') }),
  /** What is on hold or waits for a release, and what is missing; both where neither is said. */
  z.strictObject({ kind: z.literal('out-of-use'), which: maybe(z.enum(['held', 'missing'])), site }),
  /** Opening hours of a day; with none said today's, or the next open day's. */
  z.strictObject({ kind: z.literal('hours'), site, day: maybe(localDate) }),
  /** Whether the cover is on ("is the cover on green?"); every scanner where none is named. */
  z.strictObject({ kind: z.literal('cover'), item: maybe(item), site }),
  /** Who may release what is held, and close an incident. */
  z.strictObject({ kind: z.literal('who-may') }),
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
