import { describe, expect, test } from 'vitest';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { textOf } from './ask.ts';
import { ALL_ROOM } from './three-sites.ts';

const AT = '2026-11-24 11:00';

describe('scans booked', () => {
  test('given none, then that is said, by day and site', () => {
    const given = new Given(FERNGATE);
    expect(textOf(given, { kind: 'bookings' }, AT)).toBe('No scan booked at Quay Street today.');
    expect(textOf(given, { kind: 'bookings', day: '2026-11-25', site: 'north' }, AT)).toBe(
      'No scan booked at North Clinic tomorrow.',
    );
    expect(textOf(given, { kind: 'bookings' }, AT, ALL_ROOM).split('\n')).toHaveLength(3);
  });

  test('given three of today, one of them over, then how many, their times, and how many are still to come', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-24 08:10', {
      kind: 'booked',
      count: 3,
      day: '2026-11-24',
      times: ['09:00', '14:00', '15:30'],
      site: 'quay',
    });
    given.note('2026-11-24 09:30', { kind: 'scan-finished', scanner: 'A', site: 'quay' });
    expect(textOf(given, { kind: 'bookings' }, AT)).toBe(
      '3 scans booked at Quay Street today: 09:00, 14:00, 15:30; 2 still to come, next 14:00. 1 scan done so far.',
    );
  });

  test('given times were not said, then that there are none', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-24 08:10', { kind: 'booked', count: 2, day: '2026-11-25', times: [], site: 'quay' });
    given.note('2026-11-24 08:11', {
      kind: 'booked',
      count: 1,
      day: '2026-11-26',
      times: ['10:00'],
      site: 'quay',
    });
    given.note('2026-11-24 08:12', { kind: 'booked', count: 1, day: '2026-11-26', times: [], site: 'quay' });
    expect(textOf(given, { kind: 'bookings', day: '2026-11-25' }, AT)).toBe(
      '2 scans booked at Quay Street tomorrow, no times noted.',
    );
    expect(textOf(given, { kind: 'bookings', day: '2026-11-26' }, AT)).toBe(
      '2 scans booked at Quay Street on Thu 26 Nov: 10:00 and 1 with no time.',
    );
  });
});

describe('opening hours', () => {
  const given = () => new Given(FERNGATE);

  test('given an open day, then from when to when, breaks left out', () => {
    expect(textOf(given(), { kind: 'hours' }, AT)).toBe('Quay Street, today: 08:30 to 17:30.');
    expect(textOf(given(), { kind: 'hours', day: '2026-11-25' }, AT)).toBe(
      'Quay Street, tomorrow: 08:30 to 12:30 and 13:30 to 17:30.',
    );
  });

  test('given it is shut, then when it is open again', () => {
    expect(textOf(given(), { kind: 'hours', day: '2026-12-25' }, AT)).toBe(
      'Quay Street, Fri 25 Dec: closed. Open again Tue 29 Dec, 08:30 to 17:30.',
    );
    expect(textOf(given(), { kind: 'hours' }, '2026-11-24 18:00')).toBe(
      'Quay Street, today: 08:30 to 17:30, over now. Open again tomorrow, 08:30 to 12:30 and 13:30 to 17:30.',
    );
  });

  test('given a note changed that day, then what it says', () => {
    const changed = given();
    changed.note('2026-11-24 09:00', { kind: 'hours', site: 'quay', day: '2026-11-24', shut: '15:00' });
    changed.note('2026-11-24 09:01', { kind: 'closed', site: 'quay', days: ['2026-11-26'] });
    expect(textOf(changed, { kind: 'hours' }, AT)).toBe('Quay Street, today: 08:30 to 15:00.');
    expect(textOf(changed, { kind: 'hours', day: '2026-11-26' }, AT)).toContain('Thu 26 Nov: closed.');
  });
});
