import { describe, expect, it } from 'vitest';
import type { Ask } from '../../core/reading/ask.ts';
import { answerTo, textOf } from './ask.ts';
import { ALL_ROOM, allSterile, fortyTips, HILL_ROOM, ids } from './three-sites.ts';

const OUT: Ask = { kind: 'tips', filter: 'out' };
const AT = '2026-11-24 11:00';
const tom = { from: '@tom:example.org' };

function one() {
  const given = allSterile(fortyTips());
  given.note('2026-11-24 10:15', { kind: 'fitted', tip: '4', scanner: 'A' }, tom);
  return given;
}

function five() {
  const given = one();
  given.note('2026-11-24 10:20', { kind: 'used', tips: ['2', '6'] });
  given.note('2026-11-23 16:40', { kind: 'used', tips: ['5'] }, { ...tom, noted: '2026-11-24 10:21' });
  given.note('2026-11-24 04:00', { kind: 'sent', tips: ['31'] }, { room: HILL_ROOM });
  return given;
}

function forty() {
  const given = five();
  given.note('2026-11-24 10:30', { kind: 'used', tips: [...ids(7, 18)] });
  given.note('2026-11-24 10:31', { kind: 'used', tips: ['1', '3'] }, tom);
  given.note('2026-11-24 10:32', { kind: 'used', tips: ids(19, 30) });
  given.note('2026-11-24 10:33', [
    { kind: 'washed', tips: ids(19, 22) },
    { kind: 'bagged', tips: ['23', '24'] },
    { kind: 'sent', tips: ['25'] },
    { kind: 'missing', items: ['tip:26'] },
  ]);
  given.note('2026-11-24 10:34', { kind: 'load-started', load: '140', tips: ids(27, 30) });
  given.note('2026-11-24 05:00', { kind: 'used', tips: ids(32, 40) }, { room: HILL_ROOM });
  given.note(
    '2026-11-24 05:30',
    [
      { kind: 'held', items: ['tip:33'], reason: 'mirror is scratched all along the edge and looks cloudy' },
      { kind: 'held', items: ['tip:34'] },
    ],
    { room: HILL_ROOM },
  );
  return given;
}

describe('which tips are out?', () => {
  it('none', () => {
    const given = allSterile(fortyTips());
    expect(textOf(given, OUT, AT, ALL_ROOM)).toBe('No tip is out: every one is sterile and on the shelf.');
    expect(textOf(given, OUT, AT, HILL_ROOM)).toBe(
      'No tip is out at Hill House: every one is sterile and on the shelf.',
    );
    expect(answerTo(given, OUT, AT, ALL_ROOM).items).toEqual([]);
  });

  it('one', () => {
    expect(textOf(one(), OUT, AT, ALL_ROOM)).toBe(`1 tip out, at Quay Street.
• On blue scanner: tip 4 since 10:15 (Tom)`);
    expect(answerTo(one(), OUT, AT, ALL_ROOM).items).toEqual(['tip:4']);
  });

  it('five, each site by its own clock: half past nine at Hill House is four in London', () => {
    expect(textOf(five(), OUT, AT, ALL_ROOM)).toBe(`5 tips out at 2 sites.
Quay Street: 4
• On blue scanner: tip 4 since 10:15 (Tom)
• Used: tips 2, 6 since 10:20 (Rosa); tip 5 since yesterday 16:40 (Tom)
Hill House: 1
• Sent to the autoclave: tip 31 since 09:30 (Rosa)`);
  });

  it('the chat room’s own site where nothing is said, the site said where one is', () => {
    expect(textOf(five(), OUT, AT, HILL_ROOM)).toBe(`1 tip out at Hill House.
• Sent to the autoclave: tip 31 since 09:30 (Rosa)`);
    expect(textOf(five(), { ...OUT, site: 'north' }, AT, HILL_ROOM)).toBe(
      'No tip is out at North Clinic: every one is sterile and on the shelf.',
    );
  });

  it('forty over three sites: groups with their count, of many only the first since when', () => {
    expect(textOf(forty(), OUT, AT, ALL_ROOM)).toBe(`40 tips out at 3 sites.
Quay Street: 18
• On blue scanner: tip 4 since 10:15 (Tom)
• Used, 17: tips 1–3, 5–18, the first since yesterday 16:40
North Clinic: 12
• Washed, 4: tips 19–22 since 10:33 (Rosa)
• Bagged: tips 23, 24 since 10:33 (Rosa)
• Sent to the autoclave: tip 25 since 10:33 (Rosa)
• In load 140, 4: tips 27–30 since 10:34 (Rosa)
• Missing: tip 26 since 10:33 (Rosa)
Hill House: 10
• Used, 7: tips 32, 35–40 since 10:30 (Rosa)
• Sent to the autoclave: tip 31 since 09:30 (Rosa)
• Held (mirror is scratched all along the edge…): tip 33 since 11:00 (Rosa)
• Held: tip 34 since 11:00 (Rosa)`);
  });

  it('nothing known yet: says so, and how to tell it', () => {
    expect(textOf(fortyTips(), OUT, AT, HILL_ROOM)).toBe(`10 tips out at Hill House, none of them known yet.
• Not known yet, 10: tips 31–40
Tell me which are which, such as “tips 31 to 40 are sterile and on the shelf”.`);
  });

  it('retired tips are no longer anywhere', () => {
    const given = allSterile(fortyTips());
    given.note('2026-11-24 09:00', { kind: 'retired', tips: ['3'], reason: 'cracked' });
    expect(textOf(given, OUT, AT)).toBe(
      'No tip is out at Quay Street: every one is sterile and on the shelf.',
    );
  });

  it('a tip on its way, one used and still on, one past a year on the shelf', () => {
    const given = allSterile(fortyTips());
    given.note('2027-11-23 10:00', { kind: 'departed', items: ['tip:1'], site: 'north' });
    given.note('2027-11-24 09:00', { kind: 'scan-started', scanner: 'A', tip: '2' }, tom);
    given.note('2027-11-24 09:20', { kind: 'scan-finished', scanner: 'A' }, tom);
    expect(textOf(given, { ...OUT, site: 'quay' }, '2027-11-24 11:00')).toBe(`18 tips out at Quay Street.
• On blue scanner, used: tip 2 since 09:20 (Tom)
• On the way to North Clinic, sterile: tip 1 since yesterday 10:00 (Rosa)
• Stored too long, 16: tips 3–18`);
  });
});

describe('which are used, and all of them', () => {
  it('used ones, on a scanner or off it', () => {
    const given = five();
    given.note('2026-11-24 10:25', { kind: 'scan-finished', scanner: 'A' });
    expect(textOf(given, { kind: 'tips', filter: 'used' }, AT)).toBe(`4 tips used at Quay Street.
• On blue scanner, used: tip 4 since 10:25 (Rosa)
• Used: tips 2, 6 since 10:20 (Rosa); tip 5 since yesterday 16:40 (Tom)`);
    expect(textOf(given, { kind: 'tips', filter: 'used' }, AT, HILL_ROOM)).toBe(
      'No used tip at Hill House waits to be sent.',
    );
  });

  it('all, the sterile ones first', () => {
    expect(textOf(one(), { kind: 'tips', filter: 'all' }, AT)).toBe(`18 tips at Quay Street.
• Sterile, 17: tips 1–3, 5–18
• On blue scanner: tip 4 since 10:15 (Tom)`);
  });
});
