import binomial from '@stdlib/stats-base-dists-binomial';
import { describe, expect, it } from 'vitest';
import { faultReply } from '../../../core/rules/faults/fault-reply.ts';
import { unlikelyFaults } from '../../../core/rules/faults/unlikely.ts';
import type { Given, Told } from '../given.ts';
import { calibrated, words } from './ferngate.ts';

const WED = '2026-11-25';

/** So many scans with a tip, each with the wipe-down that makes the next one another. */
function scans(tip: string, count: number): readonly Told[] {
  return Array.from({ length: count }, (): readonly Told[] => [
    { kind: 'fitted', tip, scanner: 'A' },
    { kind: 'scan-finished', scanner: 'A', tip },
    { kind: 'wiped', scanner: 'A', part: 'all' },
  ]).flat();
}

/** Tip 1 and the others, each with so many uses and then so many faults. */
function record(
  own: readonly [uses: number, faults: number],
  others: readonly [uses: number, faults: number],
): Given {
  const given = calibrated();
  const many = (tip: string, [uses, faults]: readonly [number, number]) => {
    const told = Array.from(
      { length: faults },
      (): Told => ({ kind: 'fault', item: `tip:${tip}`, sort: 'fogging' }),
    );
    given.note(`${WED} 09:00`, [...scans(tip, uses), ...told]);
  };
  many('2', others);
  many('1', own);
  return given;
}

describe('a tip with more faults than chance gives', () => {
  // Exact binomial tail, P(X ≥ k) in n at the others’ rate: @stdlib/stats-base-dists-binomial.
  const cases: readonly (readonly [own: readonly [number, number], others: readonly [number, number]])[] = [
    [
      [10, 3],
      [40, 1],
    ],
    [
      [10, 3],
      [40, 4],
    ],
    [
      [30, 4],
      [40, 1],
    ],
    [
      [30, 5],
      [40, 2],
    ],
    [
      [30, 3],
      [40, 2],
    ],
    [
      [20, 2],
      [40, 0],
    ],
    [
      [20, 3],
      [40, 0],
    ],
  ];
  it.each(cases)('own %j, others %j', (own, others) => {
    const given = record(own, others);
    const [uses, faults] = own;
    const tail = 1 - binomial.cdf(faults - 1, uses, others[1] / others[0]);
    const unlikely = unlikelyFaults(given.practice, given.state, 'tip:1');
    expect(unlikely !== null).toBe(faults >= 3 && tail < 0.01);
    if (unlikely === null) return;
    expect(unlikely).toMatchObject({ faults, uses, othersFaults: others[1], othersUses: others[0] });
    expect(unlikely.tail).toBeCloseTo(tail, 10);
  });

  it('faults before its last 30 uses do not count', () => {
    const given = record([3, 3], [40, 0]);
    given.note(`${WED} 10:00`, scans('1', 29));
    expect(unlikelyFaults(given.practice, given.state, 'tip:1')).toMatchObject({ faults: 3, uses: 30 });
    given.note(`${WED} 11:00`, scans('1', 1));
    expect(unlikelyFaults(given.practice, given.state, 'tip:1')).toBeNull();
  });

  it('nothing to compare with: not named', () => {
    expect(unlikelyFaults(record([5, 4], [0, 0]).practice, record([5, 4], [0, 0]).state, 'tip:1')).toBeNull();
  });

  it('is named in the reply to the fault, with the figures', () => {
    const given = record([10, 2], [40, 1]);
    const turn = given.note(`${WED} 10:00`, { kind: 'fault', item: 'tip:1', sort: 'other' });
    const speeches = given.timeline
      .ofTurn(turn)
      .flatMap((entry) => faultReply(entry, given.view(`${WED} 10:00`)));
    expect(speeches.map(({ about, items }) => [about, ...items])).toEqual([['fault', 'tip:1']]);
    expect(words(speeches[0]?.message ?? [])).toEqual([
      'Tip 1 stands out: 3 faults in its last 10 uses; the other tips together 1 in 40. Chance alone gives that less than once in 100 times.',
      'Tip 1: fault noted.',
      '• In doubt, hold it: “don’t use it”.',
    ]);
  });
});

describe('fogging', () => {
  function advice(given: Given, item: string): readonly string[] {
    const turn = given.note(`${WED} 10:05`, { kind: 'fault', item, sort: 'fogging' });
    const [entry] = given.timeline.ofTurn(turn);
    const [speech] = entry === undefined ? [] : faultReply(entry, given.view(`${WED} 10:05`));
    return words(speech?.message ?? []);
  }

  it('follows the cause: the room, how long it warmed, pushed home, mirror clean', () => {
    const given = calibrated();
    given.note(`${WED} 08:40`, { kind: 'temperature', celsius: 17.5, site: 'quay', room: 's1' });
    given.note(`${WED} 08:45`, { kind: 'moved', items: ['scanner:A'], site: 'quay', room: 's1' });
    given.note(`${WED} 10:00`, { kind: 'fitted', tip: '4', scanner: 'A' });
    given.note(`${WED} 10:01`, { kind: 'scan-started', scanner: 'A' });
    expect(advice(given, 'tip:4')).toEqual([
      'Tip 4: fogging.',
      '• Warm it 54 s just before scanning: it was 17.5 °C in Surgery 1 at 08:40. By the notes it had 60 s.',
      '• Tip pushed fully home, so that it takes up heat.',
      '• Mirror clean and dry: a film fogs first.',
    ]);
  });

  it('with no reading of the room', () => {
    expect(advice(calibrated(), 'scanner:A')[1]).toBe(
      '• Warm it 60 s just before scanning: no fresh reading of the room is known.',
    );
  });
});

describe('other faults', () => {
  it.each([
    ['scanner:A', 'dropped', '• It is held until it passes its calibration.'],
    [
      'scanner:A',
      'connection',
      '• Check each plug where the maker says; never a network socket or switch. Start it again.',
    ],
    ['tip:4', 'dropped', '• It counts as used until its next passed load.'],
    ['tip:4', 'pack', '• It counts as used until its next passed load.'],
    [
      'tip:4',
      'mirror',
      '• It is held: a damaged mirror or body must not go in a mouth. Retire it, or release it if it is sound.',
    ],
  ] as const)('%s %s', (item, sort, line) => {
    const given = calibrated();
    const turn = given.note(`${WED} 10:00`, { kind: 'fault', item, sort });
    const speeches = given.timeline
      .ofTurn(turn)
      .flatMap((entry) => faultReply(entry, given.view(`${WED} 10:00`)));
    expect(words(speeches[0]?.message ?? [])[1]).toBe(line);
  });

  it('of an item that the record does not have: no reply', () => {
    const given = calibrated();
    const turn = given.note(`${WED} 10:00`, { kind: 'fault', item: 'tip:44', sort: 'other' });
    expect(
      given.timeline.ofTurn(turn).flatMap((entry) => faultReply(entry, given.view(`${WED} 10:00`))),
    ).toEqual([]);
  });
});
