import { describe, expect, it } from 'vitest';
import { sporeTestsDue } from '../../core/rules/loads/test-due.ts';
import { openMatters } from '../../core/rules/matters.ts';
import { isQuiet, whenOpen } from '../../core/rules/quiet.ts';
import { type ReadinessWord, readinessOf } from '../../core/rules/readiness.ts';
import { toIso } from '../../core/time/instant.ts';
import { Given } from '../rules/given.ts';
import { play } from '../rules/play.ts';

/** A practice of one site in that zone, open every day, two scanners and some tips. */
function at(zone: string, more = ''): Given {
  const hours = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']
    .map((day) => `${day}: 08:30-17:30`)
    .join(', ');
  const given = new Given(`practice: Test
timezone: ${zone}
sites:
  - {id: here, name: Here, rooms: [{id: r1, name: Room 1}], hours: {${hours}}${more}}
  - {id: there, name: There, rooms: [{id: r2, name: Room 2}], hours: {${hours}}}
scanners:
  - {id: A, name: blue scanner, home: here}
tips:
  - {ids: 1-4, home: here}
chat:
  - {room: "!here:example.org", sites: [here]}
  - {room: "!there:example.org", sites: [there]}
rules: {loadTable: uk}
`);
  return given;
}

/** UTC instants at which calibration is asked for between two local times, the first of each week alone. */
function asked(given: Given, from: string, to: string): readonly string[] {
  return play(given, from, to)
    .filter(({ about, text }) => about === 'calibration' && !text.includes('Due since'))
    .map(({ at: local }) => toIso(given.at(local)));
}

describe('Monday 10:30 on the wall, on both sides of a change (IANA tzdb 2026c; instants computed, as for 09:00 in the table)', () => {
  it.each([
    [
      'Europe/London',
      '2026-03-22 09:00',
      '2026-03-30 18:00',
      ['2026-03-23T10:30:00Z', '2026-03-30T09:30:00Z'],
    ],
    [
      'Europe/London',
      '2026-10-18 09:00',
      '2026-10-26 18:00',
      ['2026-10-19T09:30:00Z', '2026-10-26T10:30:00Z'],
    ],
    [
      'America/New_York',
      '2026-03-01 09:00',
      '2026-03-09 18:00',
      ['2026-03-02T15:30:00Z', '2026-03-09T14:30:00Z'],
    ],
    [
      'America/New_York',
      '2026-10-25 09:00',
      '2026-11-02 18:00',
      ['2026-10-26T14:30:00Z', '2026-11-02T15:30:00Z'],
    ],
    [
      'Australia/Sydney',
      '2026-03-29 09:00',
      '2026-04-06 18:00',
      ['2026-03-29T23:30:00Z', '2026-04-06T00:30:00Z'],
    ],
    [
      'Australia/Adelaide',
      '2026-03-29 09:00',
      '2026-04-06 18:00',
      ['2026-03-30T00:00:00Z', '2026-04-06T01:00:00Z'],
    ],
    [
      'Australia/Lord_Howe',
      '2026-03-29 09:00',
      '2026-04-06 18:00',
      ['2026-03-29T23:30:00Z', '2026-04-06T00:00:00Z'],
    ],
    ['Asia/Kathmandu', '2026-03-29 09:00', '2026-03-30 18:00', ['2026-03-30T04:45:00Z']],
  ])('%s', (zone, from, to, instants) => {
    const given = at(zone);
    given.note(from.replace('09:00', '08:40'), [
      { kind: 'calibrated', scanner: 'A', outcome: 'passed' },
      { kind: 'sterile', tips: ['1', '2', '3', '4'] },
    ]);
    expect(asked(given, from, to)).toEqual(instants);
  });
});

describe('durations run on real elapsed time over a change', () => {
  it.each([
    // London 2026-03-29: 01:00 UTC is 02:00; settling of 25 min from 00:50 ends at 02:15 on the wall.
    ['Europe/London', '2026-03-29T00:50:00Z', '2026-03-29T01:15:00Z'],
    ['Europe/London', '2026-10-25T00:50:00Z', '2026-10-25T01:15:00Z'],
    ['Australia/Lord_Howe', '2026-10-03T15:20:00Z', '2026-10-03T15:45:00Z'],
  ])('%s: settling of 25 min that begins %s ends %s', (zone, moved, settled) => {
    const given = at(zone);
    given.note(moved, { kind: 'moved', items: ['scanner:A'], site: 'there' });
    const words = (instant: string): readonly ReadinessWord[] =>
      readinessOf(given.view(instant), 'A').because.map(({ word }) => word);
    expect(words(toIso(Date.parse(settled) - 1000))).toContain('settling');
    expect(words(settled)).not.toContain('settling');
  });

  it('what falls due in the night of a change waits for 08:30 by the time that holds in the morning', () => {
    const given = at('Europe/London');
    given.note('2026-10-25T00:55:00Z', { kind: 'scan-finished', scanner: 'A', tip: '1' });
    const wipe = openMatters(given.view('2026-10-25T00:56:00Z')).find(({ about }) => about === 'clean');
    expect(wipe?.stages.map(({ at: instant }) => toIso(instant))).toEqual(['2026-10-25T08:30:00Z']);
  });
});

describe('closing and quiet hours by the local clock (tzdb 2026c)', () => {
  it.each([
    ['Europe/London', '2026-03-29T16:29:00Z', false],
    ['Europe/London', '2026-03-29T16:31:00Z', true],
    ['Europe/London', '2026-10-25T17:29:00Z', false],
    ['Europe/London', '2026-10-25T17:31:00Z', true],
    ['Asia/Kolkata', '2026-03-29T12:01:00Z', true],
    ['Asia/Kolkata', '2026-03-29T11:59:00Z', false],
  ])('%s at %s: quiet is %s', (zone, instant, quiet) => {
    const given = at(zone);
    expect(isQuiet(given.practice, given.state, 'here', Date.parse(instant))).toBe(quiet);
  });

  it('London and New York are out of step from 8 to 28 March 2026: each site opens by its own', () => {
    const given = at('Europe/London', ', timezone: America/New_York');
    const opens = (site: string) =>
      toIso(whenOpen(given.practice, given.state, site, Date.parse('2026-03-15T06:00:00Z')));
    expect([opens('here'), opens('there')]).toEqual(['2026-03-15T12:30:00Z', '2026-03-15T08:30:00Z']);
  });
});

describe('year ends, leap days, closed weeks', () => {
  it.each([
    ['2027-12-27', '2028-01-03', 'over a year’s end'],
    ['2028-02-28', '2028-03-06', 'over a leap day'],
    ['2028-02-22', '2028-02-29', 'on a leap day'],
    ['2027-02-24', '2027-03-03', 'over the end of a February with 28 days'],
  ])('a spore test run on %s is due on %s (%s; CDC 2003, VI.F: at least weekly)', (ran, due) => {
    const given = at('Europe/London');
    given.note(`${ran} 10:00`, { kind: 'spore-test', outcome: 'passed' });
    const [matter] = sporeTestsDue(given.view(`${ran} 11:00`));
    expect(matter?.stages).toEqual([{ stage: 'first', at: given.at(`${due} 08:30`) }]);
  });

  it('a Monday that is a leap day is asked for as any other: 29 February 2044 is one, and so is 1 January 2029', () => {
    for (const monday of ['2044-02-29', '2029-01-01']) {
      const given = at('Europe/London');
      const before = toIso(given.at(`${monday} 09:00`) - 86_400_000);
      given.note(before, [
        { kind: 'calibrated', scanner: 'A', outcome: 'passed' },
        { kind: 'sterile', tips: ['1', '2', '3', '4'] },
      ]);
      expect(asked(given, `${monday} 09:00`, `${monday} 18:00`)).toEqual([`${monday}T10:30:00Z`]);
    }
  });

  it('weeks that the site is closed are asked for once, on the first open day', () => {
    const given = at('Europe/London', ', closed: [2026-12-24 to 2027-01-05]');
    given.note('2026-12-21 09:00', [
      { kind: 'calibrated', scanner: 'A', outcome: 'passed' },
      { kind: 'sterile', tips: ['1', '2', '3', '4'] },
    ]);
    expect(asked(given, '2026-12-22 09:00', '2027-01-06 18:00')).toEqual(['2027-01-06T10:30:00Z']);
  });
});
