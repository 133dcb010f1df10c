import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binomialCdf, binomialPmf, binomialUpperTail } from '../../core/science/binomial.ts';
import { normalCdf, normalQuantile } from '../../core/science/normal.ts';
import { poissonCdf, poissonPmf, poissonQuantile, poissonUpperTail } from '../../core/science/poisson.ts';
import { leadTimeDemandSpread, reorderPoint, safetyStock } from '../../core/science/stock.ts';
import { wilsonInterval } from '../../core/science/wilson.ts';

/** Pascal's triangle in whole numbers: an oracle that shares nothing with ours. */
function choose(n: number, k: number): bigint {
  let row = [1n];
  for (let i = 0; i < n; i++) row = [1n, ...row.slice(1).map((x, j) => x + (row[j] ?? 0n)), 1n];
  return row[k] ?? 0n;
}

/** P(X ≥ hits) at a rate of parts/whole as an exact fraction, then one division to 18 digits. */
function exactUpperTail(trials: number, hits: number, parts: number, whole: number): number {
  let top = 0n;
  for (let i = Math.max(0, hits); i <= trials; i++) {
    top += choose(trials, i) * BigInt(parts) ** BigInt(i) * BigInt(whole - parts) ** BigInt(trials - i);
  }
  return Number((top * 10n ** 40n) / BigInt(whole) ** BigInt(trials)) / 1e40;
}

describe('binomial', () => {
  it('equals whole-number arithmetic over the faults of 30 uses, far tails included', () => {
    const rate = fc
      .integer({ min: 1, max: 60 })
      .chain((whole) => fc.tuple(fc.integer({ min: 0, max: whole }), fc.constant(whole)));
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 30 }),
        fc.integer({ min: -1, max: 31 }),
        rate,
        (trials, hits, [parts, whole]) => {
          const exact = exactUpperTail(trials, hits, parts, whole);
          const ours = binomialUpperTail(trials, hits, parts / whole);
          expect(Math.abs(ours - exact)).toBeLessThanOrEqual(1e-12 * exact + 1e-38);
        },
      ),
    );
  });

  it('upper and lower tails and single terms add up', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 80 }),
        fc.integer({ min: -2, max: 82 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (trials, hits, rate) => {
          expect(binomialUpperTail(trials, hits, rate) + binomialCdf(trials, hits - 1, rate)).toBeCloseTo(
            1,
            11,
          );
          expect(binomialCdf(trials, hits, rate) - binomialCdf(trials, hits - 1, rate)).toBeCloseTo(
            binomialPmf(trials, hits, rate),
            11,
          );
        },
      ),
    );
  });

  it('is certain at the edges and refuses what is no rate or count', () => {
    expect([
      binomialUpperTail(5, 0, 0),
      binomialUpperTail(5, 1, 0),
      binomialUpperTail(5, 5, 1),
      binomialUpperTail(5, 6, 1),
    ]).toEqual([1, 0, 1, 0]);
    expect(binomialPmf(5, 2.5, 0.5)).toBe(0);
    for (const [trials, rate] of [
      [-1, 0.5],
      [2.5, 0.5],
      [3, -0.1],
      [3, 1.1],
      [3, Number.NaN],
    ] as const) {
      expect(() => binomialUpperTail(trials, 1, rate)).toThrow(RangeError);
    }
  });
});

describe('Poisson', () => {
  it('tails and terms add up, and the quantile is the least count that reaches', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 80 }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 0.9999, noNaN: true }),
        (count, mean, probability) => {
          expect(poissonUpperTail(count, mean) + poissonCdf(count - 1, mean)).toBeCloseTo(1, 11);
          expect(poissonCdf(count, mean) - poissonCdf(count - 1, mean)).toBeCloseTo(
            poissonPmf(count, mean),
            11,
          );
          const least = poissonQuantile(probability, mean);
          expect(poissonCdf(least, mean)).toBeGreaterThanOrEqual(probability - 1e-11);
          expect(least === 0 || poissonCdf(least - 1, mean) < probability).toBe(true);
        },
      ),
    );
  });

  it('keeps the digits of a far tail, and refuses what is no mean or probability', () => {
    expect(poissonUpperTail(40, 1) / 4.6209e-49).toBeCloseTo(1, 3); // e^-1 (1/40! + 1/41! + …)
    expect(poissonUpperTail(0, 3)).toBe(1);
    expect([poissonUpperTail(2.5, 3), poissonCdf(2.5, 3)]).toEqual([
      poissonUpperTail(3, 3),
      poissonCdf(2, 3),
    ]);
    expect([poissonQuantile(1, 3), poissonQuantile(0.9, 0)]).toEqual([Number.POSITIVE_INFINITY, 0]);
    expect(() => poissonPmf(1, -1)).toThrow(RangeError);
    expect(() => poissonQuantile(1.1, 1)).toThrow(RangeError);
  });
});

describe('normal', () => {
  it('quantile and distribution undo each other in relative terms, both tails', () => {
    fc.assert(
      fc.property(fc.double({ min: -37, max: 5, noNaN: true }), (x) => {
        expect(normalQuantile(normalCdf(x))).toBeCloseTo(x, 9);
        expect(normalCdf(x) + normalCdf(-x)).toBeCloseTo(1, 14);
      }),
    );
  });

  it('has no end, and refuses what is no probability', () => {
    expect([normalQuantile(0), normalQuantile(0.5), normalQuantile(1)]).toEqual([
      Number.NEGATIVE_INFINITY,
      0,
      Number.POSITIVE_INFINITY,
    ]);
    for (const probability of [-0.1, 1.1, Number.NaN])
      expect(() => normalQuantile(probability)).toThrow(RangeError);
  });
});

describe('Wilson', () => {
  it('holds the proportion, stays in 0 to 1, mirrors, and narrows with more trials', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 0, max: 200 }), (hits, misses) => {
        fc.pre(hits + misses > 0);
        const trials = hits + misses;
        const { lower, upper } = wilsonInterval(hits, trials);
        const mirror = wilsonInterval(misses, trials);
        expect(lower).toBeGreaterThanOrEqual(0);
        expect(upper).toBeLessThanOrEqual(1);
        expect(lower).toBeLessThanOrEqual(hits / trials);
        expect(upper).toBeGreaterThanOrEqual(hits / trials);
        expect(mirror.lower).toBeCloseTo(1 - upper, 12);
        const wider = wilsonInterval(hits * 4, trials * 4);
        expect(wider.upper - wider.lower).toBeLessThan(upper - lower);
      }),
    );
  });

  it('none is exactly 0 at the low end, all is exactly 1 at the high end, at every confidence', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        fc.double({ min: 0.5, max: 0.999, noNaN: true }),
        (trials, confidence) => {
          expect(wilsonInterval(0, trials, confidence).lower).toBe(0);
          expect(wilsonInterval(trials, trials, confidence).upper).toBe(1);
        },
      ),
    );
  });

  it('says nothing of no trials, and refuses nonsense', () => {
    expect(wilsonInterval(0, 0)).toEqual({ lower: 0, upper: 1 });
    expect(() => wilsonInterval(3, 2)).toThrow(RangeError);
    expect(() => wilsonInterval(-1, 2)).toThrow(RangeError);
    expect(() => wilsonInterval(1, 2, 1)).toThrow(RangeError);
  });
});

describe('stock', () => {
  it('needs no safety at even odds or without spread, and more at a higher level', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 0.1, max: 9, noNaN: true }),
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        (mean, spread, leadTime) => {
          expect(reorderPoint({ mean, leadTime }, 0.95)).toBe(mean * leadTime);
          expect(safetyStock({ mean, spread, leadTime }, 0.5)).toBeCloseTo(0, 12);
          expect(safetyStock({ mean, spread, leadTime }, 0.99)).toBeGreaterThan(
            safetyStock({ mean, spread, leadTime }, 0.95),
          );
          const both = leadTimeDemandSpread({ mean, spread, leadTime, leadTimeSpread: 2 });
          const apart = Math.hypot(
            leadTimeDemandSpread({ mean, spread, leadTime }),
            leadTimeDemandSpread({ mean, leadTime, leadTimeSpread: 2 }),
          );
          expect(both).toBeCloseTo(apart, 9);
        },
      ),
    );
  });
});
