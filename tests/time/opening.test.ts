import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { OpenSpan, Site } from '../../core/practice/practice.ts';
import { MINUTE, toIso } from '../../core/time/instant.ts';
import {
  firstOpening,
  isOpen,
  lastClosing,
  type NotedChanges,
  type NotedHours,
  nextOpenDay,
  nextOpening,
  openDayFrom,
  openFrom,
  openSpans,
  openTimes,
} from '../../core/time/opening.ts';
import { addDays, toInstant } from '../../core/time/zone.ts';

const day: readonly OpenSpan[] = [{ open: '08:30', shut: '17:30' }];
const broken: readonly OpenSpan[] = [
  { open: '08:30', shut: '12:30' },
  { open: '13:30', shut: '17:30' },
];

function site(timezone = 'Europe/London', closed: readonly string[] = []): Site {
  const hours = {
    mon: day,
    tue: day,
    wed: broken,
    thu: day,
    fri: [{ open: '08:30', shut: '16:00' }],
    sat: [],
    sun: [],
  };
  return { id: 'mill', name: 'Mill Lane', also: [], timezone, rooms: [], hours, closed };
}

function noted(closed: readonly string[], hours: Readonly<Record<string, NotedHours>> = {}): NotedChanges {
  return { closed: new Set(closed), hours: new Map(Object.entries(hours)) };
}

const text = (spans: readonly OpenSpan[]) => spans.map(({ open, shut }) => `${open}-${shut}`).join(' ');

describe('hours of one day', () => {
  // 2026-11-23 is a Monday, 25 a Wednesday (with a break), 28 a Saturday.
  const rows: readonly (readonly [string, string, NotedChanges, string])[] = [
    ['as the file says', '2026-11-23', noted([]), '08:30-17:30'],
    ['with a break', '2026-11-25', noted([]), '08:30-12:30 13:30-17:30'],
    ['a weekday without hours', '2026-11-28', noted([]), ''],
    ['closed by the file', '2026-12-25', noted([]), ''],
    ['closed by a note', '2026-11-23', noted(['2026-11-23']), ''],
    ['finishing early', '2026-11-23', noted([], { '2026-11-23': { shut: '15:00' } }), '08:30-15:00'],
    [
      'finishing late',
      '2026-11-23',
      noted([], { '2026-11-23': { shut: '19:00', open: null } }),
      '08:30-19:00',
    ],
    ['starting late', '2026-11-23', noted([], { '2026-11-23': { open: '10:00' } }), '10:00-17:30'],
    ['starting early', '2026-11-23', noted([], { '2026-11-23': { open: '07:00' } }), '07:00-17:30'],
    [
      'finishing before the break',
      '2026-11-25',
      noted([], { '2026-11-25': { shut: '11:00' } }),
      '08:30-11:00',
    ],
    ['finishing in the break', '2026-11-25', noted([], { '2026-11-25': { shut: '13:00' } }), '08:30-13:00'],
    [
      'finishing after the break',
      '2026-11-25',
      noted([], { '2026-11-25': { shut: '15:00' } }),
      '08:30-12:30 13:30-15:00',
    ],
    ['starting in the break', '2026-11-25', noted([], { '2026-11-25': { open: '13:00' } }), '13:00-17:30'],
    ['both ends', '2026-11-25', noted([], { '2026-11-25': { open: '09:00', shut: '16:00' } }), '09:00-16:00'],
    [
      'a Saturday opened',
      '2026-11-28',
      noted([], { '2026-11-28': { open: '09:00', shut: '13:00' } }),
      '09:00-13:00',
    ],
    [
      'a Saturday, only its end said',
      '2026-11-28',
      noted([], { '2026-11-28': { shut: '13:00' } }),
      '08:30-13:00',
    ],
    [
      'a closed date opened',
      '2026-12-25',
      noted([], { '2026-12-25': { open: '10:00', shut: '12:00' } }),
      '10:00-12:00',
    ],
    [
      'starting as the break begins',
      '2026-11-25',
      noted([], { '2026-11-25': { open: '12:30' } }),
      '12:30-17:30',
    ],
    [
      'finishing as the break ends',
      '2026-11-25',
      noted([], { '2026-11-25': { shut: '13:30' } }),
      '08:30-13:30',
    ],
    [
      'a closed Wednesday, its end said',
      '2026-11-25',
      noted(['2026-11-25'], { '2026-11-25': { shut: '15:00' } }),
      '08:30-15:00',
    ],
    ['neither end said', '2026-11-23', noted([], { '2026-11-23': {} }), '08:30-17:30'],
    [
      'ends the wrong way round',
      '2026-11-23',
      noted([], { '2026-11-23': { open: '15:00', shut: '09:00' } }),
      '',
    ],
    ['finishing before it opens', '2026-11-23', noted([], { '2026-11-23': { shut: '08:00' } }), ''],
  ];
  test.each(rows)('%s (%s)', (_, date, changes, expected) => {
    expect(text(openTimes(site('Europe/London', ['2026-12-25']), date, changes))).toBe(expected);
  });
});

describe('given a site open 08:30 to 17:30, when the minute is', () => {
  test.each([
    ['08:29', false],
    ['08:30', true],
    ['17:29', true],
    ['17:30', true],
    ['17:31', false],
  ])('%s, then open: %s', (time, open) => {
    expect(isOpen(site(), toInstant('2026-11-23', time, 'Europe/London'))).toBe(open);
    // The last second of the minute is like its first.
    expect(isOpen(site(), toInstant('2026-11-23', time, 'Europe/London') + 59_999)).toBe(open);
  });

  test('at the minute of opening the next opening is another one', () => {
    const opening = toInstant('2026-11-23', '08:30', 'Europe/London');
    expect(toIso(nextOpening(site(), opening) ?? 0)).toBe('2026-11-24T08:30:00Z');
    expect(toIso(nextOpening(site(), opening - 1) ?? 0)).toBe('2026-11-23T08:30:00Z');
  });

  test('in the break it is shut, and the next opening is after it', () => {
    const inBreak = toInstant('2026-11-25', '13:00', 'Europe/London');
    expect(isOpen(site(), inBreak)).toBe(false);
    expect(toIso(nextOpening(site(), inBreak) ?? 0)).toBe('2026-11-25T13:30:00Z');
  });
});

// tzdb 2026c: London changes on 2026-03-29 and 10-25, Adelaide (half-hour zone) on 2026-04-05 and 10-04.
test.each([
  ['Europe/London', '2026-03-27', '2026-03-27T08:30:00Z', '2026-03-30', '2026-03-30T07:30:00Z'],
  ['Europe/London', '2026-10-23', '2026-10-23T07:30:00Z', '2026-10-26', '2026-10-26T08:30:00Z'],
  ['Australia/Adelaide', '2026-04-03', '2026-04-02T22:00:00Z', '2026-04-06', '2026-04-05T23:00:00Z'],
  ['Australia/Adelaide', '2026-10-02', '2026-10-01T23:00:00Z', '2026-10-05', '2026-10-04T22:00:00Z'],
  ['Asia/Kolkata', '2026-12-31', '2026-12-31T03:00:00Z', '2027-01-01', '2027-01-01T03:00:00Z'],
  ['America/New_York', '2026-12-31', '2026-12-31T13:30:00Z', '2027-01-01', '2027-01-01T13:30:00Z'],
])(
  '%s: opening follows the wall over the change, %s %s, then %s %s',
  (zone, date, opens, nextDay, nextOpens) => {
    const here = site(zone);
    expect(toIso(firstOpening(here, date) ?? 0)).toBe(opens);
    expect(nextOpenDay(here, date)).toBe(nextDay);
    expect(toIso(nextOpening(here, lastClosing(here, date) ?? 0) ?? 0)).toBe(nextOpens);
  },
);

describe('closed weeks', () => {
  const fortnight = Array.from({ length: 14 }, (_, step) => addDays('2026-12-21', step));
  test('the next open day is after them, over the year end', () => {
    expect(openDayFrom(site('Europe/London', fortnight), '2026-12-21')).toBe('2027-01-04');
    expect(nextOpenDay(site(), '2026-12-18', noted(fortnight))).toBe('2027-01-04');
  });

  test('a note that opens a day in between is found', () => {
    const changes = noted(fortnight, { '2026-12-30': { open: '10:00', shut: '12:00' } });
    expect(nextOpenDay(site(), '2026-12-18', changes)).toBe('2026-12-30');
  });

  test('a site without hours never opens', () => {
    const never = { ...site(), hours: { mon: [], tue: [], wed: [], thu: [], fri: [], sat: [], sun: [] } };
    expect(nextOpening(never, Date.UTC(2026, 10, 23))).toBeNull();
    expect(nextOpenDay(never, '2026-11-23')).toBeNull();
    expect(openTimes(never, '2026-11-23', noted([], { '2026-11-23': { shut: '13:00' } }))).toEqual([]);
  });
});

test('a clock change that skips a whole span leaves none; one that shortens it shortens it', () => {
  const night = { ...site(), hours: { ...site().hours, sun: [{ open: '01:10', shut: '02:00' }] } };
  expect(openSpans(night, '2026-03-22')).toHaveLength(1);
  // 01:00 to 02:00 is skipped on 2026-03-29: 01:10 is read as 02:10, after closing.
  expect(openSpans(night, '2026-03-29')).toEqual([]);
});

test('at every instant: open now, or the next opening is ahead and the minute before it is shut', () => {
  const zones = ['Europe/London', 'Australia/Lord_Howe', 'America/St_Johns', 'Asia/Kathmandu'];
  const minute = fc.integer({ min: Date.UTC(2024, 0, 1) / MINUTE, max: Date.UTC(2031, 0, 1) / MINUTE });
  fc.assert(
    fc.property(fc.constantFrom(...zones), minute, (zone, minutes) => {
      const here = site(zone);
      const at = minutes * MINUTE;
      const from = openFrom(here, at);
      expect(from).not.toBeNull();
      if (from === null) return;
      expect(isOpen(here, from)).toBe(true);
      if (from === at) return;
      expect(from).toBeGreaterThan(at);
      expect(isOpen(here, from - MINUTE)).toBe(false);
      expect(from - at).toBeLessThan(3 * 24 * 60 * MINUTE);
    }),
  );
});
