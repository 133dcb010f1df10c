import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { median, percentile } from '../../core/science/median.ts';
import { spreadBookings } from '../../core/supply/spread-bookings.ts';
import { learnTurnaround } from '../../core/supply/turnaround.ts';
import { HOUR, MINUTE } from '../../core/time/instant.ts';

const NOW = Date.UTC(2026, 10, 23, 8, 30);
const loads = (minutes: readonly number[]) =>
  minutes.map((length, i) => ({
    sentAt: NOW + i * HOUR * 24,
    sterileAt: NOW + i * HOUR * 24 + length * MINUTE,
  }));

describe('turnaround', () => {
  it.each<readonly [string, number[], object]>([
    ['no load: 90 min assumed', [], { medianMinutes: 90, loads: 0 }],
    ['four loads: still assumed', [60, 60, 60, 60], { medianMinutes: 90, loads: 0 }],
    ['five loads: their median', [60, 70, 80, 100, 200], { medianMinutes: 80, spreadMinutes: 120, loads: 5 }],
    [
      'six loads: the mean of the middle two',
      [60, 70, 80, 90, 100, 110],
      { medianMinutes: 85, spreadMinutes: 25, loads: 6 },
    ],
    [
      'the last twenty only',
      [...Array<number>(30).fill(500), ...Array<number>(20).fill(75)],
      { medianMinutes: 75, spreadMinutes: 0, loads: 20 },
    ],
    ['a slip is left out', [60, 60, 60, 60, 0], { medianMinutes: 90, loads: 0 }],
    [
      'so is one that ended before it was sent',
      [60, 60, 60, 60, 60, -10],
      { medianMinutes: 60, spreadMinutes: 0, loads: 5 },
    ],
  ])('%s', (_what, minutes, expected) => {
    expect(learnTurnaround(loads(minutes))).toEqual(expected);
  });

  it('does not depend on the order of the loads', () => {
    const lengths = fc.array(fc.integer({ min: 1, max: 300 }), { maxLength: 40 });
    fc.assert(
      fc.property(lengths, (minutes) => {
        expect(learnTurnaround(loads(minutes).reverse())).toEqual(learnTurnaround(loads(minutes)));
      }),
    );
  });
});

describe('median and percentile', () => {
  it('as many values on either side; nearest rank', () => {
    const values = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(values, fc.integer({ min: 1, max: 100 }), (xs, percent) => {
        const middle = median(xs) ?? Number.NaN;
        expect(xs.filter((x) => x < middle).length).toBeLessThanOrEqual(xs.length / 2);
        expect(xs.filter((x) => x > middle).length).toBeLessThanOrEqual(xs.length / 2);
        const rank = percentile(xs, percent / 100) ?? Number.NaN;
        expect(xs.filter((x) => x <= rank).length).toBeGreaterThanOrEqual((xs.length * percent) / 100 - 1e-9);
        expect(xs.filter((x) => x < rank).length).toBeLessThan((xs.length * percent) / 100);
      }),
    );
    expect([median([]), percentile([], 0.9)]).toEqual([undefined, undefined]);
  });
});

describe('bookings with no times', () => {
  const morning = { from: NOW, to: NOW + 4 * HOUR };
  const afternoon = { from: NOW + 5 * HOUR, to: NOW + 9 * HOUR };

  it('start with their share of the open time, the break left out', () => {
    expect(spreadBookings(4, [afternoon, morning])).toEqual([
      NOW,
      NOW + 2 * HOUR,
      NOW + 5 * HOUR,
      NOW + 7 * HOUR,
    ]);
    expect(spreadBookings(3, [{ from: NOW, to: NOW + 100 * MINUTE }])).toEqual(
      [0, 33, 66].map((minute) => NOW + minute * MINUTE),
    );
  });

  it.each([
    ['none booked', 0, [morning]],
    ['fewer than none', -2, [morning]],
    ['shut all day', 3, []],
    ['hours the wrong way round', 3, [{ from: NOW, to: NOW - HOUR }]],
  ])('%s: none', (_what, count, hours) => {
    expect(spreadBookings(count, hours)).toEqual([]);
  });

  it('are all inside the hours, in order, and as far apart in open time to within a minute', () => {
    const length = fc.integer({ min: 1, max: 300 });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        length,
        fc.integer({ min: 0, max: 120 }),
        length,
        (count, first, gap, second) => {
          const hours = [
            { from: NOW, to: NOW + first * MINUTE },
            { from: NOW + (first + gap) * MINUTE, to: NOW + (first + gap + second) * MINUTE },
          ];
          const starts = spreadBookings(count, hours);
          expect(starts).toHaveLength(count);
          const openMinutes = starts.map((start) => {
            const minute = (start - NOW) / MINUTE;
            expect(hours.some(({ from, to }) => start >= from && start < to)).toBe(true);
            return minute < first ? minute : minute - gap;
          });
          openMinutes.forEach((minute, i) => {
            expect(Math.abs(minute - ((first + second) * i) / count)).toBeLessThanOrEqual(1);
          });
        },
      ),
    );
  });
});
