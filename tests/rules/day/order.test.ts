import { describe, expect, it } from 'vitest';
import { orderNow } from '../../../core/rules/day/order/tip-stock.ts';
import { Given } from '../given.ts';
import { play, told } from '../play.ts';
import { ONE_SITE } from './practices.ts';

const TIPS = ['1', '2', '3', '4', '5', '6'];
const WEEKDAYS = ['2026-11-16', '2026-11-17', '2026-11-18', '2026-11-19', '2026-11-20'];

/** Six tips with that many cycles gone; two of them used on each of five open days. */
function used(cyclesSoFar: number, days = WEEKDAYS): Given {
  const given = new Given(ONE_SITE.replace('cycles: 100}', `cycles: 100, cyclesSoFar: ${cyclesSoFar}}`));
  given.note('2026-11-16 08:00', { kind: 'sterile', tips: TIPS });
  for (const date of days) given.note(`${date} 10:00`, { kind: 'used', tips: ['1', '2'] });
  return given;
}

describe('given tips with a limit and a week of use', () => {
  it('when the cycles left reach the reorder point, then it is: use × lead time, as nothing varies', () => {
    // 2 a day for the 5 open days in the 7 days of lead time: 10 cycles. Six tips with one or two left have 6 or 12.
    expect(orderNow(used(99).view('2026-11-23 09:00'))).toMatchObject({
      cyclesLeft: 6,
      meanPerDay: 2,
      spreadPerDay: 0,
      reorderPoint: 10,
      leadDays: 5,
    });
    expect(orderNow(used(98).view('2026-11-23 09:00'))).toBeNull();
  });

  it('when use varies, then the point lies higher: 95 % of the time the stock must last', () => {
    const given = used(98, WEEKDAYS.slice(0, 4));
    given.note('2026-11-20 10:00', { kind: 'used', tips: TIPS });
    // Uses 2, 2, 2, 2, 6: mean 2.8, spread √3.2; point 2.8·5 + 1.645·√(5·3.2) = 20.58 (normal quantile, core/science/normal).
    expect(orderNow(given.view('2026-11-23 09:00'))?.reorderPoint).toBeCloseTo(14 + 1.6449 * 4, 3);
  });

  it('when tips were used on a day on which no site is open, then that day counts too', () => {
    const given = used(99);
    given.note('2026-11-21 10:00', { kind: 'used', tips: ['1', '2', '3', '4', '5', '6', '1', '2'] });
    expect(orderNow(given.view('2026-11-23 09:00'))?.meanPerDay).toBeCloseTo(16 / 6, 9);
  });

  it('when four open days of use are on record, then that is too little to say anything', () => {
    expect(orderNow(used(99, WEEKDAYS.slice(1)).view('2026-11-21 09:00'))).toBeNull();
  });

  it('when closed days lie ahead, then fewer are used before an order comes', () => {
    const given = used(99);
    given.note('2026-11-20 12:00', {
      kind: 'closed',
      days: ['2026-11-24', '2026-11-25', '2026-11-26', '2026-11-27'],
    });
    // One open day in the 7 days of lead time: 2 cycles are enough to wait for it, and 6 are left.
    expect(orderNow(given.view('2026-11-23 09:00'))).toBeNull();
  });

  it('when it is crossed, then it is said once, when the site opens, and not again until tips were added', () => {
    const given = used(99);
    const orders = (from: string, to: string) =>
      told(play(given, from, to), 'order').filter((text) => text.includes('cycles are left in all'));
    expect(orders('2026-11-22 20:00', '2026-11-25 12:00')).toEqual([
      [
        '2026-11-23 08:30 Order 2 tips: 6 cycles are left in all.',
        'Use is 2 a day and an order takes 5 open days, so order at 10 or under.',
      ].join('\n'),
    ]);
  });

  it('when no tip has a limit, then nothing is worked out', () => {
    const given = new Given(ONE_SITE.replace(', cycles: 100', ''));
    for (const date of WEEKDAYS) given.note(`${date} 10:00`, { kind: 'used', tips: ['1'] });
    expect(orderNow(given.view('2026-11-23 09:00'))).toBeNull();
  });
});
