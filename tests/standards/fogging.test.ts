import psychrolib from 'psychrolib';
import { beforeAll, describe, expect, it } from 'vitest';
import type { MagnusConstants } from '../../core/science/dew-point.ts';
import {
  dewPoint,
  dewPointOfPressure,
  MAGNUS,
  relativeHumidity,
  saturationPressure,
} from '../../core/science/dew-point.ts';
import { timeToReach } from '../../core/science/first-order.ts';
import { WARM_UP, warmUpSeconds } from '../../core/science/warm-up.ts';

const { alduchovEskridge, sonntag, bolton } = MAGNUS;

beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));

describe('Magnus constants', () => {
  it.each<readonly [string, MagnusConstants, number]>([
    ['Alduchov & Eskridge, J Appl Meteor 1996;35:601 (quoted; e0 from memory)', alduchovEskridge, 16.6977],
    ['Sonntag, Z Meteorol 1990;70:340, WMO-No. 8 (quoted)', sonntag, 16.6931],
  ])('25 °C, 60 per cent: %s', (_source, constants, celsius) => {
    expect(dewPoint(25, 0.6, constants)).toBeCloseTo(celsius, 4);
  });

  it('22 hPa has its dew point at 19.0291018 °C (Bolton 1980 eq. 10, MetPy docs; known: seen)', () => {
    expect(dewPointOfPressure(22, bolton)).toBeCloseTo(19.0291018, 7);
  });

  it('25 °C with a dew point of 12 °C is 44.2484765 % (MetPy 1.4 docs; known: seen)', () => {
    expect(100 * relativeHumidity(25, 12, bolton)).toBeCloseTo(44.2484765, 6);
  });

  it('10 °C, 50 %: 0.0479 °C (MetPy latest docs; known: seen), within 0.02 of every set', () => {
    for (const constants of [alduchovEskridge, sonntag, bolton]) {
      expect(Math.abs(dewPoint(10, 0.5, constants) - 0.047900916)).toBeLessThan(0.02);
    }
  });
});

describe('ASHRAE Handbook Fundamentals 2017, ch. 1', () => {
  it.each([
    [-20, 103.24],
    [-5, 401.74],
    [5, 872.6],
    [25, 3169.7],
    [50, 12351.3],
    [100, 101418],
  ])(
    'Table 3: psychrolib at %d °C gives %d Pa within 300 ppm (known: quoted in its test file)',
    (celsius, pascals) => {
      expect(Math.abs(psychrolib.GetSatVapPres(celsius) / pascals - 1)).toBeLessThan(3e-4);
    },
  );

  it.each([
    [5, 872.6],
    [25, 3169.7],
  ])('Table 3: ours at %d °C is within 0.31 per cent of %d Pa', (celsius, pascals) => {
    for (const constants of [alduchovEskridge, sonntag, bolton]) {
      expect(Math.abs((100 * saturationPressure(celsius, constants)) / pascals - 1)).toBeLessThan(0.0031);
    }
  });

  it('at 25 °C ours is 31.617 hPa (the formula; known: computed)', () => {
    expect(saturationPressure(25)).toBeCloseTo(31.617, 2);
  });

  it('Example 1: 40 °C dry, 20 °C wet gives W 0.0065, dew point 7 °C, 14 % (known: quoted; digits computed)', () => {
    expect(psychrolib.GetHumRatioFromTWetBulb(40, 20, 101325)).toBeCloseTo(0.0064008, 6);
    expect(psychrolib.GetTDewPointFromTWetBulb(40, 20, 101325)).toBeCloseTo(7.4336, 3);
    const fraction = psychrolib.GetRelHumFromTWetBulb(40, 20, 101325);
    expect(fraction).toBeCloseTo(0.139795, 5);
    expect(Math.round(dewPoint(40, fraction))).toBe(7);
    expect(relativeHumidity(40, 7.4336)).toBeCloseTo(0.14, 2);
  });
});

describe('dew points beside psychrolib 1.1.1 (known: computed)', () => {
  it.each([
    [10, 50, 0.0626, 0.0467, 0.0409, 0.0537],
    [18, 40, 4.2125, 4.1948, 4.1871, 4.2055],
    [20, 50, 9.2724, 9.2611, 9.2552, 9.2701],
    [21, 45, 8.6263, 8.6136, 8.6068, 8.6239],
    [22, 50, 11.1101, 11.1006, 11.0946, 11.11],
    [25, 60, 16.7011, 16.6977, 16.6931, 16.7054],
    [30, 70, 23.9279, 23.9305, 23.9272, 23.9366],
    [31.4, 65, 24.0251, 24.0291, 24.0252, 24.0366],
    [34, 65, 26.4835, 26.4907, 26.4867, 26.4985],
    [34, 90, 32.1222, 32.125, 32.124, 32.127],
    [34, 95, 33.0826, 33.084, 33.0835, 33.085],
    [35.4, 88.6, 33.2227, 33.2264, 33.2253, 33.2288],
    [37, 100, 37, 37, 37, 37],
  ])('%d °C, %d per cent', (celsius, percent, reference, ae, wmo, bolt) => {
    const fraction = percent / 100;
    expect(psychrolib.GetTDewPointFromRelHum(celsius, fraction)).toBeCloseTo(reference, 3);
    expect(dewPoint(celsius, fraction)).toBeCloseTo(ae, 4);
    expect(dewPoint(celsius, fraction, sonntag)).toBeCloseTo(wmo, 4);
    expect(dewPoint(celsius, fraction, bolton)).toBeCloseTo(bolt, 4);
    expect(
      Math.abs(dewPoint(celsius, fraction) - psychrolib.GetTDewPointFromRelHum(celsius, fraction)),
    ).toBeLessThan(0.02);
  });

  it('relative humidity from dew point is within 0.2 % of psychrolib over water, over a surgery’s range', () => {
    for (let celsius = 10; celsius <= 40; celsius += 2.5) {
      for (let below = 0; below <= Math.min(15, celsius); below += 2.5) {
        const ratio =
          relativeHumidity(celsius, celsius - below) /
          psychrolib.GetRelHumFromTDewPoint(celsius, celsius - below);
        expect(Math.abs(ratio - 1)).toBeLessThan(0.002);
      }
    }
  });
});

describe('breath', () => {
  it.each([
    [31.4, 0.65, 24.03],
    [35.4, 0.886, 33.23],
  ])(
    'measured: %d °C at %d has its dew point at %d °C (Mansour et al. 2020, abstract; known: quoted)',
    (celsius, fraction, point) => {
      expect(dewPoint(celsius, fraction)).toBeCloseTo(point, 2);
    },
  );

  it('textbook: 34 °C at 95 % is 33.08 °C (Höppe 1981; Ferrus et al. 1980; known: from memory)', () => {
    expect(dewPoint(34, 0.95)).toBeCloseTo(33.08, 2);
  });

  it('alveolar: 37 °C saturated is 47 mmHg and 44 g/m³ (physiology texts; known: quoted; 43.81 computed)', () => {
    const hectopascals = saturationPressure(37);
    expect(Math.round(hectopascals * 0.750062)).toBe(47);
    const grams = (hectopascals * 100 * 1000) / (461.5 * (37 + 273.15));
    expect(grams).toBeCloseTo(43.81, 1);
  });

  it('20 to 33.084 °C with a heater of 40 °C and τ 60 s: 63.71 s; never when the heater is no warmer (computed)', () => {
    expect(timeToReach(20, 40, 33.084, 60)).toBeCloseTo(63.71, 2);
    const settings = { ...WARM_UP, breathDewPointCelsius: 33.084, tauSeconds: 60 };
    expect(warmUpSeconds(20, settings)).toBeCloseTo(63.71, 2);
    expect(warmUpSeconds(20, { ...settings, heaterCelsius: 33.084 })).toBe(Number.POSITIVE_INFINITY);
    expect(warmUpSeconds(20, { ...settings, heaterCelsius: 30 })).toBe(Number.POSITIVE_INFINITY);
  });

  it('our default: saturated breath at 34 °C has that dew point; a room at 22 °C gives 45 s (assumed; computed)', () => {
    expect(dewPoint(34, 1)).toBeCloseTo(WARM_UP.breathDewPointCelsius, 12);
    expect(Math.round(warmUpSeconds(22))).toBe(45);
    expect(warmUpSeconds(34)).toBe(30);
    expect(warmUpSeconds(40)).toBe(30);
    expect(warmUpSeconds(30)).toBe(30); // 20.9 by the formula
  });
});
