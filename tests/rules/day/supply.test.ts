import { beforeEach, describe, expect, it } from 'vitest';
import { type SiteSupply, supplyFor } from '../../../core/rules/day/supply/supply-for.ts';
import { shortWords } from '../../../core/rules/day/supply/supply-words.ts';
import { wordsOf } from '../../../core/words/message.ts';
import { baseWith } from '../../practice/base-file.ts';
import { Given } from '../given.ts';
import { play, told } from '../play.ts';
import { ONE_SITE, TWO_ZONES } from './practices.ts';

const ALL = ['1', '2', '3', '4', '5', '6'];
let given: Given;

function supply(local: string, date: string, site = 'quay'): SiteSupply {
  const found = supplyFor(given.view(local), site, date);
  if (found === null) throw new Error(`no site ${site}`);
  return found;
}

function words(local: string, date: string, site = 'quay'): string | null {
  const line = shortWords(given.view(local), supply(local, date, site));
  return line === null ? null : line.map(wordsOf).join('');
}

describe('given six tips that were counted on Monday', () => {
  beforeEach(() => {
    given = new Given(ONE_SITE);
    given.note('2026-11-23 08:00', [
      { kind: 'sterile', tips: ALL },
      { kind: 'calibrated', scanner: 'A', outcome: 'passed' },
    ]);
  });

  it('when six scans are booked, then there are enough; with a seventh, the seventh goes without', () => {
    const times = ['09:00', '09:30', '10:00', '10:10', '10:20', '10:30'];
    given.note('2026-11-23 08:10', { kind: 'booked', count: 6, day: '2026-11-23', times });
    expect(supply('2026-11-23 08:10', '2026-11-23')).toMatchObject({
      short: null,
      sterile: ALL,
      certain: true,
    });
    given.note('2026-11-23 08:11', { kind: 'booked', count: 1, day: '2026-11-23', times: ['10:40'] });
    expect(supply('2026-11-23 08:11', '2026-11-23').short).toEqual({
      at: given.at('2026-11-23 10:40'),
      scans: 1,
    });
  });

  it('when a tip can be sent in time, then it is named with the latest moment: 90 minutes before the scan', () => {
    given.note('2026-11-23 09:00', [
      { kind: 'used', tips: ['1', '2', '3', '4', '5'] },
      { kind: 'booked', count: 2, day: '2026-11-23', times: ['10:00', '15:00'] },
    ]);
    expect(words('2026-11-23 09:00', '2026-11-23')).toBe(
      'Short of sterile tips from 15:00: 1 scan goes without. Send tip 1 by 13:30.',
    );
  });

  it('when a booked scan begins a little early, then it has its tip, and the last one here is not counted for it', () => {
    given.note('2026-11-23 09:00', [
      { kind: 'used', tips: ['1', '2', '3', '4'] },
      { kind: 'booked', count: 2, day: '2026-11-23', times: ['10:00', '10:30'] },
    ]);
    given.note('2026-11-23 09:57', { kind: 'scan-started', scanner: 'A', tip: '5' });
    expect(supply('2026-11-23 09:57', '2026-11-23')).toMatchObject({ short: null, sterile: ['6'] });
    expect(supply('2026-11-23 09:57', '2026-11-23').booked).toHaveLength(1);
  });

  it.each([
    ['long before the booked one', '09:30'],
    ['nearer to the one before it, which it is', '10:02'],
  ])('when a scan begins %s, then the booked one still wants a tip', (_name, time) => {
    given.note('2026-11-23 09:00', [
      { kind: 'used', tips: ['1', '2', '3', '4', '6'] },
      { kind: 'booked', count: 2, day: '2026-11-23', times: ['10:00', '10:15'] },
    ]);
    given.note(`2026-11-23 ${time}`, { kind: 'scan-started', scanner: 'A', tip: '5' });
    expect(supply('2026-11-23 10:05', '2026-11-23').short?.at).toBe(given.at('2026-11-23 10:15'));
  });

  it('when a load holds two tips and loads follow one another, then the first is sent that much sooner', () => {
    const practice = ONE_SITE.replace(/^rules: \{/m, 'rules: {tipsPerLoad: 2, ');
    expect(practice).not.toBe(ONE_SITE);
    given = new Given(practice);
    given.note('2026-11-23 08:00', { kind: 'sterile', tips: ALL });
    given.note('2026-11-23 09:00', [
      { kind: 'used', tips: ALL },
      { kind: 'booked', count: 4, day: '2026-11-23', times: ['15:00', '15:00', '15:00', '15:00'] },
    ]);
    expect(words('2026-11-23 09:00', '2026-11-23')).toBe(
      'Short of sterile tips from 15:00: 4 scans go without. Send tips 1, 2 by 12:00; send tips 3, 4 by 13:30.',
    );
  });

  it('when that moment lies outside opening hours, then it is the closing before it', () => {
    given.note('2026-11-23 09:00', [
      { kind: 'used', tips: ALL },
      { kind: 'booked', count: 1, day: '2026-11-24', times: ['09:00'] },
    ]);
    expect(words('2026-11-23 09:00', '2026-11-24')).toBe(
      'Short of sterile tips from tomorrow 09:00: 1 scan goes without. Send tip 1 by 17:30.',
    );
  });

  it('when no tip can be back in time and no other site has one, then it says so', () => {
    given.note('2026-11-23 09:00', [
      { kind: 'used', tips: ALL },
      { kind: 'booked', count: 2, day: '2026-11-23', times: ['10:00', '10:15'] },
    ]);
    expect(words('2026-11-23 09:00', '2026-11-23')).toBe(
      'Short of sterile tips from 10:00: 2 scans go without. No tip can be back in time: move the scan or bring tips.',
    );
  });

  it('when the site has five loads of its own, then their median takes the place of the 90 minutes', () => {
    const loads = ['1', '2', '3', '4', '5'];
    for (const load of loads) {
      given.note(`2026-11-24 09:0${load}`, [
        { kind: 'used', tips: [load] },
        { kind: 'sent', tips: [load] },
        { kind: 'load-started', load, tips: [load] },
      ]);
      given.note(`2026-11-24 10:0${load}`, { kind: 'load-finished', load, outcome: 'passed' });
    }
    expect(supply('2026-11-24 12:00', '2026-11-24').turnaround).toMatchObject({
      medianMinutes: 60,
      loads: 5,
    });
  });

  it('when scans of today come first, then their tips are not there tomorrow', () => {
    given.note('2026-11-23 09:00', [
      { kind: 'booked', count: 4, day: '2026-11-23', times: ['14:00', '14:30', '15:00', '15:30'] },
      { kind: 'booked', count: 3, day: '2026-11-24', times: ['09:00', '09:30', '10:00'] },
    ]);
    expect(supply('2026-11-23 09:00', '2026-11-23').short).toBeNull();
    expect(supply('2026-11-23 09:00', '2026-11-24').short).toEqual({
      at: given.at('2026-11-24 10:00'),
      scans: 1,
    });
  });

  it('when scans have no times, then they are spread evenly over the hours, the break left out', () => {
    // Wednesday has 4 h before and 4 h after its break.
    given.note('2026-11-23 09:00', { kind: 'booked', count: 4, day: '2026-11-25' });
    const { booked } = supply('2026-11-23 09:00', '2026-11-25');
    expect(booked.map(({ at }) => at)).toEqual(
      ['08:30', '10:30', '13:30', '15:30'].map((time) => given.at(`2026-11-25 ${time}`)),
    );
  });

  it('when scans without times are noted during the day, then they are spread over what is left of it', () => {
    given.note('2026-11-23 13:30', { kind: 'booked', count: 2, day: '2026-11-23' });
    const { booked } = supply('2026-11-23 13:30', '2026-11-23');
    expect(booked.map(({ at }) => at)).toEqual([given.at('2026-11-23 13:30'), given.at('2026-11-23 15:30')]);
  });

  it('when a tip was put on for the scan to come, then it serves it; once scanned with, it does not', () => {
    given.note('2026-11-23 09:00', [
      { kind: 'used', tips: ['2', '3', '4', '5', '6'] },
      { kind: 'booked', count: 1, day: '2026-11-23', times: ['10:00'] },
      { kind: 'fitted', tip: '1', scanner: 'A' },
    ]);
    expect(supply('2026-11-23 09:05', '2026-11-23').short).toBeNull();
    given.note('2026-11-23 09:10', { kind: 'scan-started', scanner: 'A' });
    expect(supply('2026-11-23 09:10', '2026-11-23').short).not.toBeNull();
  });

  it('when a used tip has no cycle left, then it is not one to send', () => {
    given = new Given(ONE_SITE.replace('cycles: 100}', 'cycles: 100, cyclesSoFar: 100}'));
    given.note('2026-11-23 09:00', [
      { kind: 'used', tips: ALL },
      { kind: 'booked', count: 1, day: '2026-11-23', times: ['15:00'] },
      { kind: 'fitted', tip: '6', scanner: 'A' },
    ]);
    expect(words('2026-11-23 09:00', '2026-11-23')).toContain('No tip can be back in time');
  });

  it('when a scan takes two tips by the practice file, then twice as many are needed', () => {
    given = new Given(ONE_SITE.replace('{loadTable: uk}', '{loadTable: uk, tipsPerScan: 2}'));
    given.note('2026-11-23 08:00', [
      { kind: 'sterile', tips: ALL },
      { kind: 'booked', count: 4, day: '2026-11-23', times: ['09:00', '09:30', '10:00', '10:15'] },
    ]);
    expect(supply('2026-11-23 08:00', '2026-11-23').short).toEqual({
      at: given.at('2026-11-23 10:15'),
      scans: 2,
    });
  });

  it('when a tip was stored for longer than the limit, then it is not counted as sterile stock', () => {
    given.note('2026-11-23 09:00', { kind: 'booked', count: 1, day: '2027-11-24', times: ['09:00'] });
    expect(supply('2027-11-23 09:00', '2027-11-24').sterile).toEqual(ALL);
    expect(supply('2027-11-24 08:00', '2027-11-24').sterile).toEqual([]);
  });
});

describe('given a booking that makes a day short', () => {
  beforeEach(() => {
    given = new Given(ONE_SITE);
    given.note('2026-11-23 08:00', [
      { kind: 'sterile', tips: ['1', '2'] },
      { kind: 'used', tips: ['3', '4', '5', '6'] },
      { kind: 'calibrated', scanner: 'A', outcome: 'passed' },
    ]);
    play(given, '2026-11-23 08:00', '2026-11-23 09:00');
    given.note('2026-11-23 09:00', {
      kind: 'booked',
      count: 3,
      day: '2026-11-23',
      times: ['11:00', '14:00', '15:00'],
    });
  });

  it('when the site is open, then it is said at once, with what prevents it', () => {
    expect(told(play(given, '2026-11-23 09:00', '2026-11-23 09:05'), 'supply')).toEqual([
      '2026-11-23 09:00 Short of sterile tips from 15:00: 1 scan goes without. Send tip 3 by 13:30.',
    ]);
  });

  it('when time goes by, then the same shortage is not said again', () => {
    expect(told(play(given, '2026-11-23 09:00', '2026-11-23 17:00'), 'supply')).toHaveLength(1);
  });

  it('when the first scan of it has gone by, then the rest is the same shortage', () => {
    given.note('2026-11-23 09:00', { kind: 'booked', count: 1, day: '2026-11-23', times: ['16:00'] });
    expect(told(play(given, '2026-11-23 09:00', '2026-11-23 14:05'), 'supply')).toHaveLength(1);
    given.note('2026-11-23 14:05', { kind: 'used', tips: ['1', '2'] });
    // The scan at 15:00 has begun with a tip that nobody noted; the one at 16:00 still goes without.
    expect(supply('2026-11-23 15:05', '2026-11-23').short?.at).toBe(given.at('2026-11-23 16:00'));
    expect(told(play(given, '2026-11-23 14:05', '2026-11-23 15:05'), 'supply')).toEqual([]);
  });

  it('when tips are used and it moves about, then it is said again only from an hour earlier on', () => {
    const times = ['11:00', '11:30', '12:00', '12:30', '13:00'];
    given = new Given(ONE_SITE);
    given.note('2026-11-23 08:00', [
      { kind: 'sterile', tips: ['1', '2', '3', '4'] },
      { kind: 'used', tips: ['5', '6'] },
    ]);
    play(given, '2026-11-23 08:00', '2026-11-23 09:00');
    given.note('2026-11-23 09:00', { kind: 'booked', count: 5, day: '2026-11-23', times });
    const begins = (from: string, to: string) =>
      told(play(given, from, to), 'supply').map((text) => text.slice(0, 55));
    expect(begins('2026-11-23 09:00', '2026-11-23 09:10')).toEqual([
      '2026-11-23 09:00 Short of sterile tips from 13:00: 1 sc',
    ]);
    given.note('2026-11-23 09:10', { kind: 'used', tips: ['1'] });
    expect(supply('2026-11-23 09:10', '2026-11-23').short?.at).toBe(given.at('2026-11-23 12:30'));
    expect(begins('2026-11-23 09:10', '2026-11-23 09:20')).toEqual([]);
    given.note('2026-11-23 09:20', { kind: 'used', tips: ['2'] });
    expect(begins('2026-11-23 09:20', '2026-11-23 09:30')).toEqual([
      '2026-11-23 09:20 Short of sterile tips from 12:00: 3 sc',
    ]);
  });

  it('when tips are used today, then the shortage told of tomorrow is not told again', () => {
    given.note('2026-11-23 09:00', { kind: 'cancelled', day: '2026-11-23' });
    const times = ['09:00', '10:00', '11:00', '12:00'];
    given.note('2026-11-23 09:01', { kind: 'booked', count: 4, day: '2026-11-24', times });
    expect(told(play(given, '2026-11-23 09:01', '2026-11-23 09:30'), 'supply')).toHaveLength(1);
    given.note('2026-11-23 09:30', { kind: 'used', tips: ['1', '2'] });
    expect(told(play(given, '2026-11-23 09:30', '2026-11-23 16:00'), 'supply')).toEqual([]);
  });

  it('when another booking makes it short earlier, then that is a new shortage', () => {
    play(given, '2026-11-23 09:00', '2026-11-23 09:30');
    given.note('2026-11-23 09:30', { kind: 'booked', count: 1, day: '2026-11-23', times: ['10:00'] });
    expect(told(play(given, '2026-11-23 09:30', '2026-11-23 09:35'), 'supply')).toEqual([
      '2026-11-23 09:30 Short of sterile tips from 14:00: 2 scans go without. Send tips 3, 4 by 12:30.',
    ]);
  });

  it('when enough tips are sterile again, then nothing is open; when a later booking is short, then that is said', () => {
    play(given, '2026-11-23 09:00', '2026-11-23 09:30');
    given.note('2026-11-23 09:30', [
      { kind: 'sent', tips: ['3'] },
      { kind: 'sterile', tips: ['3'] },
    ]);
    expect(supply('2026-11-23 09:30', '2026-11-23').short).toBeNull();
    given.note('2026-11-23 09:40', { kind: 'booked', count: 1, day: '2026-11-23', times: ['16:00'] });
    expect(told(play(given, '2026-11-23 09:40', '2026-11-23 09:45'), 'supply')).toEqual([
      '2026-11-23 09:40 Short of sterile tips from 16:00: 1 scan goes without. Send tip 4 by 14:30.',
    ]);
  });

  it('when it is noted in the evening, then the brief says it, and no other post does', () => {
    given = new Given(ONE_SITE);
    given.note('2026-11-23 08:00', [
      { kind: 'sterile', tips: ['1'] },
      { kind: 'used', tips: ['2', '3', '4', '5', '6'] },
    ]);
    given.note('2026-11-23 19:00', {
      kind: 'booked',
      count: 2,
      day: '2026-11-24',
      times: ['11:00', '14:00'],
    });
    const posts = play(given, '2026-11-23 19:00', '2026-11-24 10:00');
    expect(told(posts, 'supply')).toEqual([]);
    expect(told(posts, 'brief')[0]).toContain('Short of sterile tips from 14:00');
  });
});

describe('given tips that have not been counted', () => {
  beforeEach(() => {
    given = new Given(ONE_SITE);
  });

  it('when the unknown ones may be enough, then it is a question and no shortage is posted', () => {
    given.note('2026-11-23 09:00', {
      kind: 'booked',
      count: 2,
      day: '2026-11-23',
      times: ['11:00', '14:00'],
    });
    expect(told(play(given, '2026-11-23 09:00', '2026-11-23 17:00'), 'supply')).toEqual([]);
    expect(words('2026-11-23 09:00', '2026-11-23')).toBe(
      'Cannot say yet whether tips will do: 2 scans booked, none is known to be sterile. Not known: tips 1–6.',
    );
  });

  it('when it is short even with all of them, then it is said', () => {
    const times = ['11:00', '11:10', '11:20', '11:30', '11:40', '11:50', '11:55'];
    given.note('2026-11-23 10:40', { kind: 'booked', count: 7, day: '2026-11-23', times });
    expect(told(play(given, '2026-11-23 10:40', '2026-11-23 10:45'), 'supply')).toHaveLength(1);
  });
});

describe('given two sites', () => {
  it('when the other has tips that its own scans do not need, then they are to be brought, and no more', () => {
    given = new Given(
      baseWith(
        ['hours: {mon: 09:00-17:00}', 'hours: {mon: 09:00-17:00}'],
        ['ids: 1-12, home: quay', 'ids: 1-3, home: quay'],
      ),
    );
    given.note('2026-11-23 08:00', [
      { kind: 'used', tips: ['1', '2', '3'] },
      { kind: 'sterile', tips: ['N1', 'N2'] },
      { kind: 'booked', count: 1, day: '2026-11-23', times: ['15:00'], site: 'north' },
      { kind: 'booked', count: 2, day: '2026-11-23', times: ['09:00', '09:10'], site: 'quay' },
    ]);
    expect(words('2026-11-23 08:30', '2026-11-23')).toBe(
      'Short of sterile tips from 09:00: 2 scans go without. Bring 1 tip from North Clinic by 09:00. 1 scan goes without even so.',
    );
  });

  it('when the other site has done its scans, then those no longer need its tips', () => {
    given = new Given(baseWith(['ids: 1-12, home: quay', 'ids: 1-3, home: quay']));
    given.note('2026-11-23 08:00', [
      { kind: 'used', tips: ['1', '2', '3'] },
      { kind: 'sterile', tips: ['N1', 'N2'] },
      { kind: 'booked', count: 2, day: '2026-11-23', times: ['09:30', '10:00'], site: 'north' },
      { kind: 'booked', count: 1, day: '2026-11-23', times: ['11:00'], site: 'quay' },
    ]);
    expect(supply('2026-11-23 10:01', '2026-11-23').outlook.bring).toEqual([
      { site: 'north', count: 1, by: given.at('2026-11-23 11:00') },
    ]);
  });

  it('when they lie in two zones, then each is booked and told by its own clock', () => {
    given = new Given(TWO_ZONES, 'Asia/Kolkata');
    given.note('2026-11-23 09:10', [
      { kind: 'used', tips: ['H1', 'H2', 'H3'] },
      { kind: 'booked', count: 1, day: '2026-11-23', times: ['15:30'], site: 'hill' },
    ]);
    expect(words('2026-11-23 09:10', '2026-11-23', 'hill')).toBe(
      'Short of sterile tips from 15:30: 1 scan goes without. Send tip H1 by 14:00.',
    );
  });
});
