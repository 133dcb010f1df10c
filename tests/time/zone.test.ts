import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { isZone, startOfDay, toInstant, toLocal } from '../../core/time/zone.ts';

/** Every zone of the published table, and some whose changes are odd: at midnight, 45 minutes off, none at all. */
const ZONES = [
  'Europe/London',
  'America/New_York',
  'Australia/Sydney',
  'Australia/Adelaide',
  'Australia/Lord_Howe',
  'America/St_Johns',
  'Asia/Kolkata',
  'Asia/Kathmandu',
  'Pacific/Chatham',
  'America/Santiago',
  'Asia/Beirut',
  'Africa/Casablanca',
  'America/Nuuk',
  'UTC',
];
const FROM = Date.UTC(2024, 0, 1);
const UNTIL = Date.UTC(2031, 0, 1);
const zone = fc.constantFrom(...ZONES);
const instant = fc.integer({ min: FROM / 1000, max: UNTIL / 1000 }).map((seconds) => seconds * 1000);

describe('zones agree with the zone library, 2024 to 2030', () => {
  test('an instant shows the same date, time and weekday', () => {
    fc.assert(
      fc.property(zone, instant, (name, at) => {
        const theirs = Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(name);
        expect(toLocal(at, name)).toEqual({
          date: theirs.toPlainDate().toString(),
          time: theirs.toPlainTime().toString().slice(0, 5),
          second: theirs.second,
          weekday: ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'][theirs.dayOfWeek - 1],
        });
      }),
      { numRuns: 1500 },
    );
  });

  test('a local time is the same instant', () => {
    fc.assert(
      fc.property(zone, instant, (name, at) => {
        const wall = new Date(at).toISOString();
        const [date, time] = [wall.slice(0, 10), wall.slice(11, 16)];
        const theirs = Temporal.PlainDateTime.from(`${date}T${time}`).toZonedDateTime(name, {
          disambiguation: 'compatible',
        });
        expect(toInstant(date, time, name)).toBe(theirs.epochMilliseconds);
      }),
      { numRuns: 1500 },
    );
  });

  test('every quarter of an hour around every clock change agrees', () => {
    for (const name of ZONES) {
      let change = Temporal.Instant.fromEpochMilliseconds(FROM)
        .toZonedDateTimeISO(name)
        .getTimeZoneTransition('next');
      while (change !== null && change.epochMilliseconds < UNTIL) {
        for (let quarter = -12; quarter <= 12; quarter++) {
          const at = change.epochMilliseconds + quarter * 900_000;
          const theirs = Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(name);
          const mine = toLocal(at, name);
          expect(`${mine.date}T${mine.time}`, `${name} ${at}`).toBe(
            theirs.toPlainDateTime().toString().slice(0, 16),
          );
          const back = theirs.toPlainDateTime().toZonedDateTime(name).epochMilliseconds;
          expect(toInstant(mine.date, mine.time, name), `${name} ${at}`).toBe(back);
        }
        change = change.getTimeZoneTransition('next');
      }
    }
  });

  test('a day starts when the zone library says', () => {
    fc.assert(
      fc.property(zone, instant, (name, at) => {
        const date = toLocal(at, name).date;
        expect(startOfDay(date, name)).toBe(
          Temporal.PlainDate.from(date).toZonedDateTime(name).epochMilliseconds,
        );
      }),
      { numRuns: 500 },
    );
  });

  test.each([
    ['Asia/Beirut', '2027-03-28', '2027-03-27T22:00:00.000Z'],
    ['America/Santiago', '2026-09-06', '2026-09-06T04:00:00.000Z'],
    // In 1919 Toronto went from 23:30 to 00:30: the gap begins the evening before.
    ['America/Toronto', '1919-03-31', '1919-03-31T04:30:00.000Z', '00:30'],
  ])(
    '%s: a day whose midnight is skipped (%s) starts at its first instant',
    (name, date, starts, time = '01:00') => {
      expect(new Date(startOfDay(date, name)).toISOString()).toBe(starts);
      expect(toLocal(Date.parse(starts), name)).toMatchObject({ date, time });
      expect(startOfDay(date, name)).toBe(
        Temporal.PlainDate.from(date).toZonedDateTime(name).epochMilliseconds,
      );
    },
  );
});

test.each([
  ['Europe/London', true],
  ['Australia/Lord_Howe', true],
  ['UTC', true],
  ['+01:00', false],
  ['Europe/Lundon', false],
  ['', false],
  ['London', false],
])('zone %j known: %s', (name, known) => {
  expect(isZone(name)).toBe(known);
});

test.each([
  ['2026-02-30x', '10:00'],
  ['2026-11-23', '25:00'],
  ['', ''],
])('%j %j is no local time', (date, time) => {
  expect(() => toInstant(date, time, 'Europe/London')).toThrow(RangeError);
});
