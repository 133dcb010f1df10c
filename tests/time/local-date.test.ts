import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  addMonths,
  daysBetween,
  isLocalDate,
  mondayOf,
  weekdayOf,
} from '../../core/time/local-date.ts';
import { isLocalTime, minutesOf, timeOfMinutes } from '../../core/time/local-time.ts';

const date = fc.integer({ min: -10_000, max: 40_000 }).map((day) => addDays('2000-01-01', day));

test.each([
  ['2026-11-23', 'mon'],
  ['2026-11-29', 'sun'],
  ['2028-02-29', 'tue'],
  ['2027-01-01', 'fri'],
  ['1969-12-29', 'mon'],
])('%s is a %s', (day, weekday) => {
  expect(weekdayOf(day)).toBe(weekday);
});

test.each([
  ['2026-12-31', 1, '2027-01-01'],
  ['2028-02-28', 1, '2028-02-29'],
  ['2027-02-28', 1, '2027-03-01'],
  ['2027-01-01', -1, '2026-12-31'],
])('%s and %d days is %s', (from, days, to) => {
  expect(addDays(from, days)).toBe(to);
});

// HTM 01-05:2013 §2.4k(i) gives one year; that 29 February ends on the 28th is a decision of ours, on the safe side.
test.each([
  ['2026-03-01', 12, '2027-03-01'],
  ['2028-02-29', 12, '2029-02-28'],
  ['2024-02-29', 48, '2028-02-29'],
  ['2026-11-30', 3, '2027-02-28'],
  ['2026-10-31', 1, '2026-11-30'],
  ['2026-01-15', -1, '2025-12-15'],
])('%s and %d months is %s', (from, months, to) => {
  expect(addMonths(from, months)).toBe(to);
});

test.each([
  ['2026-02-29', false],
  ['2028-02-29', true],
  ['2026-2-1', false],
  ['2026-13-01', false],
  ['2026-00-10', false],
  ['2026-11-31', false],
  ['2026-11-23T', false],
])('%s is a date: %s', (text, real) => {
  expect(isLocalDate(text)).toBe(real);
});

describe('dates hold together', () => {
  test('adding days and counting them are inverse', () => {
    fc.assert(
      fc.property(date, fc.integer({ min: -4000, max: 4000 }), (from, days) => {
        expect(daysBetween(from, addDays(from, days))).toBe(days);
      }),
    );
  });

  test("a week's Monday is a Monday, at most six days back", () => {
    fc.assert(
      fc.property(date, (day) => {
        expect(weekdayOf(mondayOf(day))).toBe('mon');
        expect(daysBetween(mondayOf(day), day)).toBeGreaterThanOrEqual(0);
        expect(daysBetween(mondayOf(day), day)).toBeLessThan(7);
      }),
    );
  });

  test('a date sorts as text', () => {
    fc.assert(
      fc.property(date, date, (a, b) => {
        expect(Math.sign(daysBetween(a, b))).toBe(a < b ? 1 : a > b ? -1 : 0);
      }),
    );
  });
});

test('every minute of the day is a time and comes back', () => {
  for (let minute = 0; minute < 1440; minute++) expect(minutesOf(timeOfMinutes(minute))).toBe(minute);
  expect(timeOfMinutes(1500)).toBe('01:00');
});

test.each(['24:00', '8:30', '08:60', '08.30', ''])('%j is no time of day', (text) => {
  expect(isLocalTime(text)).toBe(false);
  expect(() => minutesOf(text)).toThrow(RangeError);
});
