import { describe, expect, test } from 'vitest';
import { toIso } from '../../core/time/instant.ts';
import { type Given, given, sterile, type Told } from './given.ts';

const moved = (site: string, ...items: string[]): Told => ({ kind: 'moved', items, site });
const departed = (...items: string[]): Told => ({ kind: 'departed', items, site: 'north' });
const passed: Told = { kind: 'calibrated', scanner: 'A', outcome: 'passed' };
const failed: Told = { kind: 'calibrated', scanner: 'A', outcome: 'failed' };
const reading = (site: string, celsius: number): Told => ({ kind: 'temperature', celsius, site });
const start: Told = { kind: 'scan-started', scanner: 'A' };
const finish: Told = { kind: 'scan-finished', scanner: 'A' };
const wiped = (part: 'all' | 'lens' | 'base' = 'all'): Told => ({ kind: 'wiped', scanner: 'A', part });

function causes(record: Given): string[] {
  return record.scanner('A').causes.map((each) => each.cause);
}

describe('where a scanner is', () => {
  test('at home until a note says otherwise; its room only when said', () => {
    expect(given().scanner('A')).toMatchObject({ site: 'quay', room: null, placed: null });
  });

  test('moved to another site: due; to another room of the same site: not', () => {
    const record = given()
      .note('09:00', passed)
      .note('09:10', { kind: 'moved', items: ['scanner:A'], site: 'quay', room: 's2' });
    expect([record.scanner('A').room, causes(record)]).toEqual(['s2', []]);
    expect(causes(record.note('10:00', moved('north', 'scanner:A')))).toEqual(['moved']);
  });

  test('on its way from departure to arrival', () => {
    const record = given().note('09:00', departed('scanner:A'));
    expect(record.scanner('A').departed).toMatchObject({ from: 'quay', to: 'north' });
    record.note('09:30', moved('north', 'scanner:A'));
    expect(record.scanner('A')).toMatchObject({
      departed: null,
      site: 'north',
      arrived: { journeyMinutes: 30 },
    });
  });

  test('the calibration tip and the tip on it travel along', () => {
    const record = sterile(given(), ['4']).note('09:00', { kind: 'fitted', tip: '4', scanner: 'A' });
    record.note('10:00', moved('north', 'scanner:A'));
    expect(record.scanner('A').calibrationTip.site).toBe('north');
    expect(record.tip('4').site).toBe('north');
    expect(record.found('calibration-tip-apart')).toEqual([]);
  });

  test('unless a note says otherwise: said at once', () => {
    const record = given()
      .note('10:00', moved('north', 'scanner:A'))
      .note('10:05', moved('quay', 'calibration-tip:A'));
    expect(record.found('calibration-tip-apart')).toMatchObject([{ site: 'north', tipSite: 'quay' }]);
  });

  test('both in one note, in either order, are never apart', () => {
    const record = given().note('10:00', moved('north', 'calibration-tip:A', 'scanner:A'));
    expect(record.found('calibration-tip-apart')).toEqual([]);
  });

  test('missing and found', () => {
    const record = given().note('09:00', { kind: 'missing', items: ['scanner:A'] });
    expect(record.scanner('A').missing).not.toBeNull();
    expect(record.note('09:10', { kind: 'found', items: ['scanner:A'] }).scanner('A').missing).toBeNull();
  });
});

test.each([
  ['arrived', [departed('scanner:A'), moved('north', 'scanner:A')]],
  [
    'found',
    [{ kind: 'missing', items: ['scanner:A'] } as Told, { kind: 'found', items: ['scanner:A'] } as Told],
  ],
  [
    'released',
    [{ kind: 'held', items: ['scanner:A'] } as Told, { kind: 'released', items: ['scanner:A'] } as Told],
  ],
])('available again from when it %s', (_name, told) => {
  const record = given();
  for (const [index, each] of told.entries()) record.note(`09:1${index}`, each);
  expect(toIso(record.scanner('A').available?.at ?? 0)).toBe('2026-11-23T09:11:00Z');
});

describe('settling', () => {
  test('25 minutes where nothing better is known (20 · ln(10/3) = 24.08, rounded up)', () => {
    const record = given().note('10:00', moved('north', 'scanner:A'));
    expect(record.scanner('A').arrived).toMatchObject({ settleMinutes: 25, gap: null, journeyMinutes: null });
    expect(toIso(record.scanner('A').arrived?.settledBy ?? 0)).toBe('2026-11-23T10:25:00Z');
  });

  test('with readings at both sites and a journey: gap · e^(−d/τ) + 10 · (1 − e^(−d/τ))', () => {
    const record = given().note('08:00', reading('quay', 22), reading('north', 18));
    record.note('09:00', departed('scanner:A')).note('09:20', moved('north', 'scanner:A'));
    // 4 · e^−1 + 10 · (1 − e^−1) = 7.793 K; 20 · ln(7.793 / 3) = 19.09 min.
    expect(record.scanner('A').arrived).toMatchObject({ gap: 4, journeyMinutes: 20, settleMinutes: 20 });
  });

  test('no departure noted: the journey is unknown, so the assumed difference', () => {
    const record = given()
      .note('08:00', reading('quay', 22), reading('north', 18))
      .note('09:20', moved('north', 'scanner:A'));
    expect(record.scanner('A').arrived?.settleMinutes).toBe(25);
  });

  test('a reading of yesterday morning is too old', () => {
    const record = given().note('08:00', reading('quay', 22), reading('north', 18));
    record.note('+1 09:00', departed('scanner:A')).note('+1 09:20', moved('north', 'scanner:A'));
    expect(record.scanner('A').arrived?.gap).toBeNull();
  });

  test('a reading noted on arrival is used', () => {
    const record = given().note('08:00', reading('quay', 22)).note('09:00', departed('scanner:A'));
    record.note('09:20', moved('north', 'scanner:A'), reading('north', 18));
    expect(record.scanner('A').arrived).toMatchObject({ gap: 4, settleMinutes: 20 });
  });

  test('a pass noted before it is over waits for a yes, and then counts from its own time', () => {
    const record = given().note('10:00', moved('north', 'scanner:A')).note('10:10', passed);
    expect(record.found('pass-before-settling')).toHaveLength(1);
    expect([causes(record), record.scanner('A').lastPass]).toEqual([['moved'], null]);
    record.note('10:15', { kind: 'pass-confirmed', scanner: 'A', of: '2.0' });
    expect(causes(record)).toEqual([]);
    expect(toIso(record.scanner('A').lastPass?.mark.at ?? 0)).toBe('2026-11-23T10:10:00Z');
  });

  test('what came after that pass still stands', () => {
    const record = given().note('10:00', moved('north', 'scanner:A')).note('10:10', passed);
    record.note('10:12', { kind: 'fault', item: 'scanner:A', sort: 'dropped' });
    record.note('10:15', { kind: 'pass-confirmed', scanner: 'A', of: '2.0' });
    expect([causes(record), record.scanner('A').holds.length]).toEqual([['dropped'], 1]);
  });

  test('answered no, it stays due', () => {
    const record = given().note('10:00', moved('north', 'scanner:A')).note('10:10', passed);
    record.note('10:15', { kind: 'pass-doubted', scanner: 'A', of: '2.0' });
    expect([causes(record), record.scanner('A').earlyPass?.status]).toEqual([['moved'], 'doubted']);
  });

  test('after it a pass counts at once', () => {
    expect(causes(given().note('10:00', moved('north', 'scanner:A')).note('10:25', passed))).toEqual([]);
  });

  test('a pass while on its way waits too', () => {
    const record = given().note('10:00', departed('scanner:A')).note('10:10', passed);
    expect(record.scanner('A').earlyPass?.settledBy).toBeNull();
  });
});

describe('calibration', () => {
  test('failed stays due; failures in a row are counted; a later pass makes it right', () => {
    const record = given().note('09:00', failed).note('09:10', failed);
    expect([causes(record), record.scanner('A').failuresInRow]).toEqual([['failed'], 2]);
    record.note('09:20', passed);
    expect([causes(record), record.scanner('A').failuresInRow]).toEqual([[], 0]);
  });

  test('dropped: due, and held until it passes; nobody releases it before', () => {
    const record = given().note('09:00', { kind: 'fault', item: 'scanner:A', sort: 'dropped' });
    expect(causes(record)).toEqual(['dropped']);
    record.lead('09:05', { kind: 'released', items: ['scanner:A'] });
    expect(record.scanner('A').holds).toHaveLength(1);
    expect(record.found('refused')).toMatchObject([{ why: 'needs-pass' }]);
    expect(record.note('09:10', passed).scanner('A').holds).toEqual([]);
  });

  test('a pass does not end a hold that somebody placed', () => {
    const record = given()
      .note('09:00', { kind: 'held', items: ['scanner:A'], reason: 'cable' })
      .note('09:10', passed);
    expect(record.scanner('A').holds).toMatchObject([{ sort: 'said', reason: 'cable' }]);
  });

  test('repaired: due', () => {
    expect(
      causes(
        given()
          .note('09:00', passed)
          .note('10:00', { kind: 'repaired', items: ['scanner:A'] }),
      ),
    ).toEqual(['repaired']);
  });

  test.each([
    [20, 25, ['temperature']],
    [20, 24.9, []],
    // 16.4 - 11.4 is a little under 5 in binary fractions.
    [16.4, 11.4, ['temperature']],
  ])('a pass at %d °C, then a reading of %d: %j', (before, after, expected) => {
    const record = given()
      .note('08:00', reading('quay', before))
      .note('09:00', passed)
      .note('15:00', reading('quay', after));
    expect(causes(record)).toEqual(expected);
    expect(record.found('temperature-due')).toHaveLength(expected.length);
  });

  test('still due if the temperature comes back; no reading at the pass: nothing to compare', () => {
    const record = given()
      .note('08:00', reading('quay', 20))
      .note('09:00', passed)
      .note('12:00', reading('quay', 26));
    expect(causes(record.note('14:00', reading('quay', 20)))).toEqual(['temperature']);
    expect(causes(given().note('09:00', passed).note('12:00', reading('quay', 30)))).toEqual([]);
  });

  test('a reading at another site does not concern it', () => {
    const record = given()
      .note('08:00', reading('quay', 20))
      .note('09:00', passed)
      .note('12:00', reading('north', 10));
    expect(causes(record)).toEqual([]);
  });

  test.each([
    ['never calibrated', [] as Told[], { never: true }],
    ['failed', [passed, failed], { never: false }],
    ['moved', [passed, moved('north', 'scanner:A')], { never: false }],
    ['held', [passed, { kind: 'held', items: ['scanner:A'] } as Told], { never: false }],
    ['on its way', [passed, departed('scanner:A')], { inTransit: true }],
    ['in doubt', [passed, { kind: 'doubted', item: 'scanner:A' } as Told], { doubted: true }],
  ])('a scan started on one that is %s is found', (_name, told, expected) => {
    const record = given();
    for (const [index, each] of told.entries()) record.note(`09:${10 + index}`, each);
    expect(record.note('10:00', start).found('not-ready-scanner')).toMatchObject([expected]);
  });

  test('a scan on one that has passed: nothing found', () => {
    expect(given().note('09:00', passed).note('10:00', start).found('not-ready-scanner')).toEqual([]);
  });
});

describe('between patients', () => {
  test('a finished scan makes it dirty; only a whole wipe-down makes it clean', () => {
    const record = given()
      .note('09:00', start)
      .note('09:10', finish)
      .note('09:12', wiped('lens'), wiped('base'));
    expect(record.scanner('A').dirtySince).not.toBeNull();
    expect(record.note('09:14', wiped()).scanner('A').dirtySince).toBeNull();
  });

  test('a scan started on it, or a tip fitted to it, before it is wiped: found, with the scan', () => {
    const record = sterile(given(), ['4']).note('09:00', start).note('09:10', finish);
    record.note('09:20', { kind: 'fitted', tip: '4', scanner: 'A' }).note('09:21', start);
    expect(record.found('not-wiped').map((each) => [each.by, each.again])).toEqual([
      ['fitted', false],
      ['scan-started', true],
    ]);
    expect(record.found('not-wiped')[0]?.earlier.started.entry).toBe('3.0');
  });

  test('a scan begun while another is under way says that that one is over', () => {
    expect(given().note('09:00', start).note('09:30', start).found('not-wiped')).toHaveLength(1);
  });

  test('a fitting told after the scan was begun is no other scan', () => {
    const record = sterile(given(), ['4']).note('09:00', { kind: 'scan-started', scanner: 'A', tip: '4' });
    record.note('09:02', { kind: 'fitted', tip: '4', scanner: 'A' });
    expect(record.state.history.findings.recent().map((each) => each.kind)).toEqual(['not-ready-scanner']);
  });

  test('its end told twice is one scan', () => {
    const record = given().note('09:00', start).note('09:10', finish).note('09:12', finish);
    expect(record.scanner('A').uses).toBe(1);
  });

  test('fitting a tip takes the cover off; the cover takes the tip off', () => {
    const record = sterile(given(), ['4']).note('08:40', { kind: 'covered', scanner: 'A' });
    expect(record.scanner('A').covered).not.toBeNull();
    record.note('09:00', { kind: 'fitted', tip: '4', scanner: 'A' });
    expect(record.scanner('A').covered).toBeNull();
    record.note('09:30', { kind: 'covered', scanner: 'A' });
    expect([record.scanner('A').tip, record.tip('4').state]).toEqual([null, 'used']);
  });
});
