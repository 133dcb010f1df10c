import { describe, expect, test } from 'vitest';
import { at, given, sterile, type Told } from './given.ts';

const fitted = (tip: string, scanner = 'A'): Told => ({ kind: 'fitted', tip, scanner });
const start: Told = { kind: 'scan-started', scanner: 'A' };
const finish: Told = { kind: 'scan-finished', scanner: 'A' };
const removed: Told = { kind: 'removed', tips: ['4'] };
const covered: Told = { kind: 'covered', scanner: 'A' };
const needs = (record: ReturnType<typeof given>) => record.tip('4').needs.map(({ why }) => why);

describe('a tip goes on', () => {
  test('given it is another site’s on the record, then it is where its scanner is', () => {
    const record = given()
      .note('08:00', { kind: 'moved', items: ['scanner:A'], site: 'north', room: 'surgery 2' })
      .note('08:10', { kind: 'departed', items: ['tip:4'], site: 'north' })
      .note('09:00', fitted('4'));
    expect(record.tip('4')).toMatchObject({ site: 'north', room: 'surgery 2', departed: null });
  });

  test('given it was missing, then it is back and needs a load', () => {
    const record = sterile(given(), ['4'])
      .note('08:40', { kind: 'missing', items: ['tip:4'] })
      .note('09:00', fitted('4'));
    expect(record.tip('4')).toMatchObject({ missing: null, state: 'fitted', sterile: null });
    expect(needs(record)).toEqual(['was-missing']);
  });

  test.each<[string, Told]>([
    ['fitted', fitted('4')],
    ['used', { kind: 'used', tips: ['4'] }],
  ])(
    'given it came from a load and is %s, then no load counts as one it was in for nothing',
    (_how, told) => {
      expect(sterile(given(), ['4']).note('09:00', told).tip('4').loadsSinceUse).toEqual([]);
    },
  );

  test('given another is on that scanner, then that one came off, found with both', () => {
    const record = sterile(given(), ['4', '5']).note('09:00', fitted('4')).note('09:30', fitted('5'));
    expect(record.found('displaced')).toMatchObject([
      { items: ['tip:4', 'scanner:A'], tip: '4', scanner: 'A' },
    ]);
    expect(needs(record)).toEqual(['removed']);
  });

  test('given the same patient’s tip came off and goes on again, then nothing is warned of', () => {
    const record = sterile(given(), ['4'])
      .note('09:00', fitted('4'))
      .note('09:05', start)
      .note('09:10', finish)
      .note('09:11', removed)
      .note('09:12', { kind: 'fitted', tip: '4', scanner: 'A', samePatient: true });
    expect(record.found('unsafe-tip')).toEqual([]);
  });
});

describe('the cover', () => {
  test('given none was noted, then it counts as off from the first fitting, not from a later one', () => {
    const record = sterile(given(), ['4', '5']).note('09:00', fitted('4')).note('10:00', fitted('5'));
    expect(record.scanner('A').uncovered?.at).toBe(at('09:00'));
  });

  test('given it was put on since, then the next fitting takes it off', () => {
    const record = sterile(given(), ['4', '5'])
      .note('09:00', fitted('4'))
      .note('09:30', covered)
      .note('10:00', fitted('5'));
    expect(record.scanner('A')).toMatchObject({ covered: null, uncovered: { at: at('10:00') } });
  });
});

describe('a tip comes off', () => {
  test('given its scan is under way, then that scan is over: scanner dirty, tip used', () => {
    const record = sterile(given(), ['4'])
      .note('09:00', fitted('4'))
      .note('09:05', start)
      .note('09:10', removed);
    expect(record.scanner('A')).toMatchObject({ scan: null, dirtySince: { tip: '4' }, tip: null });
    expect(record.scanner('A').lastScan?.finished?.at).toBe(at('09:10'));
  });

  test('given it was scanned with, then its use is the reason against it and its removal is none', () => {
    const record = sterile(given(), ['4'])
      .note('09:00', fitted('4'))
      .note('09:05', start)
      .note('09:10', finish)
      .note('09:15', removed);
    expect(needs(record)).toEqual(['used']);
  });

  test('given it is on no scanner on the record, then its removal is a reason beside its use', () => {
    const record = sterile(given(), ['4'])
      .note('09:00', { kind: 'used', tips: ['4'] })
      .note('09:10', removed);
    expect(needs(record)).toEqual(['used', 'removed']);
  });

  test('given it was never scanned with, then its removal is the reason', () => {
    const record = sterile(given(), ['4']).note('09:00', fitted('4')).note('09:10', removed);
    expect(needs(record)).toEqual(['removed']);
  });
});

describe('a tip leaves an open load', () => {
  const two = () =>
    given()
      .note('08:00', { kind: 'load-started', load: '118', tips: ['4', '5'] })
      .note('08:10', fitted('4'))
      .note('08:20', fitted('5', 'B'));

  test('then the load keeps each that left, with when', () => {
    expect(two().load('118').left).toMatchObject([
      { tip: '4', mark: { at: at('08:10') } },
      { tip: '5', mark: { at: at('08:20') } },
    ]);
  });

  test('then it is in no load, found with the load, and needs one', () => {
    const record = two();
    expect(record.tip('4').openLoads).toEqual([]);
    expect(needs(record)).toEqual(['reprocessing']);
    expect(record.found('left-open-load')[0]).toMatchObject({
      items: ['tip:4', 'load:118'],
      tip: '4',
      load: '118@2026-11-23',
    });
  });

  test('given it was in none, then nothing of the kind is said', () => {
    const record = given().note('08:10', fitted('4')).note('08:30', removed);
    expect(needs(record)).toEqual(['removed']);
  });
});

describe('a use, for looking back', () => {
  test('given a scanner is said, then with the scanner’s place, not the tip’s', () => {
    const record = sterile(given(), ['4'])
      .note('08:40', { kind: 'moved', items: ['scanner:A'], site: 'north', room: 'surgery 2' })
      .note('09:00', { kind: 'used', tips: ['4'], scanner: 'A' });
    expect(record.state.history.uses.get('4')?.at(-1)).toMatchObject({
      tip: '4',
      scanner: 'A',
      site: 'north',
      room: 'surgery 2',
      load: '118@2026-11-23',
      samePatient: false,
    });
  });

  test('given none is, then with the tip’s', () => {
    const record = given()
      .note('08:40', { kind: 'moved', items: ['tip:4'], site: 'north', room: 'surgery 3' })
      .note('09:00', { kind: 'used', tips: ['4'] });
    expect(record.state.history.uses.get('4')?.at(-1)).toMatchObject({
      scanner: null,
      site: 'north',
      room: 'surgery 3',
      load: null,
    });
  });
});
