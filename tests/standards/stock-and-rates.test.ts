import binomial from '@stdlib/stats-base-dists-binomial';
import normal from '@stdlib/stats-base-dists-normal';
import poisson from '@stdlib/stats-base-dists-poisson';
import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { binomialCdf, binomialUpperTail } from '../../core/science/binomial.ts';
import { normalCdf, normalQuantile } from '../../core/science/normal.ts';
import { poissonCdf, poissonPmf, poissonQuantile } from '../../core/science/poisson.ts';
import { reorderPoint, safetyStock } from '../../core/science/stock.ts';
import { wilsonInterval } from '../../core/science/wilson.ts';

const { jStat } = jstat;

describe('reorder point and safety stock', () => {
  it('lead-time demand 50, sd 5, risk 3 %: 9.40 and 59.40 (Stevenson 14e, ch. 12 ex. 8; known: seen)', () => {
    const demand = { mean: 50, spread: 5, leadTime: 1 };
    expect(safetyStock(demand, 0.97)).toBeCloseTo(9.4, 2);
    expect(reorderPoint(demand, 0.97)).toBeCloseTo(59.40397, 5);
  });

  it.each([
    ['demand varies', { spread: 3.2 }, 72.0371],
    ['lead time varies', { leadTimeSpread: 1.4 }, 99.4967],
    ['both vary', { spread: 3.2, leadTimeSpread: 1.4 }, 101.2902],
  ])(
    '15 a day, lead time 4, 97 per cent, %s (same chapter, first form seen, others from memory; computed)',
    (_what, spreads, point) => {
      expect(reorderPoint({ mean: 15, leadTime: 4, ...spreads }, 0.97)).toBeCloseTo(point, 4);
    },
  );

  it('ROP(0.9, 2500, 500, 6) = 16569.57 (CRAN SCperf; known: code seen, value computed)', () => {
    expect(reorderPoint({ mean: 2500, spread: 500, leadTime: 6 }, 0.9)).toBeCloseTo(16569.57, 2);
  });

  it('SS(0.95, 0.7, 2) = 1.628322 (CRAN SCperf; known: call seen, value computed)', () => {
    expect(safetyStock({ mean: 0, spread: 0.7, leadTime: 2 }, 0.95)).toBeCloseTo(1.628322, 6);
  });

  it('reorderpoint(50, 5, 6, .90) = 315.6957; lead-time sd 2: 429.1127 (CRAN inventorize; call seen, value computed)', () => {
    const demand = { mean: 50, spread: 5, leadTime: 6 };
    expect(reorderPoint(demand, 0.9)).toBeCloseTo(315.6957, 4);
    expect(reorderPoint({ ...demand, leadTimeSpread: 2 }, 0.9)).toBeCloseTo(429.1127, 4);
  });

  it('2500 a week, sd 500, lead 2: 6000 serves 0.92; 0.90 needs 906 (Chopra & Meindl; known: from memory, recomputed)', () => {
    const demand = { mean: 2500, spread: 500, leadTime: 2 };
    expect(normalCdf((6000 - 5000) / (500 * Math.SQRT2))).toBeCloseTo(0.92135, 5);
    expect(reorderPoint(demand, 0.9213503)).toBeCloseTo(6000, 1);
    expect(safetyStock(demand, 0.9)).toBeCloseTo(906.194, 3);
    expect(reorderPoint(demand, 0.9)).toBeCloseTo(5906.19, 2);
  });

  it('mean 350, sd 10, 5 % stock-out: 366.5 (Heizer & Render, ch. 12; known: from memory, recomputed)', () => {
    expect(reorderPoint({ mean: 350, spread: 10, leadTime: 1 }, 0.95)).toBeCloseTo(366.4485, 4);
  });
});

describe('normal distribution', () => {
  it.each([
    [0.8, 0.8416212336],
    [0.9, 1.2815515655],
    [0.95, 1.644853627],
    [0.97, 1.8807936082],
    [0.975, 1.9599639845],
    [0.98, 2.0537489106],
    [0.99, 2.326347874],
    [0.995, 2.5758293035],
    [0.999, 3.0902323062],
  ])('z of %d is %d (@stdlib 0.3.1 and jstat 1.9.6; known: computed)', (probability, z) => {
    expect(normalQuantile(probability)).toBeCloseTo(z, 9);
    expect(normalQuantile(probability)).toBeCloseTo(normal.quantile(probability, 0, 1), 13);
    expect(normalQuantile(probability)).toBeCloseTo(jStat.normal.inv(probability, 0, 1), 12);
  });

  it.each([
    [1.645, 0.9500150945],
    [1.96, 0.9750021049],
    [3, 0.998650102],
  ])('Φ(%d) is %d (@stdlib; known: computed)', (x, probability) => {
    expect(normalCdf(x)).toBeCloseTo(probability, 10);
    expect(normalCdf(x)).toBeCloseTo(jStat.normal.cdf(x, 0, 1), 12);
  });

  it('Φ agrees with @stdlib in relative terms to 1e-12 from -36 to 36', () => {
    for (let x = -36; x <= 36; x += 0.37) {
      expect(Math.abs(normalCdf(x) / normal.cdf(x, 0, 1) - 1)).toBeLessThan(1e-12);
    }
  });

  it('z agrees with @stdlib to 1e-12 from 0.001 to 0.999 (below 1e-16 @stdlib 0.3.1 gives -Infinity)', () => {
    for (let thousandths = 1; thousandths < 1000; thousandths++) {
      const probability = thousandths / 1000;
      expect(normalQuantile(probability)).toBeCloseTo(normal.quantile(probability, 0, 1), 12);
    }
    expect(normalQuantile(1e-300)).toBeCloseTo(-37.0471, 4); // R's qnorm(1e-300); known: from memory
  });
});

describe('Poisson', () => {
  it.each([
    [4, 2, 0.9473469827],
    [5, 2, 0.9834363915],
    [8, 4, 0.9786365655],
    [10, 5, 0.9863047314],
  ])('P(X ≤ %d; %d) = %d (@stdlib 0.2.2 and jstat; known: computed)', (count, mean, probability) => {
    expect(poissonCdf(count, mean)).toBeCloseTo(probability, 10);
    expect(poissonCdf(count, mean)).toBeCloseTo(poisson.cdf(count, mean), 13);
    expect(poissonCdf(count, mean)).toBeCloseTo(jStat.poisson.cdf(count, mean), 10);
  });

  it('P(X = 0; 2) = 0.1353352832 (known: computed)', () => {
    expect(poissonPmf(0, 2)).toBeCloseTo(0.1353352832, 10);
  });

  it.each([
    [0.95, 3, 6],
    [0.95, 4, 8],
    [0.98, 4, 9],
    [0.99, 2.5, 7],
  ])('quantile of %d at mean %d is %d (@stdlib; known: computed)', (probability, mean, count) => {
    expect(poissonQuantile(probability, mean)).toBe(count);
    expect(poisson.quantile(probability, mean)).toBe(count);
  });
});

describe('binomial', () => {
  it.each([
    [10, 0.1, 2, 0.9298091736],
    [20, 0.05, 0, 0.3584859224],
    [20, 0.05, 1, 0.7358395249],
  ])('n %d, p %d: P(X ≤ %d) = %d (@stdlib 0.2.2; known: computed)', (trials, rate, hits, probability) => {
    expect(binomialCdf(trials, hits, rate)).toBeCloseTo(probability, 10);
    expect(binomialCdf(trials, hits, rate)).toBeCloseTo(binomial.cdf(hits, trials, rate), 13);
    expect(binomialCdf(trials, hits, rate)).toBeCloseTo(jStat.binomial.cdf(hits, trials, rate), 9);
  });

  it('n 10, p 0.5: P(X ≥ 7) = 176/1024 (known: exact)', () => {
    expect(binomialUpperTail(10, 7, 0.5)).toBeCloseTo(176 / 1024, 14);
  });

  it('n 50, p 0.02: P(X ≥ 5) = 0.0032097420 (@stdlib; known: computed)', () => {
    expect(binomialUpperTail(50, 5, 0.02)).toBeCloseTo(0.003209742, 10);
    expect(binomialUpperTail(50, 5, 0.02)).toBeCloseTo(1 - binomial.cdf(4, 50, 0.02), 13);
  });
});

describe('intervals for a proportion', () => {
  it.each([
    [81, 263, 0.2553, 0.3662, 0.255289, 0.36621],
    [15, 148, 0.0624, 0.1605, 0.062386, 0.160487],
    [0, 20, 0, 0.1611, 0, 0.161125],
    [1, 29, 0.0061, 0.1718, 0.006113, 0.171755],
    [29, 29, 0.883, 1, 0.88303, 1],
  ])(
    'Wilson 95 per cent of %d/%d is %d to %d (Newcombe 1998, Table I, method 3; counts quoted, limits from memory, recomputed)',
    (hits, trials, low, high, lower, upper) => {
      const interval = wilsonInterval(hits, trials);
      expect(interval.lower).toBeCloseTo(low, 4);
      expect(interval.upper).toBeCloseTo(high, 4);
      expect(interval.lower).toBeCloseTo(lower, 6);
      expect(interval.upper).toBeCloseTo(upper, 6);
    },
  );

  it('exact 90 % of 4/20 is 0.071354 to 0.401029 (NIST/SEMATECH 7.2.4.2; set-up seen, limits from memory, recomputed)', () => {
    expect(jStat.beta.inv(0.05, 4, 17)).toBeCloseTo(0.0713539, 6);
    expect(jStat.beta.inv(0.95, 5, 16)).toBeCloseTo(0.4010281, 6);
    expect(binomialUpperTail(20, 4, 0.0713539)).toBeCloseTo(0.05, 6);
    expect(binomialCdf(20, 4, 0.4010281)).toBeCloseTo(0.05, 6);
  });

  it.each([
    [100, 0.029513],
    [300, 0.009936],
    [1000, 0.002991],
  ])(
    'none in %d: upper 95 per cent is %d, near 3/n (Hanley & Lippman-Hand, JAMA 1983; known: from memory, recomputed)',
    (trials, upper) => {
      expect(1 - 0.05 ** (1 / trials)).toBeCloseTo(upper, 6);
      expect(binomialCdf(trials, 0, 1 - 0.05 ** (1 / trials))).toBeCloseTo(0.05, 10);
      expect(Math.abs((upper * trials) / 3 - 1)).toBeLessThan(0.02);
    },
  );
});
