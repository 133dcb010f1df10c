import { describe, expect, test } from 'vitest';
import { ferngate, twoAutoclaves } from './ferngate.ts';
import { type Given, given, type Told } from './given.ts';

const spore = (outcome: 'passed' | 'failed' | 'running', more: object = {}): Told => ({
  kind: 'spore-test',
  outcome,
  ...more,
});
const tested = (sort: 'penetration' | 'control' | 'leak', outcome: 'passed' | 'failed' = 'passed'): Told => ({
  kind: 'autoclave-test',
  sort,
  outcome,
});
const good = { celsius: 134, minutes: 3.5, indicator: 'passed' };

function load(
  record: Given,
  number: string,
  tips: string[],
  from: string,
  to: string,
  more: object = good,
): Given {
  return record
    .note(from, { kind: 'load-started', load: number, tips })
    .note(to, { kind: 'load-finished', load: number, outcome: 'passed', ...more });
}

function only(record: Given) {
  const autoclave = record.state.autoclaves.get('');
  if (autoclave === undefined) throw new Error('no autoclave');
  return autoclave;
}

describe('tests', () => {
  test('a failed one holds it, for the lead to release; a load started on it is found', () => {
    const record = given().note('08:00', tested('control', 'failed'));
    expect(only(record).holds).toMatchObject([{ sort: 'test-failed', ends: 'lead' }]);
    record.note('09:00', { kind: 'load-started', load: '1', tips: ['4'] });
    expect(record.found('autoclave-held')).toHaveLength(1);
    expect(only(record.note('09:10', { kind: 'released', items: ['autoclave'] })).holds).toHaveLength(1);
    expect(only(record.lead('09:20', { kind: 'released', items: ['autoclave'] })).holds).toEqual([]);
  });

  test('the first load of a day without the tests that are practised: found once', () => {
    const record = given().note('08:00', tested('control'));
    load(record, '1', ['4'], '09:00', '09:30');
    expect(record.found('untested')).toEqual([]);
    load(record, '2', ['4'], '+1 09:00', '+1 09:30');
    load(record, '3', ['5'], '+1 10:00', '+1 10:30');
    expect(record.found('untested')).toMatchObject([{ sorts: ['control'], load: '2@2026-11-24' }]);
  });

  test('a sort never noted is not practised', () => {
    expect(load(given(), '1', ['4'], '09:00', '09:30').found('untested')).toEqual([]);
  });

  test('several at the site and none named: nothing changes until it is said', () => {
    const record = given(twoAutoclaves()).note('08:00', tested('control', 'failed'));
    expect(record.found('autoclave-unsaid')).toMatchObject([{ choices: ['big', 'small'] }]);
  });
});

describe('spore tests', () => {
  const history = () => {
    const record = given().note('07:00', spore('passed'));
    load(record, '1', ['1'], '09:00', '09:30');
    return load(record, '2', ['2'], '10:00', '10:30', {});
  };

  test('first positive: out of service; loads since the last negative listed; only loads without good checks recalled', () => {
    const record = history().note('+7 09:00', spore('failed'));
    expect(only(record).holds).toMatchObject([{ sort: 'spore-positive' }]);
    expect(record.found('spore-positive')).toMatchObject([
      {
        inRow: 1,
        loads: ['1@2026-11-23', '2@2026-11-23'],
        recalledLoads: ['2@2026-11-23'],
        recalledTips: ['2'],
      },
    ]);
    expect([record.tip('1').state, record.tip('2').state]).toEqual(['sterile', 'used']);
  });

  test.each<[string, object]>([
    ['figures that hold, no indicator', { celsius: 134, minutes: 3.5 }],
    ['an indicator, no figures', { indicator: 'passed' }],
  ])('given only %s was noted of a load, then it is recalled at the first', (_what, checks) => {
    const record = load(given(), '1', ['1'], '09:00', '09:30', checks).note('+7 09:00', spore('failed'));
    expect(record.tip('1')).toMatchObject({ state: 'used', sterile: null });
    expect(record.load('1').recalled?.entry).toBe('3.0');
  });

  test('given a load has no result yet, then it is recalled when it passes without good checks', () => {
    const record = given()
      .note('09:00', { kind: 'load-started', load: '1', tips: ['1'] })
      .note('09:10', spore('failed'));
    expect(record.found('spore-positive')).toMatchObject([{ recalledLoads: [] }]);
    record.note('09:40', { kind: 'load-finished', load: '1', outcome: 'passed' });
    expect([record.load('1').recalled?.entry, record.tip('1').state]).toEqual(['3.0', 'used']);
  });

  test('given an empty load, then there is nothing to recall', () => {
    const record = load(given(), '1', [], '09:00', '09:30', {}).note('+7 09:00', spore('failed'));
    expect(record.found('spore-positive')).toMatchObject([{ loads: ['1@2026-11-23'], recalledLoads: [] }]);
    expect(record.load('1').recalled).toBeNull();
  });

  test('given a load was recalled at the first, then the second names the others alone', () => {
    const record = history().note('+7 09:00', spore('failed')).note('+8 09:00', spore('failed'));
    expect(record.found('spore-positive').map((each) => [each.recalledLoads, each.recalledTips])).toEqual([
      [['2@2026-11-23'], ['2']],
      [['1@2026-11-23'], ['1']],
    ]);
  });

  test('given a tip has been through another load since, then its earlier one does not concern it', () => {
    const record = load(given(), '1', ['1', '2'], '09:00', '09:30', {});
    load(record, '2', ['1'], '10:00', '10:30').note('+7 09:00', spore('failed'));
    expect(record.found('spore-positive')).toMatchObject([
      { recalledLoads: ['1@2026-11-23'], recalledTips: ['2'] },
    ]);
    expect([record.tip('1').state, record.tip('2').state]).toEqual(['sterile', 'used']);
  });

  test('sporeRecall first: all of them', () => {
    const record = given(
      ferngate({ rules: { practice: { loadTable: 'uk', sporeRecall: 'first' }, bySite: {}, byScanner: {} } }),
    );
    record.note('07:00', spore('passed'));
    load(record, '1', ['1'], '09:00', '09:30').note('+7 09:00', spore('failed'));
    expect(record.tip('1').state).toBe('used');
  });

  test('a clear repeat puts it back in service', () => {
    expect(only(history().note('+7 09:00', spore('failed')).note('+8 09:00', spore('passed'))).holds).toEqual(
      [],
    );
  });

  test('a second positive recalls every tip from loads since the last negative', () => {
    const record = history().note('+7 09:00', spore('failed')).note('+8 09:00', spore('failed'));
    expect([record.tip('1').state, record.tip('2').state]).toEqual(['used', 'used']);
    expect(record.tip('1').needs.map((each) => each.why)).toContain('recalled');
  });

  test('the same positive told by two people is one', () => {
    const record = history().note('+7 09:00', spore('failed')).lead('+7 09:20', spore('failed'));
    expect(only(record).positivesInRow).toBe(1);
    expect(record.tip('1').state).toBe('sterile');
  });

  test('then repair and three clear empty cycles, in a row, before it is used', () => {
    const record = history().note('+7 09:00', spore('failed')).note('+8 09:00', spore('failed'));
    load(record, '10', [], '+9 08:00', '+9 08:20');
    expect(only(record).clearCycles).toBe(0);
    record.note('+9 09:00', { kind: 'repaired', items: ['autoclave'] });
    load(record, '11', [], '+9 10:00', '+9 10:20');
    load(record, '12', [], '+9 11:00', '+9 11:20');
    expect(only(record).holds).toHaveLength(1);
    load(record, '13', [], '+9 12:00', '+9 12:20');
    expect(only(record).holds).toEqual([]);
  });

  test('after a first positive only a clear spore test frees it, not empty cycles', () => {
    const record = history()
      .note('+7 09:00', spore('failed'))
      .note('+7 09:30', { kind: 'repaired', items: ['autoclave'] });
    for (const n of ['11', '12', '13']) load(record, n, [], `+7 1${n.slice(1)}:00`, `+7 1${n.slice(1)}:20`);
    expect(only(record).holds).toHaveLength(1);
  });

  test('a load started meanwhile: found; its tips stay usable after a first positive if its checks were good', () => {
    const record = history().note('+7 09:00', spore('failed'));
    load(record, '3', ['3'], '+7 10:00', '+7 10:30');
    load(record, '4', ['4'], '+7 11:00', '+7 11:30', {});
    expect(record.found('autoclave-held')).toHaveLength(2);
    expect([record.tip('3').state, record.tip('4').state]).toEqual(['sterile', 'used']);
  });

  test('dates count from when it was run: a result belongs to the test that is running', () => {
    const record = given().note('08:00', spore('running')).note('+1 08:00', spore('passed'));
    expect(only(record).lastNegative).toMatchObject({ ran: '2026-11-23' });
    const named = given().note('+2 08:00', spore('failed', { ran: '2026-11-23' }));
    expect(only(named).sporeTests).toMatchObject([{ ran: '2026-11-23', outcome: 'failed' }]);
  });

  test('a clear test that was run before the positive one frees nothing', () => {
    const record = history()
      .note('+7 09:00', spore('failed'))
      .note('+8 09:00', spore('passed', { ran: '2026-11-29' }));
    expect(only(record).holds).toHaveLength(1);
  });
});
