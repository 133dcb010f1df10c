import { describe, expect, it } from 'vitest';
import { clockWords, dayWords } from '../../core/words/clock-words.ts';
import { nameOf } from '../../core/words/people-words.ts';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';

describe('a time as people at the site say it', () => {
  // Wednesday 25 November 2026, 10:00 in London.
  const now = Date.parse('2026-11-25T10:00:00Z');
  it.each([
    ['2026-11-25T10:30:00Z', 'Europe/London', '10:30'],
    ['2026-11-24T17:00:00Z', 'Europe/London', 'yesterday 17:00'],
    ['2026-11-26T08:30:00Z', 'Europe/London', 'tomorrow 08:30'],
    ['2026-11-23T09:15:00Z', 'Europe/London', 'Mon 09:15'],
    ['2026-11-30T09:15:00Z', 'Europe/London', 'Mon 09:15'],
    ['2026-11-19T09:15:00Z', 'Europe/London', 'Thu 09:15'],
    ['2026-11-18T09:15:00Z', 'Europe/London', '18 Nov 09:15'],
    ['2026-11-03T14:05:00Z', 'Europe/London', '3 Nov 14:05'],
    ['2025-11-03T14:05:00Z', 'Europe/London', '3 Nov 2025 14:05'],
    // British summer time.
    ['2026-07-01T14:05:00Z', 'Europe/London', '1 Jul 15:05'],
    // Half an hour off, and already the next day there.
    ['2026-11-25T18:45:00Z', 'Asia/Kolkata', 'tomorrow 00:15'],
    ['2026-11-24T18:45:00Z', 'Asia/Kolkata', '00:15'],
  ])('%s in %s: %s', (at, zone, words) => {
    expect(clockWords(Date.parse(at), now, zone)).toBe(words);
  });

  it('the day alone', () => {
    expect(dayWords(now, now, 'Europe/London')).toBe('today');
  });
});

describe('who', () => {
  it.each([
    ['@tom:example.org', 'Tom'],
    ['@locum:example.org', 'locum'],
    ['Niamh', 'Niamh'],
    [null, 'Scanward'],
  ])('%s: %s', (by, name) => {
    expect(nameOf(new Given(FERNGATE).practice, by)).toBe(name);
  });
});
