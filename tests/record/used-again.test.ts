import { describe, expect, test } from 'vitest';
import { Given, type Told } from './given.ts';

function used(more: { readonly scanner?: string; readonly samePatient?: true } = {}): Told {
  return { kind: 'used', tips: ['4'], ...more };
}
const onA = { scanner: 'A' };

/** Tip 4 sterile on the shelf, then "used tip 4 on blue" at 09:00. */
function usedOnce(): Given {
  return new Given().note('08:00', { kind: 'sterile', tips: ['4'] }).note('09:00', used(onA));
}

describe('"used" said once more of a tip with no load between', () => {
  test.each<[string, (given: Given) => Given]>([
    ['on the same scanner, an hour later', (given) => given.note('10:00', used(onA))],
    ['on the same scanner, the day after', (given) => given.note('+1 09:00', used(onA))],
    ['on another scanner', (given) => given.note('09:05', used({ scanner: 'B' }))],
    ['a third time', (given) => given.note('09:05', used(onA)).note('10:00', used(onA))],
  ])('given it is said %s, then it is warned of as another patient', (_name, notes) => {
    expect(notes(usedOnce()).found('unsafe-tip')).toMatchObject([{ tip: '4', by: 'used', again: false }]);
  });

  test.each<[string, (given: Given) => Given]>([
    ['by a colleague, minutes later', (given) => given.note('09:05', used(onA))],
    ['with no scanner, as how the tip is', (given) => given.note('10:00', used())],
    ['of the same patient', (given) => given.note('10:00', used({ ...onA, samePatient: true }))],
    [
      'after a load and a passed result',
      (given) =>
        given
          .note('09:30', { kind: 'load-started', load: '118', tips: ['4'] })
          .note('10:10', { kind: 'load-finished', load: '118', outcome: 'passed' })
          .note('10:30', used(onA)),
    ],
  ])('given it is said %s, then nothing is warned of', (_name, notes) => {
    expect(notes(usedOnce()).found('unsafe-tip')).toEqual([]);
  });

  test('given a scan was noted, then "used" hours later sums it up once, and a second one does not', () => {
    const given = new Given()
      .note('08:00', { kind: 'sterile', tips: ['4'] })
      .note('09:00', { kind: 'scan-started', scanner: 'A', tip: '4' })
      .note('09:10', { kind: 'scan-finished', scanner: 'A' })
      .note('12:00', used(onA));
    expect(given.found('unsafe-tip')).toEqual([]);
    expect(given.tip('4').uses).toBe(1);
    expect(given.note('14:00', used(onA)).found('unsafe-tip')).toHaveLength(1);
    expect(given.tip('4').uses).toBe(2);
  });

  test('given it came off unused in the record and its use is told late, then nothing is warned of', () => {
    const given = usedOnce()
      .note('09:30', { kind: 'load-started', load: '118', tips: ['4'] })
      .note('10:10', { kind: 'load-finished', load: '118', outcome: 'passed' })
      .note('10:30', { kind: 'fitted', tip: '4', scanner: 'A' })
      .note('10:50', { kind: 'removed', tips: ['4'] })
      .note('10:55', used(onA));
    expect(given.found('unsafe-tip')).toEqual([]);
  });
});
