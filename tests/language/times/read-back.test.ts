import { describe, expect, it } from 'vitest';
import { readBack, readBackDate } from '../../../core/language/times/read-back.ts';
import { toInstant } from '../../../core/time/zone.ts';

const CASES: readonly (readonly [at: string, said: string, shown: string])[] = [
  ['2026-11-25 16:20', '2026-11-25 10:05', '10:05'],
  ['2026-11-25 16:20', '2026-11-25 00:00', '00:00'],
  ['2026-11-25 16:20', '2026-11-24 17:00', 'yesterday 17:00'],
  ['2026-11-25 16:20', '2026-11-26 09:00', 'tomorrow 09:00'],
  ['2026-11-25 16:20', '2026-11-23 09:00', 'Mon 23 Nov 09:00'],
  ['2026-11-25 16:20', '2026-11-02 09:05', 'Mon 2 Nov 09:05'],
  ['2026-11-25 16:20', '2027-01-02 09:00', 'Sat 2 Jan 2027 09:00'],
  ['2027-01-01 09:00', '2026-12-31 15:00', 'yesterday 15:00'],
  ['2027-01-04 09:00', '2026-12-31 15:00', 'Thu 31 Dec 2026 15:00'],
  ['2028-03-02 09:00', '2028-02-29 15:00', 'Tue 29 Feb 15:00'],
];

function instant(local: string, zone: string): number {
  return toInstant(local.slice(0, 10), local.slice(11), zone);
}

describe('a time read back', () => {
  for (const zone of ['Europe/London', 'America/St_Johns', 'Australia/Lord_Howe', 'Asia/Kolkata'])
    it.each(CASES)(`${zone}, at %s: %s`, (at, said, shown) => {
      expect(readBack(instant(said, zone), instant(at, zone), zone)).toBe(shown);
    });

  it('shows a date alone', () => {
    expect(readBackDate('2026-12-24', '2026-11-25')).toBe('Thu 24 Dec');
    expect(readBackDate('2027-01-02', '2026-11-25')).toBe('Sat 2 Jan 2027');
  });
});
