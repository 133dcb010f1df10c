import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DAY } from '../../core/time/instant.ts';
import { toLocal } from '../../core/time/zone.ts';
import { clockWords, dateReadBack, dayWords } from '../../core/words/clock-words.ts';
import { spanWords } from '../../core/words/span-words.ts';

const at = (iso: string) => Date.parse(iso);
const now = at('2026-11-24T11:00:00Z');

describe('a time as it is said at that site', () => {
  it.each([
    ['2026-11-24T10:30:00Z', 'Europe/London', '10:30'],
    ['2026-11-23T17:00:00Z', 'Europe/London', 'yesterday 17:00'],
    ['2026-11-25T08:30:00Z', 'Europe/London', 'tomorrow 08:30'],
    ['2026-11-20T09:15:00Z', 'Europe/London', 'Fri 09:15'],
    ['2026-11-18T09:15:00Z', 'Europe/London', 'Wed 09:15'],
    ['2026-11-17T09:15:00Z', 'Europe/London', '17 Nov 09:15'],
    ['2026-11-30T09:15:00Z', 'Europe/London', 'Mon 09:15'],
    ['2026-12-01T09:15:00Z', 'Europe/London', '1 Dec 09:15'],
    ['2025-11-03T14:05:00Z', 'Europe/London', '3 Nov 2025 14:05'],
    // Half an hour off: 11:00 UTC is 16:30 in Kolkata, and its day begins at 18:30 UTC.
    ['2026-11-24T05:00:00Z', 'Asia/Kolkata', '10:30'],
    ['2026-11-24T18:30:00Z', 'Asia/Kolkata', 'tomorrow 00:00'],
    ['2026-11-23T18:29:00Z', 'Asia/Kolkata', 'yesterday 23:59'],
    // Adelaide is 10:30 ahead in its summer: there it is 21:30 already.
    ['2026-11-24T14:00:00Z', 'Australia/Adelaide', 'tomorrow 00:30'],
  ])('%s in %s: %s', (iso, zone, words) => {
    expect(clockWords(at(iso), now, zone)).toBe(words);
  });

  it('days are counted on the calendar, also over a clock change', () => {
    const sunday = at('2026-10-25T23:30:00Z');
    expect(clockWords(at('2026-10-24T23:30:00Z'), sunday, 'Europe/London')).toBe('00:30');
    expect(clockWords(at('2026-10-24T22:30:00Z'), sunday, 'Europe/London')).toBe('yesterday 23:30');
  });

  it('a date is read back with its weekday', () => {
    expect(dateReadBack('2026-11-24', now, 'Europe/London')).toBe('today');
    expect(dateReadBack('2026-11-27', now, 'Europe/London')).toBe('Fri 27 Nov');
    expect(dateReadBack('2027-01-01', now, 'Europe/London')).toBe('Fri 1 Jan 2027');
  });

  it('two times that read the same are less than a minute apart', () => {
    const zones = fc.constantFrom('Europe/London', 'Asia/Kolkata', 'Australia/Adelaide', 'America/New_York');
    const instants = fc.integer({ min: now - 400 * DAY, max: now + 400 * DAY });
    fc.assert(
      fc.property(zones, instants, instants, (zone, one, other) => {
        const same = clockWords(one, now, zone) === clockWords(other, now, zone);
        const [a, b] = [toLocal(one, zone), toLocal(other, zone)];
        expect(same).toBe(a.date === b.date && a.time === b.time);
      }),
    );
  });

  it('the day alone', () => {
    expect(dayWords(now, now, 'Europe/London')).toBe('today');
  });
});

describe('a stretch of dates', () => {
  it.each([
    ['2026-10-01', '2026-10-31', 'October 2026'],
    ['2024-02-01', '2024-02-29', 'February 2024'],
    ['2026-02-01', '2026-02-27', '1 to 27 February 2026'],
    ['2026-01-01', '2026-12-31', '2026'],
    ['2026-11-24', '2026-11-24', '24 November 2026'],
    ['2026-11-16', '2026-11-22', '16 to 22 November 2026'],
    ['2026-10-26', '2026-11-01', '26 October to 1 November 2026'],
    ['2026-12-28', '2027-01-03', '28 December 2026 to 3 January 2027'],
  ])('%s to %s: %s', (from, to, words) => {
    expect(spanWords(from, to)).toBe(words);
  });
});
