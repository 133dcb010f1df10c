import { describe, expect, test } from 'vitest';
import { lookBack, lookBackTip } from '../../core/rules/loads/look-back.ts';
import { ferngate, STAFF, twoAutoclaves } from './ferngate.ts';
import { type Given, given, sterile, type Told } from './given.ts';

const started = (load: string, tips: string[], more: object = {}): Told => ({
  kind: 'load-started',
  load,
  tips,
  ...more,
});
const finished = (load: string, outcome: 'passed' | 'failed', more: object = {}): Told => ({
  kind: 'load-finished',
  load,
  outcome,
  ...more,
});
const scan = (tip: string): Told => ({ kind: 'scan-started', scanner: 'A', tip });

describe('how a load is judged', () => {
  test.each([
    ['uk', { celsius: 134, minutes: 3 }, 'passed', 'sterile'],
    ['uk', { celsius: 134, minutes: 2.9 }, 'failed', 'used'],
    ['uk', { celsius: 131, minutes: 20 }, 'needs-release', 'in-load'],
    ['uk', {}, 'passed', 'sterile'],
    ['none', { celsius: 131, minutes: 1 }, 'passed', 'sterile'],
    ['us-prevacuum', { celsius: 121, minutes: 30 }, 'needs-release', 'in-load'],
    ['uk', { celsius: 134, minutes: 3.5, indicator: 'failed' }, 'failed', 'used'],
    ['uk', { celsius: 134, minutes: 3.5, dry: false }, 'passed', 'used'],
  ])('%s, %j: %s, its tips %s', (loadTable, more, status, tip) => {
    const record = given(ferngate({ rules: { practice: { loadTable }, bySite: {}, byScanner: {} } }));
    record.note('09:00', started('118', ['4'])).note('09:40', finished('118', 'passed', more));
    expect([record.load('118').status, record.tip('4').state]).toEqual([status, tip]);
  });

  test('told wet only after it had passed: its tips are not sterile, said so meanwhile or not', () => {
    const record = given()
      .note('09:00', started('118', ['4', '5']))
      .note('09:40', finished('118', 'passed'))
      .note('09:45', { kind: 'sterile', tips: ['5'] })
      .note('09:50', finished('118', 'passed', { dry: false }));
    expect([record.tip('4').state, record.tip('5').state]).toEqual(['used', 'used']);
    expect(record.note('10:00', { kind: 'sterile', tips: ['4'] }).tip('4').state).toBe('used');
  });

  test('an autoclave’s own validated cycles judge alone', () => {
    const record = given(twoAutoclaves());
    record.note('09:00', started('7', ['4'], { autoclave: 'small' }));
    record.note('09:40', finished('7', 'passed', { celsius: 134, minutes: 3.5, autoclave: 'small' }));
    expect(record.load('7').status).toBe('needs-release');
  });

  test('one cycle a finished load, passed or failed; a repeated result none', () => {
    const record = given()
      .note('09:00', started('118', ['4']))
      .note('09:40', finished('118', 'failed'));
    expect(record.note('09:45', finished('118', 'failed')).tip('4').cycles).toBe(1);
  });
});

describe('who may make it good', () => {
  const waiting = () =>
    given()
      .note('09:00', started('118', ['4', '5']))
      .note('09:40', finished('118', 'passed', { celsius: 131, minutes: 9 }));

  test('no published value: the lead releases the load, or some of its tips', () => {
    const part = waiting().lead('10:00', { kind: 'load-released', load: '118', tips: ['4'] });
    expect([part.tip('4').state, part.tip('5').state]).toEqual(['sterile', 'in-load']);
    const whole = waiting().lead('10:00', { kind: 'released', items: ['load:118'] });
    expect([whole.tip('4').state, whole.tip('5').state, whole.load('118').status]).toEqual([
      'sterile',
      'sterile',
      'passed',
    ]);
  });

  test('others may not', () => {
    const record = waiting().note('10:00', { kind: 'released', items: ['load:118'] });
    expect(record.tip('4').state).toBe('in-load');
    expect(record.found('refused')).toMatchObject([{ what: 'load-release', why: 'not-allowed' }]);
  });

  test('nobody releases a failed one', () => {
    const record = given()
      .note('09:00', started('118', ['4']))
      .note('09:40', finished('118', 'failed'));
    record.lead('10:00', { kind: 'released', items: ['load:118'] });
    expect(record.found('refused')).toMatchObject([{ why: 'load-failed' }]);
    expect(record.tip('4').state).toBe('used');
  });

  test.each([
    ['its author within ten minutes', STAFF, '09:49', 'sterile'],
    ['its author later', STAFF, '09:51', 'used'],
    ['somebody else', '@ann:example.org', '09:45', 'used'],
  ])('failed corrected to passed by %s', (_who, from, time, state) => {
    const record = given()
      .note('09:00', started('118', ['4']))
      .note('09:40', finished('118', 'failed'));
    expect(record.by(from, time, finished('118', 'passed')).tip('4').state).toBe(state);
  });

  test('a doubt is settled by anyone’s typed result', () => {
    const record = sterile(given(), ['4']).note('09:00', { kind: 'doubted', item: 'load:118' });
    expect([record.load('118').status, record.tip('4').state]).toEqual(['doubted', 'in-load']);
    record.by('@ann:example.org', '09:10', finished('118', 'passed'));
    expect([record.load('118').status, record.tip('4').state]).toEqual(['passed', 'sterile']);
  });
});

describe('what is part of its pass', () => {
  const meanwhile: [string, Told][] = [
    ['fitted', { kind: 'fitted', tip: '4', scanner: 'A' }],
    ['used', { kind: 'used', tips: ['4'] }],
    ['removed', { kind: 'removed', tips: ['4'] }],
    ['dropped', { kind: 'fault', item: 'tip:4', sort: 'dropped' }],
    ['its strip unchanged', { kind: 'fault', item: 'tip:4', sort: 'indicator' }],
  ];
  test.each(meanwhile)('not a tip %s while it is open', (_name, told) => {
    const record = given()
      .note('09:00', started('118', ['4', '5']))
      .note('09:10', told)
      .note('09:40', finished('118', 'passed'));
    expect(record.tip('4').state).not.toBe('sterile');
    expect(record.tip('5').state).toBe('sterile');
    expect(record.found('left-open-load')).toMatchObject([{ tip: '4' }]);
  });

  test('a tip that is put in comes off its scanner', () => {
    const record = sterile(given(), ['4']).note('09:00', { kind: 'fitted', tip: '4', scanner: 'A' });
    expect(record.note('09:30', started('119', ['4'])).scanner('A').tip).toBeNull();
  });

  test('in two loads at once, and one of them fails: not sterile', () => {
    const record = given()
      .note('09:00', started('118', ['4']))
      .note('09:05', started('7', ['4']));
    record.note('09:40', finished('7', 'passed')).note('09:50', finished('118', 'failed'));
    expect(record.tip('4').state).toBe('used');
  });

  test('washing said late does not take it out', () => {
    const record = given()
      .note('09:00', started('118', ['4']))
      .note('09:10', { kind: 'washed', tips: ['4'] });
    expect(record.note('09:40', finished('118', 'passed')).tip('4').state).toBe('sterile');
  });

  test('twice running with no use between, or in two at once: found', () => {
    const twice = sterile(given(), ['4']).note('09:00', started('119', ['4']));
    expect(twice.found('never-used-in-two-loads')).toMatchObject([{ tip: '4' }]);
    const both = given()
      .note('09:00', started('118', ['4']))
      .note('09:05', started('7', ['4']));
    expect(both.found('in-two-loads')).toMatchObject([{ tip: '4' }]);
    const used = sterile(given(), ['4'])
      .note('08:40', { kind: 'used', tips: ['4'] })
      .note('09:00', started('119', ['4']));
    expect(used.found('never-used-in-two-loads')).toEqual([]);
    const again = given()
      .note('08:00', started('1', ['4']))
      .note('08:30', finished('1', 'failed'))
      .note('09:00', started('2', ['4']));
    expect(again.found('never-used-in-two-loads')).toEqual([]);
  });
});

describe('which load a number means', () => {
  test('counters start again', () => {
    const record = sterile(given(), ['4']);
    record.note('+300 09:00', started('118', ['5'])).note('+300 09:40', finished('118', 'failed'));
    expect(record.tip('5').state).toBe('used');
    expect(record.tip('4').state).toBe('sterile');
    expect(record.state.loadsByNumber.get('118')?.map(({ key }) => key)).toEqual([
      '118@2026-11-23',
      '118@2027-09-19',
    ]);
  });

  test('a number of today that has its result: a new load, and said', () => {
    const record = sterile(given(), ['4']).note('09:00', started('118', ['5']));
    expect(record.tip('5').state).toBe('in-load');
    expect(record.found('load-number-again')).toHaveLength(1);
  });

  test('each autoclave counts for itself', () => {
    const record = given(twoAutoclaves());
    record
      .note('09:00', started('118', ['4'], { autoclave: 'big' }))
      .note('09:05', started('118', ['5'], { autoclave: 'small' }));
    record.note('09:40', finished('118', 'failed', { autoclave: 'small' }));
    expect([record.tip('4').state, record.tip('5').state]).toEqual(['in-load', 'used']);
    record.note('09:45', finished('118', 'passed'));
    expect(record.tip('4').state).toBe('sterile');
  });

  test('none said of several: kept without, and asked', () => {
    const record = given(twoAutoclaves()).note('09:00', started('118', ['4']));
    expect(record.found('autoclave-unsaid')).toMatchObject([
      { load: '118@2026-11-23', choices: ['big', 'small'] },
    ]);
    expect(record.tip('4').state).toBe('in-load');
    const later = given(twoAutoclaves())
      .note('09:00', started('118', ['4']))
      .note('09:05', started('118', [], { autoclave: 'big' }));
    expect([later.load('118').autoclave, later.load('118').tips]).toEqual(['big', ['4']]);
    expect(later.state.autoclaves.get('big')?.loadsSinceNegative).toEqual(['118@2026-11-23']);
    record.note('09:40', finished('118', 'passed', { autoclave: 'big' }));
    expect(record.state.autoclaves.get('big')?.loadsSinceNegative).toEqual(['118@2026-11-23']);
    expect([record.load('118').autoclave, record.tip('4').state]).toEqual(['big', 'sterile']);
  });

  test('two open of one number and none said: nothing changes until it is', () => {
    const record = given(twoAutoclaves());
    record
      .note('09:00', started('118', ['4'], { autoclave: 'big' }))
      .note('09:05', started('118', ['5'], { autoclave: 'small' }));
    record.note('09:40', finished('118', 'passed'));
    expect([record.tip('4').state, record.tip('5').state]).toEqual(['in-load', 'in-load']);
    expect(record.found('load-ambiguous')).toHaveLength(1);
  });
});

describe('looking back', () => {
  const concerned = (record: Given, number: string) => lookBack(record.state, [record.load(number).key]);
  const uses = (record: Given, number: string) => concerned(record, number).map((each) => each.mark.entry);

  test('scans after the failed load’s end and before the tip’s next passed load, newest first', () => {
    const record = sterile(given(), ['4', '5']); // turns 1, 2
    record.note('09:00', scan('4')).note('09:30', scan('5')); // 3, 4
    record.note('10:00', started('119', ['4', '5'])).note('10:30', finished('119', 'failed', {})); // 5, 6
    record.note('11:00', scan('4')).note('11:30', scan('5')); // 7, 8
    record.note('12:00', started('120', ['4'])).note('12:30', finished('120', 'passed')); // 9, 10
    record.note('13:00', scan('4')).note('13:30', scan('5')); // 11, 12
    expect(uses(record, '119')).toEqual(['12.0', '8.0', '7.0']);
    expect(lookBackTip(record.state, '5').map((each) => each.mark.entry)).toEqual(['12.0', '8.0', '4.0']);
  });

  test('the same when a passed load is corrected to failed', () => {
    const record = sterile(given(), ['4']).note('09:00', scan('4')).note('12:00', finished('118', 'failed'));
    expect(record.found('load-failed')).toMatchObject([{ corrected: true }]);
    expect(uses(record, '118')).toEqual(['3.0']);
    expect(record.tip('4').needs.map((each) => each.why)).toContain('load-failed');
  });

  test('a stretch counts if any of it falls inside', () => {
    const record = given()
      .note('08:00', started('118', ['4']))
      .note('08:30', finished('118', 'failed'));
    record.note('10:00', started('119', ['4'])).note('10:30', finished('119', 'passed'));
    record.note('12:00', { kind: 'used', tips: ['4'], earliest: '2026-11-23T09:00:00Z' } as Told);
    expect(uses(record, '118')).toEqual(['5.0']);
  });

  test('a tip fitted with no scan yet is told too', () => {
    const record = sterile(given(), ['4']).note('09:00', { kind: 'fitted', tip: '4', scanner: 'A' });
    record.note('09:10', finished('118', 'failed'));
    expect(concerned(record, '118')).toMatchObject([{ what: 'fitting', tip: '4' }]);
    expect(record.tip('4').state).toBe('fitted');
  });
});
