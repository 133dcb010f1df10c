import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dewPoint,
  dewPointOfPressure,
  relativeHumidity,
  saturationPressure,
} from '../../core/science/dew-point.ts';
import {
  ambientFrom,
  temperatureAfter,
  timeConstantFrom,
  timeToReach,
  timeToWithin,
} from '../../core/science/first-order.ts';
import { gapOnArrival, settlingMinutes, wholeMinutesUp } from '../../core/science/settling.ts';
import { warmUpSeconds } from '../../core/science/warm-up.ts';

const celsius = fc.double({ min: -20, max: 50, noNaN: true });
const humidity = fc.double({ min: 0.05, max: 1, noNaN: true });
const tau = fc.double({ min: 1, max: 100, noNaN: true });
const minutes = fc.double({ min: 0.1, max: 200, noNaN: true });

describe('dew point', () => {
  it('is undone by relative humidity, never above the air, and the same by way of pressure', () => {
    fc.assert(
      fc.property(celsius, humidity, (air, fraction) => {
        const point = dewPoint(air, fraction);
        expect(relativeHumidity(air, point)).toBeCloseTo(fraction, 10);
        expect(point).toBeLessThanOrEqual(air + 1e-9);
        expect(dewPointOfPressure(fraction * saturationPressure(air))).toBeCloseTo(point, 9);
      }),
    );
  });

  it('rises with humidity and with the air', () => {
    fc.assert(
      fc.property(celsius, fc.double({ min: 0.05, max: 0.99, noNaN: true }), (air, fraction) => {
        expect(dewPoint(air, fraction + 0.01)).toBeGreaterThan(dewPoint(air, fraction));
        expect(dewPoint(air + 0.1, fraction)).toBeGreaterThan(dewPoint(air, fraction));
      }),
    );
  });

  it.each([0, -0.1, 1.01, 45, Number.NaN])('refuses a humidity of %d', (fraction) => {
    expect(() => dewPoint(20, fraction)).toThrow(RangeError);
  });

  it.each([0, -1, Number.NaN])('refuses a pressure of %d', (pressure) => {
    expect(() => dewPointOfPressure(pressure)).toThrow(RangeError);
  });
});

describe('heating and cooling', () => {
  it('time to reach and temperature after undo each other', () => {
    fc.assert(
      fc.property(
        celsius,
        celsius,
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        tau,
        (start, ambient, share, tc) => {
          fc.pre(Math.abs(start - ambient) > 0.1);
          const target = start + (ambient - start) * share;
          const time = timeToReach(start, ambient, target, tc);
          expect(temperatureAfter(start, ambient, time, tc)).toBeCloseTo(target, 8);
          expect(timeConstantFrom(start, ambient, target, time) / tc).toBeCloseTo(1, 8);
          expect(timeToWithin(start - ambient, Math.abs(target - ambient), tc)).toBeCloseTo(time, 6);
        },
      ),
    );
  });

  it('recovers unknown surroundings from three readings', () => {
    fc.assert(
      fc.property(celsius, celsius, minutes, tau, (start, ambient, step, tc) => {
        fc.pre(Math.abs(start - ambient) > 1 && step / tc > 0.05 && step / tc < 4);
        const at = (n: number): number => temperatureAfter(start, ambient, n * step, tc);
        expect(ambientFrom(at(0), at(1), at(2))).toBeCloseTo(ambient, 5);
      }),
    );
  });

  it.each([
    [20, 20, 20],
    [20, 21, 22],
    [20, 21, 23],
    [20, 21, 20],
  ])('readings of %d, %d, %d say nothing of the surroundings', (a, b, c) => {
    expect(ambientFrom(a, b, c)).toBeUndefined();
  });

  it.each([
    ['beyond the surroundings', 5, 21, 22],
    ['the surroundings themselves', 5, 21, 21],
    ['away from the surroundings', 5, 21, 4],
    ['anything, once settled', 21, 21, 22],
  ])('never reaches %s', (_what, start, ambient, target) => {
    expect(timeToReach(start, ambient, target, 10)).toBe(Number.POSITIVE_INFINITY);
  });

  it('has reached at once what it starts at, and refuses a reading that no time constant explains', () => {
    expect(timeToReach(21, 21, 21, 10)).toBe(0);
    expect(timeToReach(5, 21, 5, 10)).toBe(0);
    expect(timeToWithin(4, 0, 10)).toBe(Number.POSITIVE_INFINITY);
    expect(() => timeConstantFrom(5, 21, 22, 10)).toThrow(RangeError);
    expect(() => timeConstantFrom(5, 21, 5, 10)).toThrow(RangeError);
  });
});

describe('settling', () => {
  const settings = { withinKelvin: 3, tauMinutes: 20 };

  it.each([-3, -1, 0, 2.9, 3])('a difference of %d K is settled at once', (gapKelvin) => {
    expect(settlingMinutes({ gapKelvin, ...settings })).toBe(0);
  });

  it('does not depend on the sign and never falls as the difference grows', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60, noNaN: true }), (gap) => {
        const now = settlingMinutes({ gapKelvin: gap, ...settings });
        expect(settlingMinutes({ gapKelvin: -gap, ...settings })).toBe(now);
        expect(settlingMinutes({ gapKelvin: gap + 1, ...settings })).toBeGreaterThanOrEqual(now);
      }),
    );
  });

  it('on arrival: no journey leaves the gap of the sites, a long one the car’s, any between stays between', () => {
    const journey = { carKelvin: 10, tauMinutes: 20 };
    expect(gapOnArrival({ ...journey, gapKelvin: -4, journeyMinutes: 0 })).toBe(4);
    expect(gapOnArrival({ ...journey, gapKelvin: 4, journeyMinutes: 2000 })).toBeCloseTo(10, 9);
    expect(gapOnArrival({ ...journey, gapKelvin: 4, journeyMinutes: 20 })).toBeCloseTo(
      4 / Math.E + 10 * (1 - 1 / Math.E),
      12,
    );
    expect(gapOnArrival({ ...journey, gapKelvin: 4, journeyMinutes: -5 })).toBe(4);
    fc.assert(
      fc.property(fc.double({ min: -30, max: 30, noNaN: true }), minutes, (gapKelvin, journeyMinutes) => {
        const gap = gapOnArrival({ ...journey, gapKelvin, journeyMinutes });
        expect(gap).toBeGreaterThanOrEqual(Math.min(Math.abs(gapKelvin), 10) - 1e-9);
        expect(gap).toBeLessThanOrEqual(Math.max(Math.abs(gapKelvin), 10) + 1e-9);
      }),
    );
  });

  it.each([
    [0, 0],
    [0.01, 1],
    [24.08, 25],
    [25, 25],
    [25.000000000001, 25],
    [-3, 0],
  ])('%d min is told as %d', (exact, told) => {
    expect(wholeMinutesUp(exact)).toBe(told);
  });
});

describe('warm-up', () => {
  it('is 41 ln((40 - room)/6), never under 30 s, and never longer in a warmer room', () => {
    fc.assert(
      fc.property(fc.double({ min: -10, max: 45, noNaN: true }), (room) => {
        const seconds = warmUpSeconds(room);
        expect(seconds).toBeCloseTo(room >= 34 ? 30 : Math.max(30, 41 * Math.log((40 - room) / 6)), 9);
        expect(warmUpSeconds(room + 0.5)).toBeLessThanOrEqual(seconds);
      }),
    );
  });
});
