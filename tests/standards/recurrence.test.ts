import { describe, expect, test } from 'vitest';
import { toIso } from '../../core/time/instant.ts';
import { addDays, daysBetween, mondayOf, toInstant, toLocal, weekdayOf } from '../../core/time/zone.ts';

/** Local dates of a rule "every `interval` weeks on these days", counted from the first date's week (Monday or Sunday first). */
function weekly(
  from: string,
  until: string,
  days: readonly string[],
  interval = 1,
  weekStart = 'mon',
): string[] {
  const sundayFirst = weekStart === 'sun' ? 1 : 0;
  const weekOf = (date: string) => mondayOf(addDays(date, sundayFirst));
  const dates: string[] = [];
  for (let date = from; date <= until; date = addDays(date, 1)) {
    const weeks = daysBetween(weekOf(from), weekOf(date)) / 7;
    if (weeks % interval === 0 && days.includes(weekdayOf(date))) dates.push(date);
  }
  return dates;
}

/** Dates by month, in order. */
function dates(year: number, months: Readonly<Record<string, readonly number[]>>): string[] {
  return Object.entries(months)
    .flatMap(([month, days]) => days.map((day) => `${year}-${month}-${String(day).padStart(2, '0')}`))
    .sort();
}

// RFC 5545 §3.8.5.3, pages 124 to 126: DTSTART America/New_York 1997-09-02 09:00.
describe('weekly examples of RFC 5545 §3.8.5.3', () => {
  test('weekly, ten times: 09:00 on the wall before and after the clock change', () => {
    const ten = weekly('1997-09-02', '1997-12-31', ['tue']).slice(0, 10);
    expect(ten).toEqual(dates(1997, { '09': [2, 9, 16, 23, 30], '10': [7, 14, 21, 28], '11': [4] }));
    expect(ten.map((date) => toIso(toInstant(date, '09:00', 'America/New_York')).slice(11))).toEqual([
      ...Array.from({ length: 8 }, () => '13:00:00Z'),
      '14:00:00Z',
      '14:00:00Z',
    ]);
  });

  test('weekly until 24 December: 17 times, the last on the 23rd', () => {
    const until = Date.parse('1997-12-24T00:00:00Z');
    const all = weekly('1997-09-02', '1997-12-31', ['tue']).filter((date) => {
      return toInstant(date, '09:00', 'America/New_York') <= until;
    });
    expect(all).toHaveLength(17);
    expect(all.slice(-4)).toEqual(dates(1997, { '12': [2, 9, 16, 23] }));
  });

  test('every other week, weeks from Sunday', () => {
    expect(weekly('1997-09-02', '1998-02-17', ['tue'], 2, 'sun')).toEqual([
      ...dates(1997, { '09': [2, 16, 30], '10': [14, 28], '11': [11, 25], '12': [9, 23] }),
      ...dates(1998, { '01': [6, 20], '02': [3, 17] }),
    ]);
  });

  test('Monday, Wednesday and Friday of every other week until 24 December, weeks from Sunday', () => {
    // DTSTART 1997-09-01 09:00; UNTIL=19971224T000000Z ends before that day's 09:00.
    expect(weekly('1997-09-01', '1997-12-23', ['mon', 'wed', 'fri'], 2, 'sun')).toEqual(
      dates(1997, {
        '09': [1, 3, 5, 15, 17, 19, 29],
        '10': [1, 3, 13, 15, 17, 27, 29, 31],
        '11': [10, 12, 14, 24, 26, 28],
        '12': [8, 10, 12, 22],
      }),
    );
  });
});

// RFC 5545 §3.3.10 says of a time that does not exist both that it is left out and that it is read as §3.3.5. Chosen: read as
// §3.3.5, as Temporal does (the erratum on UNTIL, 6212, is rejected: it is an instant). A request left out would be lost.
// RFC 5545 §3.3.5: its two examples, then times read the same way in other zones (computed with Temporal, `compatible`).
test.each([
  [
    'America/New_York',
    '2007-11-04',
    '01:30',
    '2007-11-04T05:30:00Z',
    'RFC 5545 §3.3.5, occurs twice: the first',
  ],
  [
    'America/New_York',
    '2007-03-11',
    '02:30',
    '2007-03-11T07:30:00Z',
    'RFC 5545 §3.3.5, skipped: offset before',
  ],
  ['Europe/London', '2026-03-29', '01:30', '2026-03-29T01:30:00Z', 'skipped'],
  ['Europe/London', '2026-10-25', '01:30', '2026-10-25T00:30:00Z', 'twice'],
  ['America/New_York', '2026-03-08', '02:30', '2026-03-08T07:30:00Z', 'skipped'],
  ['America/New_York', '2026-11-01', '01:30', '2026-11-01T05:30:00Z', 'twice'],
  ['Australia/Sydney', '2026-10-04', '02:30', '2026-10-03T16:30:00Z', 'skipped'],
  ['Australia/Sydney', '2026-04-05', '02:30', '2026-04-04T15:30:00Z', 'twice'],
  ['Australia/Lord_Howe', '2026-10-04', '02:15', '2026-10-03T15:45:00Z', 'skipped, half an hour'],
  ['Australia/Lord_Howe', '2026-04-05', '01:45', '2026-04-04T14:45:00Z', 'twice, half an hour'],
])('%s %s %s is %s (%s %s)', (zone, date, time, instant) => {
  expect(toIso(toInstant(date, time, zone))).toBe(instant);
});

// IANA time zone database 2026c (rules EU, US, AN, AS), compiled with zic: the UTC instant of each change, and minutes
// ahead of UTC before and after it.
test.each([
  ['Europe/London', 0, 60, ['2026-03-29T01:00Z', '2027-03-28T01:00Z']],
  ['Europe/London', 60, 0, ['2026-10-25T01:00Z', '2027-10-31T01:00Z']],
  ['America/New_York', -300, -240, ['2026-03-08T07:00Z', '2027-03-14T07:00Z']],
  ['America/New_York', -240, -300, ['2026-11-01T06:00Z', '2027-11-07T06:00Z']],
  ['Australia/Sydney', 660, 600, ['2026-04-04T16:00Z', '2027-04-03T16:00Z']],
  ['Australia/Sydney', 600, 660, ['2026-10-03T16:00Z', '2027-10-02T16:00Z']],
  ['Australia/Adelaide', 630, 570, ['2026-04-04T16:30Z', '2027-04-03T16:30Z']],
  ['Australia/Adelaide', 570, 630, ['2026-10-03T16:30Z', '2027-10-02T16:30Z']],
  ['Australia/Lord_Howe', 660, 630, ['2026-04-04T15:00Z', '2027-04-03T15:00Z']],
  ['Australia/Lord_Howe', 630, 660, ['2026-10-03T15:30Z', '2027-10-02T15:30Z']],
  ['America/St_Johns', -210, -150, ['2026-03-08T05:30Z', '2027-03-14T05:30Z']],
  ['America/St_Johns', -150, -210, ['2026-11-01T04:30Z', '2027-11-07T04:30Z']],
])('%s changes from %d to %d minutes at the published instants', (zone, before, after, instants) => {
  for (const instant of instants) {
    expect(ahead(Date.parse(instant) - 1000, zone), `just before ${instant}`).toBe(before);
    expect(ahead(Date.parse(instant), zone), `at ${instant}`).toBe(after);
  }
});

test.each([
  ['Asia/Kolkata', 330],
  ['Asia/Kathmandu', 345],
])('%s is %d minutes ahead on every day of 2026 and 2027 (tzdb 2026c: no changes)', (zone, minutes) => {
  for (let at = Date.UTC(2026, 0, 1); at < Date.UTC(2028, 0, 1); at += 86_400_000) {
    expect(ahead(at, zone)).toBe(minutes);
  }
});

// Mondays at 09:00 local around the changes of 2026 (tzdb 2026c, computed).
test.each([
  ['Europe/London', '2026-03-23', '2026-03-23T09:00:00Z'],
  ['Europe/London', '2026-03-30', '2026-03-30T08:00:00Z'],
  ['Europe/London', '2026-10-19', '2026-10-19T08:00:00Z'],
  ['Europe/London', '2026-10-26', '2026-10-26T09:00:00Z'],
  ['America/New_York', '2026-03-02', '2026-03-02T14:00:00Z'],
  ['America/New_York', '2026-03-09', '2026-03-09T13:00:00Z'],
  ['America/New_York', '2026-10-26', '2026-10-26T13:00:00Z'],
  ['America/New_York', '2026-11-02', '2026-11-02T14:00:00Z'],
  ['Australia/Sydney', '2026-03-30', '2026-03-29T22:00:00Z'],
  ['Australia/Sydney', '2026-04-06', '2026-04-05T23:00:00Z'],
  ['Australia/Sydney', '2026-09-28', '2026-09-27T23:00:00Z'],
  ['Australia/Sydney', '2026-10-05', '2026-10-04T22:00:00Z'],
  ['Australia/Adelaide', '2026-03-30', '2026-03-29T22:30:00Z'],
  ['Australia/Adelaide', '2026-04-06', '2026-04-05T23:30:00Z'],
])('%s: Monday %s 09:00 is %s', (zone, date, instant) => {
  expect(weekdayOf(date)).toBe('mon');
  expect(toIso(toInstant(date, '09:00', zone))).toBe(instant);
});

/** Minutes by which the wall clock is ahead of UTC. */
function ahead(instant: number, zone: string): number {
  const { date, time, second } = toLocal(instant, zone);
  return (Date.parse(`${date}T${time}:${String(second).padStart(2, '0')}Z`) - instant) / 60_000;
}
