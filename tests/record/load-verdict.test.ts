import { describe, expect, test } from 'vitest';
import { ferngate, OTHER, STAFF, twoAutoclaves } from './ferngate.ts';
import { type Given, given, sterile, type Told } from './given.ts';

const started = (more: object = {}): Told => ({ kind: 'load-started', load: '118', tips: ['4'], ...more });
const finished = (outcome: 'passed' | 'failed', more: object = {}): Told => ({
  kind: 'load-finished',
  load: '118',
  outcome,
  ...more,
});
const passed = (more: object = {}) => finished('passed', more);
/** 131 °C stands in no row of the table: for the lead. */
const odd = { celsius: 131, minutes: 9 };
const good = { celsius: 134, minutes: 3.5 };
const begun = (record = given()) => record.note('09:00', started());
const waiting = () => begun().note('09:40', passed(odd));
const letGo: Told = { kind: 'released', items: ['load:118'] };
const status = (record: Given) => [record.load('118').status, record.tip('4').state];

describe('why a load failed', () => {
  test.each<['said' | 'short' | 'indicator', Told, number]>([
    ['said', finished('failed'), 0],
    ['short', passed({ celsius: 134, minutes: 2 }), 1],
    ['indicator', passed({ ...good, indicator: 'failed' }), 1],
  ])('given it is %s, then so kept, and said apart only where it was called passed', (why, told, counted) => {
    const record = begun().note('09:40', told);
    expect(record.load('118')).toMatchObject({ status: 'failed', failedWhy: why });
    expect(record.found('load-failed')).toMatchObject([
      { items: ['load:118'], load: '118@2026-11-23', tips: ['4'], corrected: false },
    ]);
    expect(record.found('load-counts-failed').map((each) => [each.load, each.why])).toEqual(
      counted === 0 ? [] : [['118@2026-11-23', why]],
    );
  });

  test('given it is told twice, by others too, then the failure is found once', () => {
    const record = begun().note('09:40', finished('failed')).by(OTHER, '09:50', finished('failed'));
    expect(record.found('load-failed')).toHaveLength(1);
    expect(record.found('refused')).toEqual([]);
    expect(record.load('118').results).toHaveLength(2);
  });

  test('given it passes, then nothing is kept as a reason', () => {
    expect(begun().note('09:40', passed(good)).load('118').failedWhy).toBeNull();
  });
});

describe('what a later result does not say stands', () => {
  test('given figures for the lead, then "passed" alone is still for the lead', () => {
    const record = waiting().note('09:50', passed());
    expect(record.load('118').results.at(-1)).toMatchObject(odd);
    expect(status(record)).toEqual(['needs-release', 'in-load']);
  });

  test.each([
    [true, false, 'sterile'],
    [false, true, 'used'],
  ])('given dry is %s, then wet stays %s', (dry, wet, tip) => {
    const record = begun()
      .note('09:40', passed({ ...good, dry }))
      .note('09:45', passed());
    expect(record.load('118').results.map((each) => each.dry)).toEqual([dry, dry]);
    expect(record.load('118').wet).toBe(wet);
    expect(record.tip('4').state).toBe(tip);
    expect(record.found('load-wet').map((each) => [each.mark.entry, each.items, each.tips])).toEqual(
      wet ? [['2.0', ['load:118'], ['4']]] : [],
    );
  });

  test('given it came out wet, then told dry it is not wet, and the pass counts', () => {
    const record = begun()
      .note('09:40', passed({ ...good, dry: false }))
      .note('09:45', passed({ dry: true }));
    expect(record.load('118').wet).toBe(false);
    expect(record.load('118').results.at(-1)?.dry).toBe(true);
  });

  test('given many results, then the latest eight are kept', () => {
    const record = begun();
    for (let minute = 10; minute < 20; minute += 1) record.note(`09:${minute}`, passed(good));
    expect(record.load('118').results.map(({ mark }) => mark.entry)).toEqual(
      [4, 5, 6, 7, 8, 9, 10, 11].map((turn) => `${turn}.0`),
    );
  });
});

describe('no published value', () => {
  test('given it had passed by other figures, then its tips are sterile no more, and the lead is asked', () => {
    const record = begun().note('09:40', passed(good)).note('09:45', passed(odd));
    expect(status(record)).toEqual(['needs-release', 'in-load']);
    expect(record.tip('4').sterile).toBeNull();
    expect(record.found('load-no-value')).toMatchObject([
      { items: ['load:118'], load: '118@2026-11-23', celsius: 131 },
    ]);
  });

  test('given it waits, then a colleague may say that it failed, or the same again', () => {
    const same = waiting().by(OTHER, '10:30', passed(odd));
    expect([status(same), same.found('refused')]).toEqual([['needs-release', 'in-load'], []]);
    const failed = waiting().by(OTHER, '10:30', finished('failed'));
    expect([status(failed), failed.found('refused')]).toEqual([['failed', 'used'], []]);
  });
});

describe('released whole by the lead, and told again', () => {
  const released = () => waiting().lead('10:00', letGo);

  test('given the same figures, then it stays released', () => {
    const record = released().note('10:10', passed(odd));
    expect(status(record)).toEqual(['passed', 'sterile']);
    expect(record.load('118')).toMatchObject({ failedWhy: null, released: { tips: ['4'] } });
    expect(record.found('load-no-value')).toHaveLength(1);
  });

  test.each([
    ['another temperature', { celsius: 130, minutes: 9 }],
    ['another time', { celsius: 131, minutes: 8 }],
  ])('given %s, then it is for the lead again', (_what, figures) => {
    expect(released().note('10:10', passed(figures)).load('118').status).toBe('needs-release');
  });

  test.each<[string, Told]>([
    ['it failed', finished('failed', odd)],
    ['its indicator failed', passed({ ...odd, indicator: 'failed' })],
  ])('given %s at the same figures, then it failed and nothing is released', (_what, told) => {
    const record = released().note('10:10', told);
    expect(status(record)).toEqual(['failed', 'used']);
    expect(record.load('118').released).toBeNull();
  });

  test('given it is doubted since, then the same figures are for the lead again', () => {
    const record = released().note('10:05', { kind: 'doubted', item: 'load:118' }).note('10:10', passed(odd));
    expect(record.load('118').status).toBe('needs-release');
  });

  test('given it never was released, then a table named later judges it anew', () => {
    const none = ferngate({ rules: { practice: { loadTable: 'none' }, bySite: {}, byScanner: {} } });
    const record = begun(given(none)).note('09:40', passed(odd));
    expect(status(record)).toEqual(['passed', 'sterile']);
    record.lead('09:45', { kind: 'setting', name: 'loadTable', value: 'uk' }).note('09:50', passed(odd));
    expect(status(record)).toEqual(['needs-release', 'in-load']);
  });
});

describe('who may make it good after all', () => {
  const failed = () => begun().note('09:40', finished('failed'));

  test('its author, ten minutes later to the minute', () => {
    expect(status(failed().note('09:50', passed(good)))).toEqual(['passed', 'sterile']);
  });

  test('the lead, at any time', () => {
    expect(status(failed().lead('15:00', passed(good)))).toEqual(['passed', 'sterile']);
  });

  test.each<[string, () => Given, object]>([
    ['a failed one called passed', failed, good],
    ['a failed one called one for the lead', failed, odd],
    ['one for the lead given figures that pass', waiting, good],
    [
      'one for the lead, doubted, given figures that pass',
      () => waiting().note('09:50', { kind: 'doubted', item: 'load:118' }),
      good,
    ],
  ])('not a colleague: %s', (_what, record, figures) => {
    const before = record();
    const stood = status(before);
    expect(status(before.by(OTHER, '10:30', passed(figures)))).toEqual(stood);
    expect(before.found('refused')).toMatchObject([
      {
        items: ['load:118'],
        what: 'load-correction',
        item: 'load:118',
        why: 'not-allowed',
      },
    ]);
  });

  test('not its author from a device that its owner has not signed', () => {
    const record = failed().typed(STAFF, { device: 'unsigned', power: 0 }, '09:45', passed(good));
    expect(status(record)).toEqual(['failed', 'used']);
    expect(record.found('refused')).toMatchObject([{ what: 'load-correction', why: 'not-signed' }]);
  });

  test('given it was open when it was doubted, then anyone’s result settles it', () => {
    const record = begun()
      .note('09:30', { kind: 'doubted', item: 'load:118' })
      .by(OTHER, '09:40', passed(good));
    expect(status(record)).toEqual(['passed', 'sterile']);
    expect(record.load('118')).toMatchObject({ doubt: null, beforeDoubt: null });
  });
});

describe('its autoclave', () => {
  const refs = (record: Given) => record.state.loadsByNumber.get('118')?.map(({ autoclave }) => autoclave);

  test('given it was said at the start, then a result that does not say it leaves it', () => {
    const record = given(twoAutoclaves())
      .note('09:00', started({ autoclave: 'big' }))
      .note('09:40', passed());
    expect([record.load('118').autoclave, refs(record)]).toEqual(['big', ['big']]);
  });

  test('given the result alone says it, then the load is found by it from there on', () => {
    const record = given(twoAutoclaves())
      .note('09:00', started())
      .note('09:40', passed({ autoclave: 'big' }));
    expect([record.load('118').autoclave, refs(record)]).toEqual(['big', ['big']]);
  });

  test('given nobody ever says it, then none is kept', () => {
    expect(begun().note('09:40', passed()).load('118').autoclave).toBeNull();
  });

  test('given the load is named by its key, then another autoclave in the result changes nothing', () => {
    const record = given(twoAutoclaves()).note('09:00', started({ autoclave: 'big' }));
    record.note('09:40', { ...passed({ autoclave: 'small' }), load: 'big/118@2026-11-23' } as Told);
    expect(record.load('118').autoclave).toBe('big');
  });

  test('given an empty cycle after a repair is told twice, then it clears once', () => {
    const record = given()
      .note('08:00', { kind: 'spore-test', outcome: 'failed' })
      .note('08:30', { kind: 'repaired', items: ['autoclave'] })
      .note('09:00', started({ tips: [] }))
      .note('09:40', passed(good))
      .note('09:41', passed(good));
    expect(record.state.autoclaves.get('')?.clearCycles).toBe(1);
  });
});

describe('the count of cycles', () => {
  const cycles = (limit: number | null) =>
    given(ferngate({ tips: [{ id: '4', home: 'quay', cycles: limit, cyclesSoFar: 0 }] }));

  test.each([
    [3, [{ items: ['tip:4'], tip: '4', cycles: 1, limit: 3 }]],
    [4, []],
    [null, []],
  ])('given a limit of %s, then one cycle is near it: %j', (limit, expected) => {
    const record = sterile(cycles(limit), ['4']);
    expect(record.tip('4').cycles).toBe(1);
    expect(record.found('near-limit')).toHaveLength(expected.length);
    expect(record.found('near-limit')).toMatchObject(expected);
  });

  test('given it was used before its load, then after it no use stands against it', () => {
    const record = sterile(given().note('07:00', { kind: 'used', tips: ['4'] }), ['4']);
    expect(record.tip('4')).toMatchObject({ usedSinceFitted: false, needs: [], state: 'sterile' });
  });
});
