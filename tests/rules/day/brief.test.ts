import { beforeEach, describe, expect, it } from 'vitest';
import { buildBrief } from '../../../core/rules/day/brief/brief.ts';
import { baseWith } from '../../practice/base-file.ts';
import { Given } from '../given.ts';
import { play, told } from '../play.ts';
import { ONE_SITE, TWO_ZONES } from './practices.ts';

const ALL = ['1', '2', '3', '4', '5', '6'];
let given: Given;

/** Everything in its place by Monday 8 am: counted, sterile, calibrated. */
function ready(practice = ONE_SITE): Given {
  const fresh = new Given(practice);
  fresh.note('2026-11-23 08:00', [
    { kind: 'sterile', tips: ALL },
    { kind: 'calibrated', scanner: 'A', outcome: 'passed' },
  ]);
  return fresh;
}

describe('given a site where everything is in its place', () => {
  beforeEach(() => {
    given = ready();
  });

  it('when 15 minutes are left to opening, then the brief is one line', () => {
    expect(told(play(given, '2026-11-23 08:00', '2026-11-23 17:30'), 'brief')).toEqual([
      '2026-11-23 08:15 Quay Street: blue scanner ready; 6 sterile tips; no scans booked; nothing due.',
    ]);
  });

  it('when a week goes by, then there is one brief on each open day and none on closed ones', () => {
    const briefs = play(given, '2026-11-23 08:00', '2026-11-30 08:20').filter(
      ({ about }) => about === 'brief',
    );
    expect(briefs.map(({ at }) => at)).toEqual([
      '2026-11-23 08:15',
      '2026-11-24 08:15',
      '2026-11-25 08:15',
      '2026-11-26 08:15',
      '2026-11-27 08:15',
      '2026-11-30 08:15',
    ]);
  });

  it('when the day has a break, then the brief keeps to its first opening alone', () => {
    expect(told(play(given, '2026-11-25 00:00', '2026-11-25 23:59'), 'brief')).toHaveLength(1);
  });

  it('when a note closes the day, then there is none', () => {
    given.note('2026-11-23 09:00', { kind: 'closed', days: ['2026-11-24'] });
    expect(told(play(given, '2026-11-24 00:00', '2026-11-24 23:59'), 'brief')).toEqual([]);
  });

  it('when a note opens a closed day or moves an opening, then it is 15 minutes before that', () => {
    given.note('2026-11-23 09:00', [
      { kind: 'hours', day: '2026-11-24', open: '10:00' },
      { kind: 'hours', day: '2026-11-28', open: '09:00', shut: '13:00' },
    ]);
    const at = (from: string, to: string) => play(given, from, to).filter(({ about }) => about === 'brief');
    expect(at('2026-11-24 00:00', '2026-11-24 23:59').map((post) => post.at)).toEqual(['2026-11-24 09:45']);
    expect(at('2026-11-28 00:00', '2026-11-28 23:59').map((post) => post.at)).toEqual(['2026-11-28 08:45']);
  });

  it('when the practice sets another time before opening, then that holds', () => {
    const early = ready(ONE_SITE.replace('{loadTable: uk}', '{loadTable: uk, briefBeforeMinutes: 30}'));
    expect(play(early, '2026-11-23 08:00', '2026-11-23 08:20').map(({ at }) => at)).toEqual([
      '2026-11-23 08:00',
    ]);
  });
});

describe('given clocks that change and years that end', () => {
  it('when summer time begins and ends, then the brief is at 08:15 by the local clock on both sides', () => {
    given = ready();
    given.note('2026-11-23 09:00', [
      { kind: 'hours', day: '2027-03-28', open: '08:30', shut: '12:00' },
      { kind: 'hours', day: '2027-10-31', open: '08:30', shut: '12:00' },
    ]);
    for (const [date, utc] of [
      ['2027-03-26', '08:15'],
      ['2027-03-28', '07:15'],
      ['2027-03-29', '07:15'],
      ['2027-10-29', '07:15'],
      ['2027-10-31', '08:15'],
      ['2027-11-01', '08:15'],
    ] as const) {
      const briefs = play(given, `${date}T00:30:00Z`, `${date} 12:00`).filter(
        ({ about }) => about === 'brief',
      );
      expect(briefs.map(({ at }) => given.at(at))).toEqual([Date.parse(`${date}T${utc}:00Z`)]);
    }
  });

  it('when the site is closed over the new year, then the next brief is on the first open day after it', () => {
    given = ready();
    const briefs = play(given, '2026-12-24 08:00', '2027-01-05 08:10').filter(
      ({ about }) => about === 'brief',
    );
    expect(briefs.map(({ at }) => at)).toEqual(['2026-12-24 08:15', '2027-01-04 08:15']);
  });

  it('when sites lie in several zones, then each has its own, in its own chat room, by its own clock', () => {
    given = new Given(TWO_ZONES);
    const posts = play(given, '2026-11-23T00:00:00Z', '2026-11-23T12:00:00Z');
    const briefs = posts.filter(({ about }) => about === 'brief');
    expect(briefs.map(({ at, room }) => [given.at(at), room])).toEqual([
      // 09:00 in India is 03:30 UTC.
      [Date.parse('2026-11-23T03:15:00Z'), '!hill:example.org'],
      [Date.parse('2026-11-23T08:15:00Z'), '!quay:example.org'],
    ]);
  });
});

describe('given things that are not in their place', () => {
  beforeEach(() => {
    given = ready();
  });

  it('when it is Monday again, then the weekly calibration is named with its time', () => {
    expect(told(play(given, '2026-11-30 08:00', '2026-11-30 08:20'), 'brief')).toEqual([
      [
        '2026-11-30 08:15 Quay Street today',
        '• No scans booked',
        '• Blue scanner: ready (weekly calibration, due today)',
        '• Tips: 6 sterile (1–6)',
        '• Calibrate blue scanner at 10:30',
      ].join('\n'),
    ]);
  });

  it('when the weekly calibration was not done on its day, then each later brief names it until it is', () => {
    const briefs = told(play(given, '2026-11-30 08:00', '2026-12-02 09:00'), 'brief');
    expect(briefs[1]).toBe(
      [
        '2026-12-01 08:15 Quay Street today',
        '• No scans booked',
        '• Blue scanner: not ready – weekly calibration, due yesterday',
        '• Tips: 6 sterile (1–6)',
        '• Calibrate blue scanner',
      ].join('\n'),
    );
    given.note('2026-12-02 09:10', { kind: 'calibrated', scanner: 'A', outcome: 'passed' });
    expect(told(play(given, '2026-12-02 09:10', '2026-12-03 08:20'), 'brief')).toEqual([
      '2026-12-03 08:15 Quay Street: blue scanner ready; 6 sterile tips; no scans booked; nothing due.',
    ]);
  });

  it('when tips are on their way round, then they are told by state, the stock first', () => {
    given.note('2026-11-23 09:00', [
      { kind: 'used', tips: ['1', '2'] },
      { kind: 'sent', tips: ['2'] },
      { kind: 'held', items: ['tip:3'] },
      { kind: 'missing', items: ['tip:4'] },
      { kind: 'retired', tips: ['5'] },
    ]);
    const brief = buildBrief(given.view('2026-11-24 08:15'), 'quay', '2026-11-24');
    expect(brief.tips).toEqual([
      { state: 'sterile', tips: ['6'] },
      { state: 'used', tips: ['1'] },
      { state: 'sent', tips: ['2'] },
      { state: 'held', tips: ['3'] },
      { state: 'missing', tips: ['4'] },
    ]);
  });

  it('when scans are booked and tips are short, then it says when, at which scan, and what prevents it', () => {
    given.note('2026-11-23 09:00', [
      { kind: 'used', tips: ['1', '2', '3', '4', '5'] },
      { kind: 'booked', count: 3, day: '2026-11-24', times: ['09:00', '10:30', '15:00'] },
    ]);
    given.told('supply|site:quay|2026-11-24|10:30', 'first', '2026-11-23 09:00');
    const [brief] = told(play(given, '2026-11-24 08:00', '2026-11-24 08:20'), 'brief');
    expect(brief).toContain(
      'Short of sterile tips from 10:30: 2 scans go without. Send tips 1, 2 by 09:00.\n• 3 scans booked, first 09:00',
    );
  });

  it('when a scanner was dropped, then that is said once, with what it waits for', () => {
    given.note('2026-11-23 10:00', { kind: 'fault', item: 'scanner:A', sort: 'dropped' });
    const [brief] = told(play(given, '2026-11-24 08:00', '2026-11-24 08:20'), 'brief');
    expect(brief).toContain('• Blue scanner: not ready – dropped yesterday 10:00, not calibrated since\n');
    expect(brief).toContain('• Calibrate blue scanner');
  });

  it('when a load was left without a result, then it is named with since when', () => {
    given.note('2026-11-23 16:40', { kind: 'load-started', load: '118', tips: ['1', '2'] });
    const [brief] = told(play(given, '2026-11-24 08:00', '2026-11-24 08:20'), 'brief');
    expect(brief).toContain('• Load 118: no result yet, on since yesterday 16:40');
  });

  it('when an incident is open, then it comes first, in every brief until it is closed', () => {
    given.note('2026-11-23 09:00', { kind: 'used', tips: ['1'] });
    given.note('2026-11-23 10:00', { kind: 'fitted', tip: '1', scanner: 'A' });
    const finding = given.state.history.findings.recent().find(({ kind }) => kind === 'unsafe-tip');
    expect(finding).toBeDefined();
    const incident = finding?.key ?? '';
    given.note('2026-11-23 10:01', {
      kind: 'incident-opened',
      incident,
      of: finding?.mark.entry ?? '',
      items: ['tip:1'],
      sort: 'unsafe-tip',
    });
    given.note('2026-11-23 10:02', {
      kind: 'incident-answered',
      incident,
      of: finding?.mark.entry ?? '',
      tip: '1',
      reached: true,
    });
    for (const date of ['2026-11-24', '2026-11-25']) {
      const [brief] = told(play(given, `${date} 08:00`, `${date} 08:20`), 'brief');
      expect(brief?.split('\n')[1]).toMatch(/^• Open incident, .*tip 1 reached a patient/);
    }
    given.note('2026-11-25 09:00', {
      kind: 'incident-closed',
      incident,
      reason: 'told',
    });
    const [after] = told(play(given, '2026-11-26 08:00', '2026-11-26 08:20'), 'brief');
    expect(after).not.toContain('incident');
  });

  it('when a tip that is not sterile was not spoken of for 14 days, then one brief asks for it, and no other', () => {
    given.note('2026-11-23 09:00', { kind: 'used', tips: ['4'] });
    const asks = (date: string) =>
      told(play(given, `${date} 08:00`, `${date} 08:20`), 'brief')[0]?.includes('Where is tip 4?');
    expect(asks('2026-12-07')).toBe(false); // 13 days and 23 h
    expect(asks('2026-12-08')).toBe(true);
    expect(asks('2026-12-09')).toBe(false);
    given.note('2026-12-09 09:00', { kind: 'washed', tips: ['4'] });
    expect(asks('2026-12-23')).toBe(false);
    expect(asks('2026-12-24')).toBe(true);
  });

  it('when a sterile tip was not spoken of for 14 days, then nobody is asked: it is where it should be', () => {
    expect(told(play(given, '2026-12-14 08:00', '2026-12-14 08:20'), 'brief')[0]).not.toContain('Where is');
  });

  it('when a tip was stored for longer than the limit, then it is told apart from the sterile ones', () => {
    given.note('2027-06-01 09:00', [
      { kind: 'used', tips: ['1'] },
      { kind: 'sterile', tips: ['1'] },
      { kind: 'sent', tips: ['2'] },
      { kind: 'sterile', tips: ['2'] },
    ]);
    expect(buildBrief(given.view('2027-11-24 08:15'), 'quay', '2027-11-24').tips).toEqual([
      { state: 'sterile', tips: ['2'] },
      { state: 'used', tips: ['1'] },
      { state: 'unfit', tips: ['3', '4', '5', '6'] },
    ]);
  });

  it('when the practice tests its autoclave daily, then the brief says so until the test is noted', () => {
    given.note('2026-11-23 08:20', { kind: 'autoclave-test', sort: 'penetration', outcome: 'passed' });
    const [brief] = told(play(given, '2026-11-24 08:00', '2026-11-24 08:20'), 'brief');
    expect(brief).toContain('• Before the first load of the autoclave: steam penetration test');
    given.note('2026-11-25 08:00', { kind: 'autoclave-test', sort: 'penetration', outcome: 'passed' });
    const [tested] = told(play(given, '2026-11-25 08:05', '2026-11-25 08:20'), 'brief');
    expect(tested).not.toContain('first load');
  });

  it('when a scanner has left, is on its way here, or is not wiped, then it is not ready and says why', () => {
    given = new Given(TWO_ZONES);
    given.note('2026-11-23 09:00', [
      { kind: 'departed', items: ['scanner:A'], site: 'hill' },
      { kind: 'scan-started', scanner: 'B', tip: 'H1' },
      { kind: 'scan-finished', scanner: 'B' },
    ]);
    const view = given.view('2026-11-24T03:15:00Z');
    const brief = buildBrief(view, 'hill', '2026-11-24');
    expect(
      brief.scanners.map(({ scanner, because }) => [scanner, ...because.map(({ word }) => word)]),
    ).toEqual([
      ['A', 'in-transit', 'never'],
      ['B', 'never', 'not-wiped'],
    ]);
    expect(buildBrief(view, 'quay', '2026-11-24').scanners.map(({ scanner }) => scanner)).toEqual(['A']);
  });
});

describe('given a program that was down at the time of the brief', () => {
  it('when it is back in the same opening hours, then the brief comes once, and says since when', () => {
    given = ready();
    const posts = play(given, '2026-11-24 11:40', '2026-11-24 17:00');
    expect(told(posts, 'brief')).toEqual([
      '2026-11-24 11:40 Quay Street: blue scanner ready; 6 sterile tips; no scans booked; nothing due.\nDue since 08:15.',
    ]);
  });

  it('when it is back after closing, then the next thing is the next brief', () => {
    given = ready();
    const posts = play(given, '2026-11-24 18:00', '2026-11-25 08:20');
    expect(posts.map(({ at, about }) => [at, about])).toEqual([['2026-11-25 08:15', 'brief']]);
  });

  it('when it is started for the first time during the day, then there was no brief to catch up with', () => {
    given = new Given(ONE_SITE);
    expect(told(play(given, '2026-11-24 11:40', '2026-11-24 12:00'), 'brief')).toEqual([]);
    given.note('2026-11-24 12:00', { kind: 'used', tips: ['1'] });
    expect(told(play(given, '2026-11-24 12:00', '2026-11-24 17:00'), 'brief')).toEqual([]);
  });
});

describe('given two sites in one chat room', () => {
  it('when they open together, then their briefs are one post', () => {
    const file = baseWith(
      ['hours: {mon: 09:00-17:00}', 'hours: {mon: 08:30-17:00}'],
      [
        '  - {room: "!quay:example.org", sites: [quay]}\n  - {room: "!north:example.org", sites: [north]}',
        '  - {room: "!all:example.org", sites: [quay, north]}',
      ],
    );
    const briefs = play(new Given(file), '2026-11-23 08:00', '2026-11-23 08:20');
    expect(briefs.map(({ about, room }) => [about, room])).toEqual([['brief', '!all:example.org']]);
    expect(briefs[0]?.text).toMatch(/^Quay Street today\n[\s\S]*\nNorth Clinic today\n/);
  });
});
