import type { Practice } from '../../core/practice/practice.ts';

const hours = [{ open: '08:30', shut: '17:30' }];
const week = { mon: hours, tue: hours, wed: hours, thu: hours, fri: hours, sat: [], sun: [] };
const noNotes = { 'set-up': [], pack: [], clean: [], calibrate: [] };

export const LEAD = '@rosa:example.org';
export const STAFF = '@tom:example.org';
export const OTHER = '@ann:example.org';
export const QUAY_ROOM = '!quay:example.org';
export const NORTH_ROOM = '!north:example.org';

/** An invented practice of two sites, built by hand: the practice file's parser has tests of its own. */
export function ferngate(over: Partial<Practice> = {}): Practice {
  return {
    name: 'Ferngate Dental',
    timezone: 'Europe/London',
    dates: 'day-first',
    sites: [
      {
        id: 'quay',
        name: 'Quay Street',
        also: [],
        timezone: 'Europe/London',
        rooms: [],
        hours: week,
        closed: [],
      },
      { id: 'north', name: 'North', also: [], timezone: 'Europe/London', rooms: [], hours: week, closed: [] },
    ],
    scanners: [
      { id: 'A', name: 'blue scanner', also: ['blue'], home: 'quay', notes: noNotes },
      { id: 'B', name: 'green scanner', also: ['green'], home: 'quay', notes: noNotes },
    ],
    autoclaves: [],
    tips: ['1', '2', '3', '4', '5', '6'].map((id) => ({ id, home: 'quay', cycles: 100, cyclesSoFar: 0 })),
    people: [
      { name: 'Rosa', also: [], id: LEAD, part: 'lead' },
      { name: 'Tom', also: [], id: STAFF, part: 'staff' },
      { name: 'Ann', also: [], id: OTHER, part: 'staff' },
    ],
    chat: [
      { room: QUAY_ROOM, sites: ['quay'] },
      { room: NORTH_ROOM, sites: ['north'] },
    ],
    rules: { practice: { loadTable: 'uk' }, bySite: {}, byScanner: {} },
    ...over,
  };
}

/** The same with two autoclaves at the quay, the small one with a validated cycle of its own. */
export function twoAutoclaves(): Practice {
  return ferngate({
    autoclaves: [
      { id: 'big', name: 'big autoclave', also: [], site: 'quay', cycles: [] },
      {
        id: 'small',
        name: 'small autoclave',
        also: [],
        site: 'quay',
        cycles: [{ celsius: 130, minutes: 6 }],
      },
    ],
  });
}
