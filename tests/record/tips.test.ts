import { describe, expect, test } from 'vitest';
import { ferngate, LEAD } from './ferngate.ts';
import { type Given, given, sterile, type Told } from './given.ts';

const fitted = (tip: string, scanner = 'A'): Told => ({ kind: 'fitted', tip, scanner });
const start = (scanner = 'A'): Told => ({ kind: 'scan-started', scanner });
const finish = (scanner = 'A'): Told => ({ kind: 'scan-finished', scanner });
const wiped = (scanner = 'A'): Told => ({ kind: 'wiped', scanner, part: 'all' });
const tips = (
  kind: 'washed' | 'bagged' | 'sent' | 'sterile' | 'removed' | 'used',
  ...ids: string[]
): Told => ({
  kind,
  tips: ids,
});

/** Reasons of the unsafe-tip findings, in order. */
function why(record: Given): string[][] {
  return record.found('unsafe-tip').map((each) => each.reasons.map((reason) => reason.why));
}

describe('the way round', () => {
  test('sterile, fitted, used, washed, bagged, sent, in a load, sterile', () => {
    const record = sterile(given(), ['4']);
    const seen = [record.tip('4').state];
    const steps: [string, Told][] = [
      ['09:00', fitted('4')],
      ['09:05', start()],
      ['09:15', finish()],
      ['09:20', tips('washed', '4')],
      ['09:25', tips('bagged', '4')],
      ['09:30', tips('sent', '4')],
      ['10:00', { kind: 'load-started', load: '119', tips: ['4'] }],
      ['10:40', { kind: 'load-finished', load: '119', outcome: 'passed' }],
    ];
    for (const [time, told] of steps) seen.push(record.note(time, told).tip('4').state);
    expect(seen).toEqual([
      'sterile',
      'fitted',
      'fitted',
      'used',
      'washed',
      'bagged',
      'sent',
      'in-load',
      'sterile',
    ]);
    expect(why(record)).toEqual([]);
    expect(record.tip('4').cycles).toBe(2);
  });

  test('washing and bagging may go unsaid', () => {
    const record = sterile(given(), ['4']).note('09:00', tips('used', '4')).note('09:10', tips('sent', '4'));
    expect(record.note('11:00', tips('sterile', '4')).tip('4').state).toBe('sterile');
  });

  test('a tip of which no note has spoken is unknown', () => {
    expect(given().tip('4').state).toBe('unknown');
  });
});

describe('unsafe now', () => {
  const bad: [string, (record: Given) => Given, string][] = [
    ['used since its load', (r) => r.note('08:40', tips('used', '4')), 'used'],
    [
      'removed with no scan between',
      (r) => r.note('08:40', fitted('4', 'B')).note('08:50', tips('removed', '4')),
      'removed',
    ],
    ['held', (r) => r.note('08:40', { kind: 'held', items: ['tip:4'] }), 'held'],
    ['missing', (r) => r.note('08:40', { kind: 'missing', items: ['tip:4'] }), 'missing'],
    ['retired', (r) => r.note('08:40', { kind: 'retired', tips: ['4'] }), 'retired'],
    ['dropped', (r) => r.note('08:40', { kind: 'fault', item: 'tip:4', sort: 'dropped' }), 'dropped'],
    ['its pack torn', (r) => r.note('08:40', { kind: 'fault', item: 'tip:4', sort: 'pack' }), 'pack'],
    [
      'its indicator unchanged',
      (r) => r.note('08:40', { kind: 'fault', item: 'tip:4', sort: 'indicator' }),
      'indicator',
    ],
    ['its mirror damaged', (r) => r.note('08:40', { kind: 'fault', item: 'tip:4', sort: 'mirror' }), 'held'],
    [
      'failed at inspection',
      (r) => r.note('08:40', { kind: 'inspected', tips: ['4'], outcome: 'failed' }),
      'failed-inspection',
    ],
    [
      'found after it was missing',
      (r) =>
        r
          .note('08:40', { kind: 'missing', items: ['tip:4'] })
          .note('08:50', { kind: 'found', items: ['tip:4'] }),
      'was-missing',
    ],
    ['washed and not yet back', (r) => r.note('08:40', tips('washed', '4')), 'reprocessing'],
    [
      'its load failed after all',
      (r) => r.note('08:40', { kind: 'load-finished', load: '118', outcome: 'failed' }),
      'load-failed',
    ],
    ['its load in doubt', (r) => r.note('08:40', { kind: 'doubted', item: 'load:118' }), 'load-doubted'],
    ['itself in doubt', (r) => r.note('08:40', { kind: 'doubted', item: 'tip:4' }), 'doubted'],
    [
      'in an open load',
      (r) => r.note('08:40', { kind: 'load-started', load: '119', tips: ['4'] }),
      'load-open',
    ],
    ['on another scanner', (r) => r.note('08:40', fitted('4', 'B')), 'fitted-elsewhere'],
  ];
  test.each(bad)('fitted when %s: found, and recorded as said', (_name, happens, reason) => {
    const record = happens(sterile(given(), ['4'])).note('09:00', fitted('4'));
    expect(why(record)).toEqual([expect.arrayContaining([reason])]);
    expect(record.scanner('A').tip).toBe('4');
    expect(record.found('unsafe-tip')[0]?.reasons[0]?.why).toBe(reason);
  });

  test.each(bad)('scanned with when %s: found', (_name, happens, reason) => {
    const record = happens(sterile(given(), ['4'])).note('09:00', {
      kind: 'scan-started',
      scanner: 'A',
      tip: '4',
    });
    expect(why(record)).toEqual([expect.arrayContaining([reason])]);
  });

  test('sterile and good: nothing found', () => {
    const record = sterile(given(), ['4']).note('09:00', fitted('4')).note('09:05', start());
    expect(why(record)).toEqual([]);
  });

  test('never recorded sterile: once for the fitting and the scan', () => {
    const record = given().note('09:00', fitted('4')).note('09:05', start());
    expect(record.found('unsafe-tip').map((each) => [each.again, each.dayOne])).toEqual([
      [false, true],
      [true, true],
    ]);
  });

  test('fitting it again another time is another cause', () => {
    const record = sterile(given(), ['4']).note('08:40', { kind: 'held', items: ['tip:4'] });
    record
      .note('09:00', fitted('4'))
      .note('09:05', start())
      .note('09:10', finish())
      .note('09:15', tips('removed', '4'));
    record.note('+1 09:00', fitted('4'));
    expect(record.found('unsafe-tip').map((each) => each.again)).toEqual([false, true, false]);
  });

  test('a new reason between fitting and scan is warned of', () => {
    const record = sterile(given(), ['4']).note('09:00', fitted('4'));
    record.note('09:01', { kind: 'load-finished', load: '118', outcome: 'failed' }).note('09:05', start());
    expect(record.found('unsafe-tip').map((each) => [each.by, each.again])).toEqual([
      ['scan-started', false],
    ]);
  });

  test('past its cycles; at the limit one last use', () => {
    const practice = ferngate({ tips: [{ id: '4', home: 'quay', cycles: 2, cyclesSoFar: 1 }] });
    const record = sterile(given(practice), ['4'])
      .note('09:00', fitted('4'))
      .note('09:05', start())
      .note('09:10', finish());
    expect(why(record)).toEqual([]);
    record.note('09:20', tips('sent', '4'));
    expect(record.found('past-limit')).toMatchObject([{ by: 'sent', cycles: 2, limit: 2 }]);
    sterile(record, ['4'], '119', '10:00', '10:30').note('11:00', fitted('4'));
    expect(why(record)).toEqual([['past-cycles']]);
  });

  test.each([
    ['always', false, '+365 17:00', []],
    ['always', false, '+366 09:00', [['too-old']]],
    ['noted', false, '17:00', []],
    ['noted', false, '+1 09:00', [['too-old']]],
    ['noted', true, '+1 09:00', []],
  ])('wrapped %s, bagged %s, fitted %s: %j', (wrapped, bagged, time, expected) => {
    const practice = ferngate({ rules: { practice: { wrapped }, bySite: {}, byScanner: {} } });
    const record = given(practice);
    if (bagged) record.note('07:50', tips('bagged', '4'));
    sterile(record, ['4']).note(time, fitted('4'));
    expect(why(record)).toEqual(expected);
  });
});

describe('the same tip again', () => {
  test('a scan with no tip named is with the tip on that scanner', () => {
    const record = sterile(given(), ['4'])
      .note('09:00', fitted('4'))
      .note('09:05', start())
      .note('09:15', finish());
    expect(record.tip('4').state).toBe('used');
    expect(record.note('09:20', wiped()).note('09:30', start()).found('same-tip-again')).toHaveLength(1);
  });

  test('"same patient" drops that and the not-wiped warning, no other', () => {
    const record = sterile(given(), ['4'])
      .note('09:00', fitted('4'))
      .note('09:05', start())
      .note('09:15', finish());
    record.note('09:17', { kind: 'scan-started', scanner: 'A', samePatient: true });
    expect(record.found('same-tip-again')).toEqual([]);
    expect(record.found('not-wiped')).toEqual([]);
    expect(record.found('unsafe-tip')).toEqual([]);
    record.note('09:19', { kind: 'held', items: ['tip:4'] });
    record.note('09:20', { kind: 'scan-started', scanner: 'A', samePatient: true });
    expect(record.found('unsafe-tip')).toHaveLength(1);
  });

  test('with another tip it is not the same tip', () => {
    const record = sterile(given(), ['4', '5'])
      .note('09:00', fitted('4'))
      .note('09:05', start())
      .note('09:15', finish());
    record.note('09:20', wiped()).note('09:25', fitted('5')).note('09:30', start());
    expect(record.found('same-tip-again')).toEqual([]);
    expect(record.found('displaced')).toMatchObject([{ tip: '4', scanner: 'A' }]);
    expect(record.tip('4')).toMatchObject({ state: 'used', scanner: null });
  });
});

describe('used counts as contact', () => {
  test('and makes its scanner dirty', () => {
    const record = sterile(given(), ['4']).note('09:00', { kind: 'used', tips: ['4'], scanner: 'A' });
    expect(record.scanner('A').dirtySince).not.toBeNull();
    expect(record.tip('4').state).toBe('used');
  });

  test('said after its scan it sums that up: a wiped scanner stays clean', () => {
    const record = sterile(given(), ['4'])
      .note('09:00', fitted('4'))
      .note('09:05', start())
      .note('09:15', finish());
    record.note('09:20', wiped()).note('09:30', tips('used', '4'));
    expect(record.scanner('A').dirtySince).toBeNull();
    expect(record.state.history.uses.get('4')).toHaveLength(1);
  });
});

describe('sterile, said', () => {
  const refused: [string, (record: Given) => Given][] = [
    [
      'its last load failed',
      (r) => r.note('08:40', { kind: 'load-finished', load: '118', outcome: 'failed' }),
    ],
    ['its last load is open', (r) => r.note('08:40', { kind: 'load-started', load: '119', tips: ['4'] })],
    ['its last load is doubted', (r) => r.note('08:40', { kind: 'doubted', item: 'load:118' })],
    ['used since its last load', (r) => r.note('08:40', tips('used', '4'))],
    ['fitted since its last load', (r) => r.note('08:40', fitted('4'))],
    ['fitted and removed', (r) => r.note('08:40', fitted('4')).note('08:45', tips('removed', '4'))],
    ['dropped', (r) => r.note('08:40', { kind: 'fault', item: 'tip:4', sort: 'dropped' })],
  ];
  test.each(refused)('refused when %s: nothing changes', (_name, happens) => {
    const record = happens(sterile(given(), ['4']));
    const before = record.tip('4').state;
    record.note('09:00', tips('sterile', '4'));
    expect(record.found('sterile-refused')).toHaveLength(1);
    expect(record.tip('4').state).toBe(before);
  });

  test.each([
    [
      'sent and come back',
      (r: Given) => r.note('08:40', tips('used', '4')).note('08:50', tips('sent', '4')),
      2,
    ],
    ['unknown', (r: Given) => r, 0],
    ['unknown and bagged', (r: Given) => r.note('08:40', tips('bagged', '4')), 0],
  ])('taken as said when %s', (name, happens, cycles) => {
    const record = happens(name.startsWith('unknown') ? given() : sterile(given(), ['4'])).note(
      '10:00',
      tips('sterile', '4'),
    );
    expect(record.tip('4')).toMatchObject({ state: 'sterile', sterile: { how: 'said' }, cycles });
  });

  test('a stocktake counts no cycle', () => {
    const record = sterile(given(), ['4']).note('09:00', tips('sterile', '4', '5'));
    expect([record.tip('4').cycles, record.tip('5').cycles]).toEqual([1, 0]);
  });

  test('load and return both said of one load count one', () => {
    const record = given()
      .note('08:00', tips('sent', '4'))
      .note('08:10', { kind: 'load-started', load: '1', tips: ['4'] });
    record
      .note('08:40', { kind: 'load-finished', load: '1', outcome: 'passed' })
      .note('08:45', tips('sterile', '4'));
    expect(record.tip('4').cycles).toBe(1);
  });
});

describe('holds', () => {
  test('anyone holds; who placed it, or the lead, releases; the state it had comes back', () => {
    const record = sterile(given(), ['4']).note('09:00', {
      kind: 'held',
      items: ['tip:4'],
      reason: 'scratched',
    });
    expect(record.tip('4').state).toBe('held');
    record.by('@ann:example.org', '09:10', { kind: 'released', items: ['tip:4'] });
    expect(record.tip('4').state).toBe('held');
    expect(record.found('refused')).toMatchObject([{ what: 'release', why: 'not-allowed' }]);
    expect(record.note('09:20', { kind: 'released', items: ['tip:4'] }).tip('4').state).toBe('sterile');
  });

  test('releasing makes nothing sterile', () => {
    const record = given()
      .note('09:00', tips('used', '4'))
      .note('09:01', { kind: 'held', items: ['tip:4'] });
    expect(record.lead('09:10', { kind: 'released', items: ['tip:4'] }).tip('4').state).toBe('used');
  });

  test('it reached a patient: held, for the lead alone to release', () => {
    const record = given().note('09:00', fitted('4'));
    record.note('09:02', {
      kind: 'incident-opened',
      incident: 'i',
      of: '1.0',
      items: ['tip:4'],
      sort: 'unsafe-tip',
    });
    record.note('09:03', { kind: 'incident-answered', incident: 'i', of: '1.0', tip: '4', reached: true });
    expect(record.tip('4').state).toBe('held');
    expect(record.note('09:10', { kind: 'released', items: ['tip:4'] }).tip('4').state).toBe('held');
    expect(record.lead('09:20', { kind: 'released', items: ['tip:4'] }).tip('4').state).not.toBe('held');
    record.note('09:30', { kind: 'incident-closed', incident: 'i' });
    expect(record.state.incidents.get('i')?.closed).toBeNull();
    record.by(LEAD, '09:40', { kind: 'incident-closed', incident: 'i', reason: 'followed up' });
    expect(record.state.incidents.get('i')?.closed?.reason).toBe('followed up');
  });
});

test('a tip that cannot be found is on no scanner', () => {
  const record = sterile(given(), ['4'])
    .note('09:00', fitted('4'))
    .note('09:30', { kind: 'missing', items: ['tip:4'] });
  expect([record.scanner('A').tip, record.tip('4').state]).toEqual([null, 'missing']);
});

describe('stocktake', () => {
  test('done when half of the tips of a site are told, in one note or several', () => {
    const record = given().note('09:00', tips('sterile', '1', '2'));
    expect(record.state.sites.get('quay')?.stocktake).toBeNull();
    record.note('09:05', tips('used', '2'), tips('washed', '3'));
    expect(record.state.sites.get('quay')?.stocktake).not.toBeNull();
  });
});
