import { z } from 'zod';
import { ids, isoInstant, item, localDate, localTime, outcome, tipSet } from './slots.ts';

const maybe = z.exactOptional;

/** What any fact may carry besides its own slots. */
const common = {
  /** When it happened: what the note states, else the note's own instant. */
  when: isoInstant,
  /** Start of the stretch, where the time said is one ("this morning"). */
  earliest: maybe(isoInstant),
  /** Who did it, where the note says so. */
  by: maybe(z.string()),
  samePatient: maybe(z.literal(true)),
};
const place = { site: maybe(z.string()), room: maybe(z.string()) };
/** Tips named, or a set that only the record can tell ("all the used ones bar 3"). */
const tips = { tips: maybe(ids), which: maybe(tipSet), except: maybe(ids) };
const items = z.array(item).min(1);

function kind<K extends string, S extends z.ZodRawShape>(name: K, slots: S) {
  return z.strictObject({ kind: z.literal(name), ...common, ...slots });
}

/** Every kind of fact with its slots: something happened. The one list that reading and record share. */
export const fact = z.discriminatedUnion('kind', [
  kind('moved', { items, site: z.string(), room: maybe(z.string()), ...tipsBesides() }),
  kind('departed', { items, site: maybe(z.string()), ...tipsBesides() }),
  kind('calibrated', { scanner: z.string(), outcome }),
  kind('temperature', { celsius: z.number(), ...place }),
  kind('scan-started', { scanner: z.string(), tip: maybe(z.string()), ...place }),
  kind('scan-finished', { scanner: z.string(), tip: maybe(z.string()), ...place }),
  kind('used', { ...tips, scanner: maybe(z.string()) }),
  kind('inspected', { ...tips, outcome }),
  kind('wiped', { scanner: z.string(), part: z.enum(['all', 'lens', 'base']) }),
  kind('covered', { scanner: z.string() }),
  kind('fitted', { tip: z.string(), scanner: z.string() }),
  kind('removed', { ...tips }),
  kind('washed', { ...tips }),
  kind('bagged', { ...tips }),
  kind('sent', { ...tips }),
  kind('load-started', { load: z.string(), ...tips, autoclave: maybe(z.string()) }),
  kind('load-finished', {
    load: z.string(),
    outcome,
    celsius: maybe(z.number()),
    minutes: maybe(z.number()),
    indicator: maybe(outcome),
    dry: maybe(z.boolean()),
    autoclave: maybe(z.string()),
  }),
  kind('spore-test', {
    outcome: z.enum(['passed', 'failed', 'running']),
    ran: maybe(localDate),
    autoclave: maybe(z.string()),
  }),
  kind('autoclave-test', {
    sort: z.enum(['penetration', 'control', 'leak']),
    outcome,
    autoclave: maybe(z.string()),
  }),
  kind('sterile', { ...tips }),
  kind('held', { items, reason: maybe(z.string()), ...tipsBesides() }),
  kind('released', { items, ...tipsBesides() }),
  kind('retired', { ...tips, reason: maybe(z.string()) }),
  kind('added', { tips: ids }),
  kind('missing', { items, ...place }),
  kind('found', { items, ...place }),
  kind('fault', {
    item,
    sort: z.enum([
      'fogging',
      'dropped',
      'lens',
      'mirror',
      'cable',
      'connection',
      'heating',
      'pack',
      'indicator',
      'other',
    ]),
  }),
  kind('repaired', { items }),
  kind('booked', {
    count: z.int(),
    day: localDate,
    times: maybe(z.array(localTime)),
    site: maybe(z.string()),
  }),
  kind('cancelled', {
    count: maybe(z.int()),
    times: maybe(z.array(localTime)),
    day: localDate,
    site: maybe(z.string()),
  }),
  kind('closed', { site: maybe(z.string()), days: z.array(localDate).min(1) }),
  kind('hours', {
    site: maybe(z.string()),
    day: localDate,
    open: maybe(localTime),
    shut: maybe(localTime),
  }),
  kind('shown', { person: z.string(), topic: z.string() }),
]);

/** A set said beside items ("blue and all the used ones are in the car"): the record adds those it means. */
function tipsBesides() {
  return { which: maybe(tipSet), except: maybe(ids) };
}

export type Fact = z.infer<typeof fact>;
export type FactKind = Fact['kind'];
export type FactOf<K extends FactKind> = Extract<Fact, { kind: K }>;
