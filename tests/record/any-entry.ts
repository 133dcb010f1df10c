import fc from 'fast-check';
import type { Fact } from '../../core/reading/fact.ts';
import type { Decision } from '../../core/record/decision.ts';
import type { Entry, Said } from '../../core/record/entry.ts';
import { makeEntry } from '../../core/record/make-entry.ts';
import { MINUTE, toIso } from '../../core/time/instant.ts';
import { LEAD, NORTH_ROOM, OTHER, QUAY_ROOM, STAFF } from './ferngate.ts';
import { at, type Told } from './given.ts';

const tip = fc.constantFrom('1', '2', '3');
const tips = fc.uniqueArray(tip, { minLength: 1, maxLength: 3 });
const scanner = fc.constantFrom('A', 'B');
const site = fc.constantFrom('quay', 'north');
const load = fc.constantFrom('118', '119');
const outcome = fc.constantFrom('passed' as const, 'failed' as const);
const mostlyPassed = fc.oneof(
  { weight: 3, arbitrary: fc.constant('passed' as const) },
  { weight: 1, arbitrary: outcome },
);
const item = fc.oneof(
  tip.map((id) => `tip:${id}`),
  scanner.map((id) => `scanner:${id}`),
  load.map((id) => `load:${id}`),
  fc.constantFrom('calibration-tip:A', 'autoclave'),
);
const same = fc.option(fc.constant({ samePatient: true } as const), { nil: {} });
const maybeTip = fc.option(
  tip.map((id) => ({ tip: id })),
  { nil: {} },
);

function list(kind: 'used' | 'removed' | 'washed' | 'bagged' | 'sent' | 'sterile'): fc.Arbitrary<Told> {
  return tips.map((ids) => ({ kind, tips: ids }));
}

const finished: fc.Arbitrary<Told> = fc
  .tuple(
    load,
    fc.oneof({ weight: 3, arbitrary: fc.constant('passed' as const) }, { weight: 1, arbitrary: outcome }),
    fc.constantFrom(
      {},
      {},
      { celsius: 134, minutes: 3.5 },
      { celsius: 134, minutes: 2 },
      { celsius: 131, minutes: 9 },
    ),
    fc.constantFrom({}, {}, {}, { indicator: 'failed' as const }, { dry: false }),
  )
  .map(([number, result, figures, more]) => ({
    kind: 'load-finished',
    load: number,
    outcome: result,
    ...figures,
    ...more,
  }));

const told: fc.Arbitrary<Told> = fc.oneof(
  {
    weight: 3,
    arbitrary: fc
      .tuple(tip, scanner, same)
      .map(([id, on, s]): Told => ({ kind: 'fitted', tip: id, scanner: on, ...s })),
  },
  {
    weight: 2,
    arbitrary: fc
      .tuple(scanner, maybeTip, same)
      .map(([on, t, s]): Told => ({ kind: 'scan-started', scanner: on, ...t, ...s })),
  },
  {
    weight: 2,
    arbitrary: fc
      .tuple(scanner, maybeTip)
      .map(([on, t]): Told => ({ kind: 'scan-finished', scanner: on, ...t })),
  },
  {
    weight: 4,
    arbitrary: fc
      .tuple(load, tips)
      .map(([number, ids]): Told => ({ kind: 'load-started', load: number, tips: ids })),
  },
  { weight: 6, arbitrary: finished },
  list('used'),
  list('removed'),
  list('washed'),
  list('bagged'),
  { weight: 2, arbitrary: list('sent') },
  { weight: 3, arbitrary: list('sterile') },
  fc.tuple(tips, outcome).map(([ids, result]): Told => ({ kind: 'inspected', tips: ids, outcome: result })),
  {
    weight: 4,
    arbitrary: fc
      .tuple(scanner, mostlyPassed)
      .map(([id, result]): Told => ({ kind: 'calibrated', scanner: id, outcome: result })),
  },
  fc.tuple(item, site).map(([what, where]): Told => ({ kind: 'moved', items: [what], site: where })),
  item.map((what): Told => ({ kind: 'departed', items: [what] })),
  item.map((what): Told => ({ kind: 'held', items: [what] })),
  item.map((what): Told => ({ kind: 'released', items: [what] })),
  item.map((what): Told => ({ kind: 'missing', items: [what] })),
  item.map((what): Told => ({ kind: 'found', items: [what] })),
  item.map((what): Told => ({ kind: 'doubted', item: what })),
  load.map((id): Told => ({ kind: 'doubt-settled', item: `load:${id}` })),
  load.map((id): Told => ({ kind: 'load-released', load: id })),
  fc
    .tuple(
      item,
      fc.constantFrom(
        'dropped' as const,
        'pack' as const,
        'indicator' as const,
        'fogging' as const,
        'mirror' as const,
      ),
    )
    .map(([what, sort]): Told => ({ kind: 'fault', item: what, sort })),
  scanner.map((id): Told => ({ kind: 'wiped', scanner: id, part: 'all' })),
  scanner.map((id): Told => ({ kind: 'covered', scanner: id })),
  fc
    .tuple(site, fc.integer({ min: 150, max: 260 }))
    .map(([where, tenth]): Told => ({ kind: 'temperature', celsius: tenth / 10, site: where })),
  fc
    .constantFrom('passed' as const, 'failed' as const, 'running' as const)
    .map((result): Told => ({ kind: 'spore-test', outcome: result })),
  outcome.map((result): Told => ({ kind: 'autoclave-test', sort: 'control', outcome: result })),
  fc.constant<Told>({ kind: 'repaired', items: ['scanner:A', 'autoclave'] }),
  fc.constant<Told>({ kind: 'booked', count: 2, day: '2026-11-24', times: ['09:00'] }),
  fc.constant<Told>({ kind: 'cancelled', count: 1, day: '2026-11-24' }),
  fc.constant<Told>({ kind: 'added', tips: ['7'] }),
  fc.constant<Told>({ kind: 'setting', name: 'sporeRecall', value: 'first' }),
  fc.constant<Told>({ kind: 'rule-changed', name: 'wipeAfterMinutes', from: 10, to: 15 }),
);

interface Drawn {
  readonly facts: readonly Told[];
  /** Minutes since the first of all. */
  readonly minutes: number;
  readonly from: string;
}

const note: fc.Arbitrary<Drawn> = fc.record({
  facts: fc.array(told, { minLength: 1, maxLength: 3 }),
  minutes: fc.oneof(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 0, max: 5_000 })),
  from: fc.constantFrom(LEAD, STAFF, OTHER),
});

/** Notes of one to three facts each, over some days, by three people, with what the program decided among them. */
export function anyEntries(maxLength: number): fc.Arbitrary<Entry[]> {
  return fc.array(note, { minLength: 1, maxLength }).map((notes) => notes.flatMap(entriesOf));
}

function entriesOf({ facts, minutes, from }: Drawn, turn: number): Entry[] {
  const when = at('08:00') + minutes * MINUTE;
  const room = from === OTHER ? NORTH_ROOM : QUAY_ROOM;
  return facts.map((fact, index) => {
    const what: Said = { when: toIso(when), ...fact } as Fact | Decision;
    return makeEntry({ what, turn, index, noted: when, by: from, from, room });
  });
}
