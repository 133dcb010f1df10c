import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../core/science/normal.ts';
import { reorder, type TipStock } from '../../core/supply/reorder.ts';

const stock: TipStock = {
  cyclesLeft: [20, 30, 50],
  usesPerDay: [4, 6, 5, 5, 5],
  leadDays: 4,
  cyclesPerTip: 100,
  coverDays: 40,
  serviceLevel: 0.95,
};

describe('reordering tips', () => {
  it('given 100 cycles left and 5 uses a day, then the point, the day and the number follow', () => {
    const spread = Math.sqrt(2 / 4);
    const point = 20 + normalQuantile(0.95) * spread * 2; // z·σ·√L with L = 4
    expect(reorder(stock)).toEqual({
      cyclesLeft: 100,
      meanPerDay: 5,
      spreadPerDay: expect.closeTo(spread, 12),
      reorderPoint: expect.closeTo(point, 12),
      orderInDays: expect.closeTo((100 - point) / 5, 12),
      tips: 2, // 200 cycles for 40 days at 5
    });
  });

  it('given fewer cycles than the point, then order now, and enough to make up for it', () => {
    const now = reorder({ ...stock, cyclesLeft: [1] });
    expect(now?.orderInDays).toBe(0);
    expect(now?.tips).toBe(3);
  });

  it('given a tip past its limit, then it takes nothing from the others', () => {
    expect(reorder({ ...stock, cyclesLeft: [50, -3] })?.cyclesLeft).toBe(50);
  });

  it('given a lead time that varies, then the point is higher', () => {
    expect(reorder({ ...stock, leadDaysSpread: 2 })?.reorderPoint).toBeGreaterThan(
      reorder(stock)?.reorderPoint ?? Number.NaN,
    );
  });

  it('given just whole tips, then rounding noise orders no tip more', () => {
    const usesPerDay = [7, ...Array<number>(99).fill(0)];
    expect(reorder({ ...stock, usesPerDay, coverDays: 100, cyclesPerTip: 7 })?.tips).toBe(1);
  });

  it.each([
    ['four days of use', [5, 5, 5, 5]],
    ['none used', [0, 0, 0, 0, 0]],
    ['no days', []],
  ])('given %s, then nothing is said', (_what, usesPerDay) => {
    expect(reorder({ ...stock, usesPerDay })).toBeUndefined();
  });

  it.each([0, -1, Number.NaN])('refuses a new tip of %d cycles', (cyclesPerTip) => {
    expect(() => reorder({ ...stock, cyclesPerTip })).toThrow(RangeError);
  });

  it('the order brings the stock at ordering to the point plus the cover, with less than one tip over', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 5, maxLength: 60 }),
        fc.integer({ min: 0, max: 900 }),
        (usesPerDay, left) => {
          const found = reorder({ ...stock, usesPerDay, cyclesLeft: [left] });
          fc.pre(found !== undefined);
          const atOrder = left - found.orderInDays * found.meanPerDay;
          const after = atOrder + found.tips * stock.cyclesPerTip;
          const wanted = found.reorderPoint + found.meanPerDay * stock.coverDays;
          expect(after).toBeGreaterThanOrEqual(wanted - 1e-6);
          expect(found.tips === 1 || after - stock.cyclesPerTip < wanted).toBe(true);
        },
      ),
    );
  });
});
