import { describe, expect, test } from 'vitest';
import { ferngate } from './ferngate.ts';
import { type Given, given, sterile, type Told } from './given.ts';

const fitted: Told = { kind: 'fitted', tip: '4', scanner: 'A' };
const start: Told = { kind: 'scan-started', scanner: 'A' };
const held: Told = { kind: 'held', items: ['tip:4'] };
const again = (record: Given) => record.found('unsafe-tip').map((each) => each.again);

describe('what a warning of an unsafe tip says', () => {
  test('given it is fitted, then tip and scanner, the scanner’s site, and what and which entry speaks against it', () => {
    const record = sterile(given(), ['4'])
      .note('08:40', { kind: 'moved', items: ['scanner:A'], site: 'north' })
      .note('08:45', held)
      .note('09:00', fitted);
    expect(record.found('unsafe-tip')).toMatchObject([
      {
        items: ['tip:4', 'scanner:A'],
        tip: '4',
        scanner: 'A',
        site: 'north',
        by: 'fitted',
        cause: '5.0|held@4.0',
        again: false,
        dayOne: false,
      },
    ]);
  });

  test('given no scanner is known, then the tip alone, with its own site', () => {
    const record = given()
      .note('08:45', held)
      .note('09:00', { kind: 'used', tips: ['4'] });
    expect(record.found('unsafe-tip')).toMatchObject([
      { items: ['tip:4'], scanner: null, site: 'quay', by: 'used' },
    ]);
  });

  test('given nothing is known of it, then no entry is named', () => {
    expect(given().note('09:00', fitted).found('unsafe-tip')).toMatchObject([
      { cause: '1.0|no-sterile-record@', reasons: [{ why: 'no-sterile-record', mark: null }] },
    ]);
  });
});

describe('a warning is given once for one cause', () => {
  test('given it is let go and held anew between fitting and scan, then that is another cause', () => {
    const record = given()
      .note('08:45', held)
      .note('09:00', fitted)
      .note('09:01', { kind: 'released', items: ['tip:4'] })
      .note('09:02', held)
      .note('09:05', start);
    expect(again(record)).toEqual([false, false]);
  });

  test('given a second thing is known by the scan, then it is warned of although the first was', () => {
    const record = sterile(given(), ['4'])
      .note('08:45', held)
      .note('09:00', fitted)
      .note('09:01', { kind: 'load-finished', load: '118', outcome: 'failed' })
      .note('09:05', start);
    expect(again(record)).toEqual([false, false]);
  });

  test('given a third thing too, then what was warned of at the fitting is still remembered', () => {
    const record = sterile(given(), ['4'])
      .note('08:45', held)
      .note('09:00', fitted)
      .note('09:01', { kind: 'load-finished', load: '118', outcome: 'failed' })
      .note('09:05', start)
      .note('09:06', { kind: 'scan-started', scanner: 'A', samePatient: true });
    expect(again(record)).toEqual([false, false, true]);
    expect(record.tip('4').warnedFor).toMatchObject({ contact: '4.0' });
    expect(record.tip('4').warnedFor?.reasons.slice(0, 1)).toEqual(['held@3.0']);
  });

  const reached: Told = { kind: 'incident-answered', incident: 'i', of: '1.0', tip: '4', reached: true };

  test('given it was answered that it reached a patient, then that hold is no second cause for the scan', () => {
    const record = given().note('09:00', fitted).note('09:02', reached).note('09:05', start);
    expect(again(record)).toEqual([false, true]);
  });

  test.each<[string, (record: Given) => Given]>([
    ['somebody holds it too', (record) => record.note('09:02', reached).note('09:03', held)],
    ['somebody holds it instead', (record) => record.note('09:03', held)],
    [
      'its load fails too',
      (record) =>
        record
          .note('09:02', reached)
          .note('09:03', { kind: 'load-finished', load: '118', outcome: 'failed' }),
    ],
  ])('given %s, then it is warned of', (_what, happens) => {
    const record = sterile(given(), ['4'])
      .note('08:40', { kind: 'fault', item: 'tip:4', sort: 'pack' })
      .note('09:00', fitted);
    expect(again(happens(record).note('09:05', start))).toEqual([false, false]);
  });
});

describe('day one', () => {
  const days = (record: Given) => record.found('unsafe-tip').map((each) => each.dayOne);

  test('given nothing is known of it and its site’s tips are not counted, then it is of day one', () => {
    const record = given().note('09:00', fitted);
    expect(days(record)).toEqual([true]);
    expect(record.tip('4').warnedDayOne).toBe(true);
  });

  test('given the count is done, then it is not', () => {
    const record = given().note('08:00', { kind: 'stocktaken', site: 'quay' }).note('09:00', fitted);
    expect(days(record)).toEqual([false]);
    expect(record.tip('4').warnedDayOne).toBe(false);
  });

  test('given something else is known against it as well, then it is not', () => {
    const practice = ferngate({ tips: [{ id: '4', home: 'quay', cycles: 2, cyclesSoFar: 3 }] });
    const record = given(practice).note('09:00', fitted);
    expect(record.found('unsafe-tip')[0]?.reasons.map(({ why }) => why)).toEqual([
      'no-sterile-record',
      'past-cycles',
    ]);
    expect(days(record)).toEqual([false]);
  });
});
