import { describe, expect, test } from 'vitest';
import { ferngate, OTHER, STAFF } from './ferngate.ts';
import { type Given, given, sterile, type Told } from './given.ts';

type Items = Extract<Told, { kind: 'released' }>['items'];
const released = (...items: Items): Told => ({ kind: 'released', items });
const held = (...items: Items): Told => ({ kind: 'held', items });
const started = (load: string, tips: string[]): Told => ({ kind: 'load-started', load, tips });
const passed = (load: string, more: object = {}): Told => ({
  kind: 'load-finished',
  load,
  outcome: 'passed',
  ...more,
});
/** Tips 4, 5 and 6 in a load at a temperature with no published value. */
const waiting = () =>
  given()
    .note('09:00', started('118', ['4', '5', '6']))
    .note('09:40', passed('118', { celsius: 131, minutes: 9 }));
const states = (record: Given, ...ids: string[]) => ids.map((id) => record.tip(id).state);
const refusals = (record: Given) => record.found('refused').map(({ what, items, why }) => [what, items, why]);

describe('a load waits for the lead', () => {
  test('given tips are named with it, then those alone are released', () => {
    const record = waiting().lead('10:00', released('load:118', 'tip:4', 'tip:5'));
    expect(states(record, '4', '5', '6')).toEqual(['sterile', 'sterile', 'in-load']);
    expect(record.load('118')).toMatchObject({ status: 'needs-release', released: { tips: ['4', '5'] } });
    expect(record.found('refused')).toEqual([]);
    expect(record.found('unknown-item')).toEqual([]);
  });

  test('given a tip is named alone, then it is released, and the rest after it', () => {
    const record = waiting().lead('10:00', released('tip:4'));
    expect(states(record, '4', '5')).toEqual(['sterile', 'in-load']);
    expect(record.found('refused')).toEqual([]);
    record.lead('10:10', released('load:118'));
    expect(states(record, '4', '5', '6')).toEqual(['sterile', 'sterile', 'sterile']);
    expect(record.load('118').released?.tips).toEqual(['4', '5', '6']);
  });

  test('given the load alone is named, then it is released whole and nothing is unknown', () => {
    const record = waiting().lead('10:00', released('load:118'));
    expect(states(record, '4', '5', '6')).toEqual(['sterile', 'sterile', 'sterile']);
    expect(record.found('unknown-item')).toEqual([]);
  });

  test.each<[string, Items, Items]>([
    ['the load', ['load:118'], ['load:118']],
    ['a tip', ['tip:4'], ['load:118', 'tip:4']],
    ['the load with two tips', ['load:118', 'tip:4', 'tip:5'], ['load:118', 'tip:4', 'tip:5']],
  ])('given a colleague names %s, then all that was named is refused together', (_what, items, told) => {
    const record = waiting().by(OTHER, '10:00', released(...items));
    expect(states(record, '4', '5', '6')).toEqual(['in-load', 'in-load', 'in-load']);
    expect(refusals(record)).toEqual([['load-release', told, 'not-allowed']]);
  });

  test.each<[string, Told]>([
    ['held', held('tip:4')],
    ['in doubt', { kind: 'doubted', item: 'tip:4' }],
  ])(
    'given one of its tips is %s itself, then its name ends that and not the wait for its load',
    (_how, told) => {
      const record = waiting().note('09:50', told).lead('10:00', released('tip:4'));
      expect(record.tip('4')).toMatchObject({ state: 'in-load', holds: [], doubt: null, sterile: null });
      expect(record.load('118').released).toBeNull();
      expect(record.found('refused')).toEqual([]);
    },
  );

  test('given it is doubted after it passed, then the lead lets it stand by a tip’s name', () => {
    const record = sterile(given(), ['4', '5']).note('09:00', { kind: 'doubted', item: 'load:118' });
    expect(states(record.lead('09:10', released('tip:4')), '4', '5')).toEqual(['sterile', 'in-load']);
  });
});

describe('nothing that the lead could let go', () => {
  test('given a load that passed is named with a tip of it, then both are named in what is refused', () => {
    const record = sterile(given(), ['4']).lead('09:00', released('load:118', 'tip:4'));
    expect(refusals(record)).toEqual([['load-release', ['load:118', 'tip:4'], 'nothing-to-release']]);
  });

  test('given two loads are named with a tip of one, then that tip goes with its own', () => {
    const record = sterile(sterile(given(), ['4']), ['5'], '7', '08:05', '08:35');
    record.lead('09:00', released('load:118', 'load:7', 'tip:4'));
    expect(refusals(record)).toEqual([
      ['load-release', ['load:7'], 'nothing-to-release'],
      ['load-release', ['load:118', 'tip:4'], 'nothing-to-release'],
    ]);
  });

  test('given a tip of another load is named with it, then that tip’s own hold is meant', () => {
    const record = sterile(waiting(), ['1'], '7', '10:00', '10:30');
    record.lead('11:00', released('load:118', 'tip:1'));
    expect(states(record, '4', '1')).toEqual(['sterile', 'sterile']);
    expect(refusals(record)).toEqual([['release', ['tip:1'], 'nothing-to-release']]);
  });

  test('given its load is still open, then a tip has nothing to be released of', () => {
    const record = given()
      .note('09:00', started('118', ['4']))
      .lead('09:10', released('tip:4'));
    expect(states(record, '4')).toEqual(['in-load']);
    expect(refusals(record)).toEqual([['release', ['tip:4'], 'nothing-to-release']]);
  });

  test('given it has left its load, then a tip has nothing to be released of', () => {
    const record = waiting()
      .note('09:50', { kind: 'washed', tips: ['4'] })
      .lead('10:00', released('tip:4'));
    expect(states(record, '4')).toEqual(['washed']);
    expect(refusals(record)).toEqual([['release', ['tip:4'], 'nothing-to-release']]);
  });

  test.each<Items[number]>(['load:999', 'tip:99', 'scanner:Z', 'autoclave:nope'])(
    'given %s is not known, then so said, whether released or held',
    (item) => {
      for (const told of [released(item), held(item)])
        expect(given().lead('09:00', told).found('unknown-item')).toMatchObject([{ items: [item], item }]);
    },
  );

  test.each<Items[number]>(['tip:4', 'scanner:A', 'autoclave'])(
    'given %s is neither held nor in doubt, then so said',
    (item) => {
      const record = given().lead('09:00', released(item));
      expect(refusals(record)).toEqual([['release', [item], 'nothing-to-release']]);
      expect(record.found('unknown-item')).toEqual([]);
      expect(record.scanner('A').available).toBeNull();
    },
  );
});

describe('a hold', () => {
  test('given a load is said to be held, then it is in doubt and its tips are not sterile', () => {
    const record = sterile(given(), ['4']).note('09:00', held('load:118'));
    expect([record.load('118').status, record.tip('4').state]).toEqual(['doubted', 'in-load']);
    expect(record.found('unknown-item')).toEqual([]);
  });

  test('given a calibration tip is, then its scanner is, until that is released', () => {
    const record = given().note('09:00', held('calibration-tip:A'));
    expect(record.scanner('A').holds).toMatchObject([{ sort: 'said', ends: 'placer' }]);
    expect(record.note('09:10', released('calibration-tip:A')).scanner('A').holds).toEqual([]);
  });

  test('given half of a site’s tips are, then that tells its count', () => {
    expect(
      given()
        .note('09:00', held('tip:1', 'tip:2', 'tip:3'))
        .state.sites.get('quay')?.stocktake,
    ).not.toBeNull();
    expect(given().note('09:00', held('tip:1', 'tip:2')).state.sites.get('quay')?.stocktake).toBeNull();
  });

  test('given the program placed it after a positive spore test, then not even the lead releases the autoclave', () => {
    const record = given()
      .note('08:00', { kind: 'spore-test', outcome: 'failed' })
      .lead('09:00', released('autoclave'));
    expect(record.state.autoclaves.get('')?.holds).toMatchObject([{ ends: 'clear-test' }]);
    expect(refusals(record)).toEqual([['release', ['autoclave'], 'needs-clear-test']]);
  });

  test.each<Items[number]>(['tip:4', 'scanner:A'])(
    'given two people hold %s, then each releases their own',
    (item) => {
      const record = given()
        .note('09:00', held(item))
        .by(OTHER, '09:10', held(item))
        .note('09:15', held(item));
      const holds = () =>
        [...record.tip('4').holds, ...record.scanner('A').holds].map(({ mark }) => mark.from);
      expect(holds()).toEqual([OTHER, STAFF]);
      record.note('09:20', released(item));
      expect(holds()).toEqual([OTHER]);
      expect(refusals(record)).toEqual([['release', [item], 'not-allowed']]);
      expect(record.scanner('A').available).toBeNull();
      record.by(OTHER, '09:30', released(item));
      expect(holds()).toEqual([]);
    },
  );

  test('given the program placed it, then the program’s next word does not count as its placer’s', () => {
    const record = given().by('', '09:00', held('tip:4')).by('', '09:10', released('tip:4'));
    expect(states(record, '4')).toEqual(['held']);
  });

  test('given a scanner is released of it, then it may be used from there; of one that stays, not', () => {
    const free = given().note('09:00', held('scanner:A')).note('09:10', released('scanner:A'));
    expect(free.scanner('A').available?.entry).toBe('2.0');
    const dropped = given()
      .note('09:00', { kind: 'fault', item: 'scanner:A', sort: 'dropped' })
      .note('09:05', held('scanner:A'))
      .lead('09:10', released('scanner:A'));
    expect(dropped.scanner('A').holds).toMatchObject([{ sort: 'dropped' }]);
    expect(dropped.scanner('A').available).toBeNull();
  });

  test('given a tip and a scanner of one name, then each has its own', () => {
    const tip = { home: 'quay', cycles: null, cyclesSoFar: 0 };
    const practice = ferngate({ tips: ['A', 'B'].map((id) => ({ id, ...tip })) });
    const record = given(practice).note('09:00', held('scanner:A', 'scanner:B'));
    expect(record.state.sites.get('quay')?.stocktake).toBeNull();
    expect(states(record, 'A')).toEqual(['unknown']);
    record.note('09:05', held('tip:A')).note('09:10', released('tip:A'));
    expect(record.scanner('A')).toMatchObject({ available: null, holds: [{ sort: 'said' }] });
    const load = given(practice)
      .note('09:00', started('118', ['A']))
      .note('09:40', passed('118', { celsius: 131, minutes: 9 }))
      .note('09:45', held('scanner:A'))
      .lead('10:00', released('scanner:A'));
    expect([load.tip('A').state, load.scanner('A').holds]).toEqual(['in-load', []]);
  });
});

describe('a doubt of a tip or scanner is released', () => {
  const things: [Items[number], (record: Given) => { readonly doubt: object | null }][] = [
    ['tip:4', (record) => record.tip('4')],
    ['scanner:A', (record) => record.scanner('A')],
  ];
  const doubted = (item: Items[number]) => given().note('09:00', { kind: 'doubted', item });

  test.each(things)('%s: by who had it, or the lead', (item, of) => {
    const own = doubted(item).note('09:10', released(item));
    const lead = doubted(item).lead('09:10', released(item));
    for (const record of [own, lead]) {
      expect(of(record).doubt).toBeNull();
      expect(record.found('refused')).toEqual([]);
      expect(record.scanner('A').available).toBeNull();
    }
  });

  test('given its calibration tip is released, then the scanner’s doubt is not', () => {
    const record = doubted('scanner:A').lead('09:10', released('calibration-tip:A'));
    expect(record.scanner('A').doubt).not.toBeNull();
    expect(refusals(record)).toEqual([['release', ['calibration-tip:A'], 'nothing-to-release']]);
  });

  test.each(things)('%s: not by a colleague', (item, of) => {
    const record = doubted(item).by(OTHER, '09:10', released(item));
    expect(of(record).doubt).not.toBeNull();
    expect(record.found('refused')).toHaveLength(1);
  });
});
