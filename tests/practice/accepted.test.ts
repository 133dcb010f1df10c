import { describe, expect, test } from 'vitest';
import type { Practice } from '../../core/practice/practice.ts';
import { BASE, baseWith, practiceIn } from './base-file.ts';

test('the base file in full', () => {
  const span = (open: string, shut: string) => ({ open, shut });
  const none = { 'set-up': [], pack: [], clean: [], calibrate: [] };
  expect(practiceIn(BASE)).toEqual({
    name: 'Ferngate Dental',
    timezone: 'Europe/London',
    dates: 'day-first',
    sites: [
      {
        id: 'quay',
        name: 'Quay Street',
        also: ['main', 'quay'],
        timezone: 'Europe/London',
        rooms: [
          { id: 's1', name: 'Surgery 1', also: ['room 1'] },
          { id: 'steri', name: 'Steri room', also: [] },
        ],
        hours: {
          mon: [span('08:30', '17:30')],
          tue: [],
          wed: [span('08:30', '12:30'), span('13:30', '17:30')],
          thu: [],
          fri: [],
          sat: [],
          sun: [],
        },
        closed: ['2026-12-25'],
      },
      {
        id: 'north',
        name: 'North Clinic',
        also: [],
        timezone: 'Europe/London',
        rooms: [{ id: 's1', name: 'Surgery 1', also: [] }],
        hours: { mon: [span('09:00', '17:00')], tue: [], wed: [], thu: [], fri: [], sat: [], sun: [] },
        closed: [],
      },
    ],
    scanners: [
      { id: 'A', name: 'blue scanner', also: ['blue'], home: 'quay', notes: none },
      { id: 'B', name: 'green scanner', also: ['green'], home: 'north', notes: none },
    ],
    autoclaves: [
      { id: 'big', name: 'big autoclave', also: [], site: 'quay', cycles: [{ celsius: 134, minutes: 3.5 }] },
    ],
    tips: [
      ...Array.from({ length: 12 }, (_, index) => {
        return { id: String(index + 1), home: 'quay', cycles: 100, cyclesSoFar: 0 };
      }),
      { id: 'N1', home: 'north', cycles: null, cyclesSoFar: 0 },
      { id: 'N2', home: 'north', cycles: null, cyclesSoFar: 0 },
    ],
    people: [
      { name: 'Rosa', also: [], id: '@rosa:example.org', part: 'lead' },
      { name: 'Tom', also: [], id: null, part: 'staff' },
    ],
    chat: [
      { room: '!quay:example.org', sites: ['quay'] },
      { room: '!north:example.org', sites: ['north'] },
    ],
    rules: { practice: { loadTable: 'uk' }, bySite: {}, byScanner: {} },
  });
});

/** Change → what the practice then holds, at the place looked at. */
type Row = readonly [string, string, (practice: Practice) => unknown, unknown];
const quay = (practice: Practice) => practice.sites[0];
const monday = (practice: Practice) => quay(practice)?.hours.mon.map(({ open, shut }) => `${open}-${shut}`);
const open = (practice: Practice) => {
  return Object.entries(quay(practice)?.hours ?? {}).flatMap(([day, spans]) =>
    spans.length > 0 ? [day] : [],
  );
};
const ids = (practice: Practice) => practice.tips.map(({ id }) => id).join(' ');

const rows: Readonly<Record<string, readonly Row[]>> = {
  'one word where a list is usual': [
    ['also: [main, quay]', 'also: main', (p) => quay(p)?.also, ['main']],
    ['also: [main, quay]', 'also: main, the old house', (p) => quay(p)?.also, ['main', 'the old house']],
    ['also: [main, quay]', 'also:', (p) => quay(p)?.also, []],
    ['closed: [2026-12-25]', 'closed: 2026-12-25', (p) => quay(p)?.closed, ['2026-12-25']],
    ['sites: [north]', 'sites: north', (p) => p.chat[1]?.sites, ['north']],
    ['sites: [north]', 'sites: "north, quay"', (p) => p.chat[1]?.sites, ['north', 'quay']],
    [
      'also: [blue]',
      'notes: {pack: "Coil it, loosely"}',
      (p) => p.scanners[0]?.notes.pack,
      ['Coil it, loosely'],
    ],
  ],
  'times and days as people write them': [
    ['mon: 08:30-17:30', 'mon: "8:30 - 17:30"', monday, ['08:30-17:30']],
    ['mon: 08:30-17:30', 'mon: 8.30 to 17.30', monday, ['08:30-17:30']],
    ['mon: 08:30-17:30', 'mon: 9am – 5:30pm', monday, ['09:00-17:30']],
    ['mon: 08:30-17:30', 'mon: 12am-12pm', monday, ['00:00-12:00']],
    ['mon: 08:30-17:30', 'mon: [08:30-12:30, 12:30-17:30]', monday, ['08:30-17:30']],
    ['mon: 08:30-17:30', 'mon: closed', monday, []],
    ['mon: 08:30-17:30, wed', 'Monday: 08:30-17:30, Weds', open, ['mon', 'wed']],
    ['mon: 08:30-17:30, wed', 'mon-tue: 08:30-17:30, wed', open, ['mon', 'tue', 'wed']],
    ['mon: 08:30-17:30, wed', 'fri-mon: 08:30-17:30, wed', open, ['mon', 'wed', 'fri', 'sat', 'sun']],
    [
      '2026-12-25',
      '2026-12-30 to 2027-01-02',
      (p) => quay(p)?.closed,
      ['2026-12-30', '2026-12-31', '2027-01-01', '2027-01-02'],
    ],
    ['2026-12-25', '2026-12-25/2026-12-26', (p) => quay(p)?.closed, ['2026-12-25', '2026-12-26']],
    [
      '2026-12-25',
      '{from: 2026-12-25, to: 2026-12-26}',
      (p) => quay(p)?.closed,
      ['2026-12-25', '2026-12-26'],
    ],
    ['2026-12-25', '2026-12-25, 2026-1-5, 2026-12-25', (p) => quay(p)?.closed, ['2026-01-05', '2026-12-25']],
  ],
  'ids stay as written': [
    ['ids: 1-12', 'ids: 5', ids, '5 N1 N2'],
    ['ids: 1-12', 'ids: 007', ids, '007 N1 N2'],
    ['ids: 1-12', 'ids: 08-11', ids, '08 09 10 11 N1 N2'],
    ['ids: 1-12', 'ids: "1-3, 7"', ids, '1 2 3 7 N1 N2'],
    ['ids: 1-12', 'ids: [1-3, 7, T-04]', ids, '1 2 3 7 T-04 N1 N2'],
    ['ids: 1-12', 'ids: T1-T3', ids, 'T1 T2 T3 N1 N2'],
    ['ids: 1-12', 'ids: T1-3', ids, 'T1 T2 T3 N1 N2'],
    ['ids: 1-12', 'ids: T-08-T-10', ids, 'T-08 T-09 T-10 N1 N2'],
    ['ids: 1-12', 'ids: 1 to 3', ids, '1 2 3 N1 N2'],
    ['{id: A,', '{id: 1,', (p) => p.scanners[0]?.id, '1'],
    ['{id: A,', '{id: no,', (p) => p.scanners[0]?.id, 'no'],
  ],
  'what may be left out': [
    ['name: blue scanner, ', '', (p) => p.scanners[0]?.name, 'A'],
    ['\ndates: day-first', '', (p) => p.dates, 'day-first'],
    ['\nrules: {loadTable: uk}', '', (p) => p.rules, { practice: {}, bySite: {}, byScanner: {} }],
    [', cycles: [{celsius: 134, minutes: 3.5}]', '', (p) => p.autoclaves[0]?.cycles, []],
    [
      ', cycles: 100, cyclesSoFar: 0',
      '',
      (p) => p.tips[0],
      { id: '1', home: 'quay', cycles: null, cyclesSoFar: 0 },
    ],
    [
      '    hours: {mon: 09:00-17:00}\n',
      '',
      (p) => [p.sites[1]?.hoursAssumed, p.sites[1]?.hours.sat],
      [true, []],
    ],
    ['!north:example.org', '!aBcD_-123', (p) => p.chat[1]?.room, '!aBcD_-123'],
    ['part: lead', 'part: Manager', (p) => p.people[0]?.part, 'manager'],
    ['day-first', 'Month-First', (p) => p.dates, 'month-first'],
    ['Europe/London', 'europe/london', (p) => p.timezone, 'Europe/London'],
    ['Europe/London', 'Europe/Kyiv', (p) => p.timezone, 'Europe/Kyiv'],
    ['Europe/London', 'UTC', (p) => p.timezone, 'UTC'],
  ],
  'names that may be alike': [
    ['name: Steri room', 'name: Quay Street', (p) => quay(p)?.rooms[1]?.name, 'Quay Street'],
    ['{id: A,', '{id: quay,', (p) => p.scanners[0]?.id, 'quay'],
    ['{name: Tom}', '{name: Blue}', (p) => p.people[1]?.name, 'Blue'],
    ['also: [main, quay]', 'also: [Quay Street, The Quay, quay]', (p) => quay(p)?.also.length, 3],
  ],
  'rules of its own': [
    ['loadTable: uk', 'privateNotes: yes', (p) => p.rules.practice, { privateNotes: true }],
    ['loadTable: uk', 'calibrationAskAt: 9:30', (p) => p.rules.practice, { calibrationAskAt: '09:30' }],
    [
      'loadTable: uk',
      'sites: {north: {loadTable: UK}}',
      (p) => p.rules.bySite,
      { north: { loadTable: 'uk' } },
    ],
    [
      'loadTable: uk',
      'scanners: {A: {settleTauMinutes: 30}}',
      (p) => p.rules.byScanner,
      { A: { settleTauMinutes: 30 } },
    ],
  ],
};

describe.each(Object.entries(rows))('%s', (_, table) => {
  test.each(table)('%j → %j', (from, to, look, expected) => {
    expect(look(practiceIn(baseWith([from, to])))).toEqual(expected);
  });
});

describe('a practice of one site', () => {
  const one = `practice: One
timezone: Europe/London
sites: [{id: only, name: Only Street, hours: {mon-fri: 09:00-17:00}}]
scanners: [{id: A, name: the scanner}]
autoclaves: [{id: big}]
tips: [{ids: 1-3}]
`;
  test('needs no homes', () => {
    const practice = practiceIn(one);
    expect(practice.scanners[0]?.home).toBe('only');
    expect(practice.autoclaves[0]?.site).toBe('only');
    expect(practice.tips.map(({ home }) => home)).toEqual(['only', 'only', 'only']);
  });

  test('whose site has the zone needs none of its own', () => {
    const moved = one
      .replace('timezone: Europe/London\n', '')
      .replace('{id: only', '{timezone: Asia/Kolkata, id: only');
    expect(practiceIn(moved)).toMatchObject({
      timezone: 'Asia/Kolkata',
      sites: [{ timezone: 'Asia/Kolkata' }],
    });
  });

  test('may be written by a Windows editor', () => {
    expect(practiceIn(one.replaceAll('\n', '\r\n'))).toEqual(practiceIn(one));
  });

  test('may repeat itself with an anchor', () => {
    const shared = one.replace('{mon-fri: 09:00-17:00}', '&week {mon-fri: 09:00-17:00}');
    const two = shared.replace('}}]\nscanners', '}}, {id: two, hours: *week}]\nscanners');
    const homes = two
      .replace('the scanner', 'the scanner, home: two')
      .replace('id: big', 'id: big, site: two')
      .replace('1-3', '1-3, home: two');
    const practice = practiceIn(homes);
    expect(practice.sites[1]?.hours).toEqual(practice.sites[0]?.hours);
  });
});
