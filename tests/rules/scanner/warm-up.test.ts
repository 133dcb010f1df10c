import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { warmUpFor } from '../../../core/rules/scanner/warm-up.ts';
import type { Given } from '../given.ts';
import { calibrated } from './ferngate.ts';

const WED = '2026-11-25';

function read(given: Given, at: string, celsius: number, room?: string): Given {
  given.note(at, { kind: 'temperature', celsius, site: 'quay', ...(room === undefined ? {} : { room }) });
  return given;
}

function seconds(given: Given, at = `${WED} 10:00`, room: string | null = 's1'): number {
  return warmUpFor(given.view(at), 'A', 'quay', room).seconds;
}

describe('warm-up', () => {
  it('45 s in a room of 22 °C (common practice: 30 to 60 s)', () => {
    expect(seconds(read(calibrated(), `${WED} 09:00`, 22))).toBe(45);
  });

  it('by the reading of that room, else by the latest of the site', () => {
    const given = calibrated();
    read(given, `${WED} 08:40`, 22, 's1');
    read(given, `${WED} 09:00`, 15, 's2');
    expect(seconds(given, `${WED} 10:00`, 's1')).toBe(45);
    expect(seconds(given, `${WED} 10:00`, 's2')).toBe(59);
    expect(seconds(given, `${WED} 10:00`, null)).toBe(59);
  });

  it('60 s where no reading is under 12 h old', () => {
    const given = read(calibrated(), `${WED} 08:40`, 22);
    expect(seconds(given, `${WED} 20:39`)).toBe(45);
    expect(warmUpFor(given.view(`${WED} 20:40`), 'A', 'quay', 's1')).toEqual({
      seconds: 60,
      why: { by: 'no-reading' },
    });
  });

  it('never under 30 s; a room of 34 °C or more: 30 s', () => {
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 450 }), (tenths) => {
        const least = seconds(read(calibrated(), `${WED} 09:00`, tenths / 10));
        expect(least).toBeGreaterThanOrEqual(30);
        if (tenths >= 340) expect(least).toBe(30);
      }),
      { numRuns: 30 },
    );
  });
});
