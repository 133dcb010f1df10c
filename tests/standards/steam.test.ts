import { describe, expect, it } from 'vitest';
import { F0_REFERENCE, f0OfHold, f0OfProfile, lethalRate } from '../../core/science/f0.ts';
import type { Goods, LoadTableName } from '../../core/science/load-tables.ts';
import { LOAD_TABLES } from '../../core/science/load-tables.ts';
import { judgeHold } from '../../core/science/sterilisation.ts';

type Row = readonly [table: LoadTableName, celsius: number, minutes: number, judged: string];

describe('CDC 2008 (upd. 2019) Table 7, wrapped instruments; source: the CDC page itself; known: seen', () => {
  it.each<Row>([
    ['us-gravity', 121, 29, 'short'],
    ['us-gravity', 121, 30, 'met'],
    ['us-gravity', 132, 14, 'short'],
    ['us-gravity', 132, 15, 'met'],
    ['us-prevacuum', 132, 3, 'short'],
    ['us-prevacuum', 132, 4, 'met'],
    ['us-prevacuum', 121, 30, 'no-value'],
    ['us-prevacuum', 121, 600, 'no-value'],
  ])('%s, %d °C for %d min: %s', (table, celsius, minutes, judged) => {
    expect(judgeHold({ celsius, minutes }, { table }).judged).toBe(judged);
  });

  it.each<readonly [LoadTableName, number, Goods, number, readonly [number, number]]>([
    ['us-gravity', 121, 'wrapped instruments', 30, [15, 30]],
    ['us-gravity', 132, 'wrapped instruments', 15, [15, 30]],
    ['us-prevacuum', 132, 'wrapped instruments', 4, [20, 30]],
    ['us-gravity', 121, 'textile packs', 30, [15, 15]],
    ['us-gravity', 132, 'textile packs', 25, [15, 15]],
    ['us-gravity', 121, 'wrapped utensils', 30, [15, 30]],
    ['us-gravity', 132, 'wrapped utensils', 15, [15, 30]],
    ['us-prevacuum', 132, 'textile packs', 4, [5, 20]],
    ['us-prevacuum', 132, 'wrapped utensils', 4, [20, 20]],
  ])('%s, %d °C, %s: %d min, drying %j', (table, celsius, goods, minutes, drying) => {
    const met = judgeHold({ celsius, minutes }, { table, goods });
    expect(met).toMatchObject({
      judged: 'met',
      requiredMinutes: minutes,
      row: { goods, drying, known: 'seen' },
    });
    expect(judgeHold({ celsius, minutes: minutes - 0.5 }, { table, goods })).toMatchObject({
      judged: 'short',
      requiredMinutes: minutes,
      shortByMinutes: 0.5,
    });
  });

  it('135 °C for 3 min (AAMI ST79; known: from memory) is not in Table 7 and is not cited to CDC', () => {
    const rows = [...LOAD_TABLES['us-gravity'], ...LOAD_TABLES['us-prevacuum']];
    expect(rows.filter((row) => row.fromCelsius === 135 || row.minutes === 3)).toEqual([]);
    expect(judgeHold({ celsius: 135, minutes: 3 }, { table: 'us-prevacuum' }).judged).toBe('short');
  });

  it('8 min at 132 °C (old chart, J Am Dent Assoc 122, Dec 1991; known: quoted) does not pass the table of 2008', () => {
    expect(judgeHold({ celsius: 132, minutes: 8 }, { table: 'us-gravity' }).judged).toBe('short');
  });
});

describe('UK bands, HTM 01-05:2013; MRC Working Party, Lancet 1959;273:425-435; known: from memory', () => {
  it.each<readonly [celsius: number, minutes: number, judged: string]>([
    [133.9, 3, 'no-value'],
    [134, 3, 'met'],
    [134, 2.9, 'short'],
    [137, 3, 'met'],
    [137.1, 3, 'no-value'],
    [126, 10, 'met'],
    [126, 9.9, 'short'],
    [129, 10, 'met'],
    [129.1, 60, 'no-value'],
    [125.9, 60, 'no-value'],
    [121, 15, 'met'],
    [121, 14.9, 'short'],
    [124, 15, 'met'],
    [124.1, 60, 'no-value'],
    [120.9, 600, 'no-value'],
  ])('%d °C for %d min: %s', (celsius, minutes, judged) => {
    expect(judgeHold({ celsius, minutes }, { table: 'uk' }).judged).toBe(judged);
  });

  it('EN 285:2015 with a sensor error of 0.5 K (Zentralsterilisation 1/2020, abstract; known: quoted)', () => {
    const withError = { table: 'uk', sensorErrorKelvin: 0.5 } as const;
    expect(judgeHold({ celsius: 134.2, minutes: 3 }, withError).judged).toBe('no-value');
    expect(judgeHold({ celsius: 134.5, minutes: 3 }, withError).judged).toBe('met');
    expect(judgeHold({ celsius: 136.5, minutes: 3 }, withError).judged).toBe('met');
    expect(judgeHold({ celsius: 136.6, minutes: 3 }, withError).judged).toBe('no-value');
  });

  it('the upper edge is a setting: 3 K (EN 285) or 4 K (EN 13060); known: from memory', () => {
    const cycles = [{ celsius: 134, minutes: 3 }];
    expect(judgeHold({ celsius: 138, minutes: 3 }, { cycles }).judged).toBe('no-value');
    expect(judgeHold({ celsius: 138, minutes: 3 }, { cycles, aboveKelvin: 4 }).judged).toBe('met');
  });

  it('and so is how far above its temperature a US row reaches: 3 K assumed, 0 to 4 K by the practice file', () => {
    const at = (celsius: number, rowAboveKelvin?: number) =>
      judgeHold(
        { celsius, minutes: 4 },
        { table: 'us-prevacuum', ...(rowAboveKelvin === undefined ? {} : { rowAboveKelvin }) },
      ).judged;
    expect([at(135), at(135.1), at(136, 4), at(132.1, 0), at(132, 0)]).toEqual([
      'met',
      'no-value',
      'met',
      'no-value',
      'met',
    ]);
    expect(judgeHold({ celsius: 137.5, minutes: 3 }, { table: 'uk', rowAboveKelvin: 4 }).judged).toBe(
      'no-value',
    );
  });
});

describe('F0', () => {
  it.each([
    [121.1, 1, 1],
    [131.1, 1, 10],
    [111.1, 10, 1],
  ])(
    '%d °C for %d min is %d (Lundahl 2007, abstract; 21 CFR 212.3 as proposed 1976; known: quoted)',
    (celsius, minutes, f0) => {
      expect(f0OfHold(celsius, minutes)).toBeCloseTo(f0, 12);
      expect(F0_REFERENCE).toEqual({ celsius: 121.1, z: 10 });
    },
  );

  it.each([
    [121, 15, 14.659],
    [111, 1.5, 1.466],
  ])(
    '15 min at %d °C is %d at 121 °C (Pistolesi & Mascherpa, 1.4; known: quoted), %d at 121.1',
    (celsius, at121, at1211) => {
      expect(f0OfHold(celsius, 15, { celsius: 121, z: 10 })).toBeCloseTo(at121, 12);
      expect(f0OfHold(celsius, 15)).toBeCloseTo(at1211, 3);
    },
  );

  it('15 min at 121 °C with D = 1.5 min is 10 log (D: encyclopaedic page, quoted; ISO 11138-3, from memory)', () => {
    expect(f0OfHold(121, 15, { celsius: 121, z: 10 }) / 1.5).toBeCloseTo(10, 12);
  });

  it.each([
    [111, 15, 1.4659, 1.4625, 1.5],
    [121, 15, 14.6586, 14.6248, 15],
    [121.1, 15, 15, 14.9655, 15.3494],
    [121, 30, 29.3171, 29.2497, 30],
    [124, 15, 29.2477, 29.1804, 29.9289],
    [126, 10, 30.903, 30.8319, 31.6228],
    [129, 10, 61.6595, 61.5177, 63.0957],
    [132, 4, 49.2108, 49.0976, 50.357],
    [132, 15, 184.5403, 184.1159, 188.8388],
    [134, 3, 58.4953, 58.3608, 59.8579],
    [135, 3, 73.6413, 73.4719, 75.3566],
    [137, 3, 116.7135, 116.4451, 119.4322],
  ])('%d °C for %d min by three references (the formula; known: computed)', (celsius, minutes, a, b, c) => {
    expect(f0OfHold(celsius, minutes, { celsius: 121.1, z: 10 })).toBeCloseTo(a, 4);
    expect(f0OfHold(celsius, minutes, { celsius: 121.11, z: 10 })).toBeCloseTo(b, 4);
    expect(f0OfHold(celsius, minutes, { celsius: 121, z: 10 })).toBeCloseTo(c, 4);
  });

  it.each([
    [100, 0.007762],
    [110, 0.077625],
    [115, 0.245471],
    [118, 0.489779],
    [120, 0.776247],
    [121, 0.977237],
    [122, 1.230269],
    [125, 2.454709],
    [130, 7.762471],
    [134, 19.498446],
    [137, 38.904514],
  ])('lethal rate at %d °C is %d (the formula; known: computed)', (celsius, rate) => {
    expect(lethalRate(celsius)).toBeCloseTo(rate, 6);
  });

  it('a profile in steps of one minute is 4.0743 (the formula; known: computed)', () => {
    const profile = [100, 110, 118, 121, 121, 121, 118, 110, 100].map((celsius, minute) => ({
      minute,
      celsius,
    }));
    expect(f0OfProfile(profile)).toBeCloseTo(4.0743, 4);
  });

  it('never passes a hold that missed its band (Lundahl 2007; van Doornmalen & Kopinga 2009; known: quoted)', () => {
    const minutes = 600;
    expect(f0OfHold(118, minutes)).toBeGreaterThan(15);
    expect(judgeHold({ celsius: 118, minutes }, { table: 'uk' }).judged).toBe('no-value');
  });
});
