import { describe, expect, test } from 'vitest';
import { at, type Given, given, sterile, type Told } from './given.ts';

const used = (more: { scanner?: string; samePatient?: true } = {}, tip = '4'): Told => ({
  kind: 'used',
  tips: [tip],
  ...more,
});
const onA = { scanner: 'A' };
const fitted = (scanner = 'A'): Told => ({ kind: 'fitted', tip: '4', scanner });
const start = (tip = '4'): Told => ({ kind: 'scan-started', scanner: 'A', tip });
const held: Told = { kind: 'held', items: ['tip:4'] };
const why = (record: Given) => record.found('unsafe-tip').map((each) => each.reasons.map((r) => r.why));
const again = (record: Given) => record.found('unsafe-tip').map((each) => each.again);

describe('"used" while its scan is under way', () => {
  test.each<[string, Told]>([
    ['with no scanner', used()],
    ['with that scanner', used(onA)],
  ])('given it is said %s, then it ends that scan and is no other use', (_how, told) => {
    const record = sterile(given(), ['4']).note('09:00', start()).note('09:10', told);
    expect(record.scanner('A')).toMatchObject({ scan: null, uses: 1, dirtySince: { tip: '4' } });
    expect(record.scanner('A').dirtySince?.finished?.at).toBe(at('09:10'));
    expect(record.tip('4')).toMatchObject({ uses: 1, state: 'used' });
    expect(why(record)).toEqual([]);
  });

  test('given it is said with another scanner, then it is a use of its own there', () => {
    const record = sterile(given(), ['4'])
      .note('09:00', start())
      .note('09:10', used({ scanner: 'B' }));
    expect([record.tip('4').uses, record.scanner('B').uses]).toEqual([2, 1]);
  });

  test('given it summed that scan up, then "used" on it an hour later is another patient', () => {
    const record = sterile(given(), ['4'])
      .note('09:00', start())
      .note('09:10', used())
      .note('10:10', used(onA));
    expect(why(record)).toEqual([['used']]);
    expect(record.tip('4').uses).toBe(2);
  });

  test('given another tip’s scan is under way on the scanner that is named, then that one is over', () => {
    const record = sterile(given(), ['4', '5']).note('09:00', start('5')).note('09:10', used(onA));
    expect(record.tip('5').state).toBe('used');
    expect(record.scanner('A')).toMatchObject({ scan: null, uses: 2, lastScan: { tip: '4' } });
  });
});

describe('"used" sums up, or is another use', () => {
  const once = () => sterile(given(), ['4']).note('09:00', used(onA));

  test('given it is said again to the tenth minute, then one use; a minute later, two', () => {
    expect(once().note('09:10', used(onA)).tip('4').uses).toBe(1);
    expect(once().note('09:11', used(onA)).tip('4').uses).toBe(2);
  });

  test('given it is said again with no scanner, then one use that day, and the day after another, not warned of', () => {
    expect(once().note('11:00', used()).tip('4').uses).toBe(1);
    const next = once().note('+1 09:00', used());
    expect(next.tip('4').uses).toBe(2);
    expect(why(next)).toEqual([]);
  });

  test('given it was only dropped, then its first use is no other patient', () => {
    const dropped = given().note('08:40', { kind: 'fault', item: 'tip:4', sort: 'dropped' });
    expect(why(dropped.note('09:00', used(onA)))).toEqual([]);
  });

  test('given it was told with no scanner first, then with one, then nothing is warned of', () => {
    expect(why(sterile(given(), ['4']).note('09:00', used()).note('10:00', used(onA)))).toEqual([]);
  });

  test('given it was dropped after that, then its use is still a reason', () => {
    const record = once().note('09:20', { kind: 'fault', item: 'tip:4', sort: 'dropped' });
    expect(why(record.note('10:30', used(onA)))).toEqual([['used', 'dropped']]);
  });

  test('given it was washed meanwhile, then it is another use, and warned of', () => {
    const record = once()
      .note('09:10', { kind: 'washed', tips: ['4'] })
      .note('09:20', used());
    expect(record.tip('4').uses).toBe(2);
    expect(why(record)).toEqual([['used']]);
  });

  test('given a load passed and it was dropped since, then it is another use that day', () => {
    const record = once()
      .note('09:20', { kind: 'load-started', load: '7', tips: ['4'] })
      .note('10:00', { kind: 'load-finished', load: '7', outcome: 'passed' })
      .note('10:30', { kind: 'fault', item: 'tip:4', sort: 'dropped' })
      .note('11:00', used());
    expect(record.tip('4').uses).toBe(2);
  });
});

describe('"used" of a tip that must not be', () => {
  test.each<[string, Told, string]>([
    ['held', held, 'held'],
    ['missing', { kind: 'missing', items: ['tip:4'] }, 'missing'],
    ['retired', { kind: 'retired', tips: ['4'] }, 'retired'],
    ['washed', { kind: 'washed', tips: ['4'] }, 'reprocessing'],
    ['bagged', { kind: 'bagged', tips: ['4'] }, 'reprocessing'],
    ['sent', { kind: 'sent', tips: ['4'] }, 'reprocessing'],
    ['in an open load', { kind: 'load-started', load: '7', tips: ['4'] }, 'load-open'],
  ])('given it is %s, then it is warned of', (_how, told, reason) => {
    const record = given().note('08:40', told).note('09:00', used());
    expect(why(record)).toEqual([expect.arrayContaining([reason])]);
    expect(record.tip('4')).toMatchObject({ missing: null, uses: 1 });
  });

  const doubted: Told = { kind: 'doubted', item: 'tip:4' };
  const failed: Told = { kind: 'load-finished', load: '118', outcome: 'failed' };
  test.each<[string, (record: Given) => Given, string]>([
    ['sterile and in doubt', (record) => record.note('08:40', doubted).note('09:00', used()), 'doubted'],
    ['sterile past its day', (record) => record.note('+366 09:00', used(onA)), 'too-old'],
    [
      'on a scanner, its load failed meanwhile',
      (record) => record.note('08:40', fitted()).note('08:50', failed).note('09:00', used()),
      'load-failed',
    ],
  ])('given it was %s, then it is warned of', (_how, happens, reason) => {
    const record = happens(sterile(given(), ['4']));
    expect(why(record)).toEqual([[reason]]);
    expect(again(record)).toEqual([false]);
  });

  test.each<[string, (record: Given) => Given]>([
    ['sterile', (record) => record],
    ['on that scanner', (record) => record.note('08:40', fitted())],
  ])('given it was %s with nothing against it, then nothing is', (_how, happens) => {
    expect(why(happens(sterile(given(), ['4'])).note('09:00', used(onA)))).toEqual([]);
  });

  test('given it was warned of on day one and used on another scanner, then not a second time', () => {
    const record = given()
      .note('08:40', fitted())
      .note('09:00', used({ scanner: 'B' }));
    expect(record.found('unsafe-tip').map((each) => [each.dayOne, each.again])).toEqual([
      [true, false],
      [true, true],
    ]);
  });

  // As for a fitting: the same tip on the same scanner for the same patient is no news, anything else speaks as it is.
  test('given it goes to another scanner for the same patient, then it is warned of', () => {
    const record = sterile(given(), ['4'])
      .note('09:00', used(onA))
      .note('09:05', used({ scanner: 'B', samePatient: true }));
    expect(why(record)).toEqual([['used']]);
  });

  test('given nothing was known of it, then only that it is used', () => {
    const record = given().note('09:00', used(onA));
    expect(why(record)).toEqual([]);
    expect(record.tip('4').state).toBe('used');
  });

  test('given it was warned of when it was fitted, then its use there is the same contact', () => {
    const record = sterile(given(), ['4']).note('08:40', held).note('09:00', fitted()).note('09:10', used());
    expect(again(record)).toEqual([false, true]);
    expect(again(record.note('+1 09:00', used(onA)))).toEqual([false, true, false]);
  });

  test('given it is used on another scanner than it was fitted to, then that is another contact', () => {
    const record = sterile(given(), ['4'])
      .note('08:40', held)
      .note('09:00', fitted())
      .note('09:10', used({ scanner: 'B' }));
    expect(again(record)).toEqual([false, false]);
  });
});

describe('what "used" does beside', () => {
  test('given its scanner was covered, then the cover is off, and one use is counted of it', () => {
    const record = given().note('08:40', { kind: 'covered', scanner: 'A' }).note('09:00', used(onA));
    expect(record.scanner('A')).toMatchObject({ covered: null, uses: 1, uncovered: { at: at('09:00') } });
  });

  test('given half of a site’s tips are told so, then that tells its count', () => {
    const told = (...tips: string[]) => given().note('09:00', { kind: 'used', tips });
    expect(told('1', '2', '3').state.sites.get('quay')?.stocktake).not.toBeNull();
    expect(told('1', '2').state.sites.get('quay')?.stocktake).toBeNull();
  });
});
