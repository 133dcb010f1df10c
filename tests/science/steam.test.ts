import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { f0OfHold, f0OfProfile, lethalRate } from '../../core/science/f0.ts';
import { LOAD_TABLES } from '../../core/science/load-tables.ts';
import type { HoldFigures, HoldStandard } from '../../core/science/sterilisation.ts';
import { judgeHold } from '../../core/science/sterilisation.ts';

const celsius = fc.integer({ min: 1000, max: 1500 }).map((tenths) => tenths / 10);
const minutes = fc.integer({ min: 0, max: 400 }).map((tenths) => tenths / 10);

describe('F0', () => {
  it('adds over intervals, is tenfold at 10 K more, and of a steady profile is that of the hold', () => {
    fc.assert(
      fc.property(celsius, minutes, minutes, (temperature, a, b) => {
        expect(f0OfHold(temperature, a) + f0OfHold(temperature, b)).toBeCloseTo(
          f0OfHold(temperature, a + b),
          6,
        );
        expect(lethalRate(temperature + 10) / lethalRate(temperature)).toBeCloseTo(10, 9);
        const steady = [0, a, a + b].map((minute) => ({ minute, celsius: temperature }));
        expect(f0OfProfile(steady)).toBeCloseTo(f0OfHold(temperature, a + b), 6);
      }),
    );
  });

  it('of a profile does not change when each steady step is read twice as often', () => {
    const steps = fc.array(celsius, { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(steps, (temperatures) => {
        const read = (times: number) =>
          temperatures.flatMap((temperature, i) =>
            Array.from({ length: times + 1 }, (_, j) => ({ minute: i + j / times, celsius: temperature })),
          );
        const once = f0OfProfile(read(1));
        expect(f0OfProfile(read(2)) / once).toBeCloseTo(1, 9);
      }),
    );
  });

  it('of no profile is 0, and a profile that goes back in time is refused', () => {
    expect(f0OfProfile([])).toBe(0);
    expect(f0OfProfile([{ minute: 3, celsius: 134 }])).toBe(0);
    expect(() =>
      f0OfProfile([
        { minute: 1, celsius: 134 },
        { minute: 0, celsius: 134 },
      ]),
    ).toThrow(RangeError);
  });
});

describe('judging a hold', () => {
  it('the UK bands, written out a second time', () => {
    fc.assert(
      fc.property(celsius, minutes, (temperature, held) => {
        const inside = (from: number, to: number): boolean => temperature >= from && temperature <= to;
        const needed = inside(134, 137) ? 3 : inside(126, 129) ? 10 : inside(121, 124) ? 15 : undefined;
        const expected = needed === undefined ? 'no-value' : held >= needed ? 'met' : 'short';
        expect(judgeHold({ celsius: temperature, minutes: held }, { table: 'uk' }).judged).toBe(expected);
      }),
    );
  });

  it('longer never does worse', () => {
    const table = fc.constantFrom(...(['uk', 'us-gravity', 'us-prevacuum'] as const));
    fc.assert(
      fc.property(celsius, minutes, minutes, table, (temperature, held, more, name) => {
        const before = judgeHold({ celsius: temperature, minutes: held }, { table: name }).judged;
        const after = judgeHold({ celsius: temperature, minutes: held + more }, { table: name }).judged;
        const allowed = { met: ['met'], short: ['short', 'met'], 'no-value': ['no-value'], 'not-judged': [] };
        expect(allowed[before]).toContain(after);
      }),
    );
  });

  it('every row names its source and how it is known', () => {
    for (const row of Object.values(LOAD_TABLES).flat()) {
      expect(row.source.length).toBeGreaterThan(10);
      expect(['seen', 'quoted', 'computed', 'from memory']).toContain(row.known);
    }
  });

  const own: HoldStandard = { table: 'uk', cycles: [{ celsius: 134, minutes: 3.5 }] };
  it.each<readonly [string, HoldFigures, HoldStandard, object]>([
    [
      'a US row reaches 3 °C up',
      { celsius: 135, minutes: 15 },
      { table: 'us-gravity' },
      { judged: 'met', requiredMinutes: 15 },
    ],
    [
      'and no further',
      { celsius: 135.1, minutes: 60 },
      { table: 'us-gravity' },
      { judged: 'no-value', by: 'table' },
    ],
    ['and not down', { celsius: 131.9, minutes: 60 }, { table: 'us-gravity' }, { judged: 'no-value' }],
    ['own cycle met', { celsius: 134, minutes: 3.5 }, own, { judged: 'met', requiredMinutes: 3.5 }],
    ['own cycle, top of its band', { celsius: 137, minutes: 3.5 }, own, { judged: 'met' }],
    [
      'own cycle missed though the table would pass',
      { celsius: 134, minutes: 3 },
      own,
      { judged: 'short', requiredMinutes: 3.5, shortByMinutes: 0.5 },
    ],
    [
      'a temperature of the table but of no own cycle',
      { celsius: 121, minutes: 60 },
      own,
      { judged: 'no-value', by: 'cycles' },
    ],
    ['below the own cycle', { celsius: 133.9, minutes: 60 }, own, { judged: 'no-value', by: 'cycles' }],
    [
      'the low edge, whatever the binary fractions do (134.3 + 0.3 is above 134.6)',
      { celsius: 134.6, minutes: 4 },
      { cycles: [{ celsius: 134.3, minutes: 4 }], sensorErrorKelvin: 0.3 },
      { judged: 'met' },
    ],
    [
      'the top edge, whatever they do (120.1 + 2.1 is below 122.2)',
      { celsius: 122.2, minutes: 4 },
      { cycles: [{ celsius: 120.1, minutes: 4 }], aboveKelvin: 2.1 },
      { judged: 'met' },
    ],
    [
      'two own cycles: the shorter is enough',
      { celsius: 134, minutes: 4 },
      {
        cycles: [
          { celsius: 134, minutes: 18 },
          { celsius: 134, minutes: 3.5 },
        ],
      },
      { judged: 'met', requiredMinutes: 3.5 },
    ],
    [
      'two own cycles: the longest met is named',
      { celsius: 134, minutes: 18 },
      {
        cycles: [
          { celsius: 134, minutes: 3.5 },
          { celsius: 134, minutes: 18 },
        ],
      },
      { judged: 'met', requiredMinutes: 18 },
    ],
    [
      'two own cycles, neither met: the nearer is named',
      { celsius: 134, minutes: 3 },
      {
        cycles: [
          { celsius: 134, minutes: 18 },
          { celsius: 134, minutes: 3.5 },
        ],
      },
      { judged: 'short', requiredMinutes: 3.5 },
    ],
    [
      'an empty list of own cycles is none',
      { celsius: 134, minutes: 3 },
      { table: 'uk', cycles: [] },
      { judged: 'met' },
    ],
    ['no table', { celsius: 134, minutes: 3 }, {}, { judged: 'not-judged', because: 'no-table' }],
    [
      'temperature not said',
      { minutes: 3 },
      { table: 'uk' },
      { judged: 'not-judged', because: 'celsius-not-said' },
    ],
    [
      'time not said',
      { celsius: 134 },
      { table: 'uk' },
      { judged: 'not-judged', because: 'minutes-not-said' },
    ],
    [
      'time not said, but no time would do',
      { celsius: 130 },
      { table: 'uk' },
      { judged: 'no-value', celsius: 130 },
    ],
  ])('%s', (_what, figures, standard, expected) => {
    expect(judgeHold(figures, standard)).toMatchObject(expected);
  });
});
