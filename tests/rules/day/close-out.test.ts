import { beforeEach, describe, expect, it } from 'vitest';
import { openMatters } from '../../../core/rules/matters.ts';
import { Given } from '../given.ts';
import { play, told } from '../play.ts';
import { ONE_SITE } from './practices.ts';

/** Wiped, covered and sent can be ticked off; a load's result has to be typed. */
const HOW = '✅ or reply “done” when it is; ⏰ or “later” to put it off.';

let given: Given;

beforeEach(() => {
  given = new Given(ONE_SITE);
  given.note('2026-11-23 08:00', [
    { kind: 'sterile', tips: ['1', '2', '3', '4', '5', '6'] },
    { kind: 'calibrated', scanner: 'A', outcome: 'passed' },
  ]);
});

function closeOuts(from: string, to: string): readonly string[] {
  return told(play(given, from, to), 'close-out');
}

describe('given a day that ends', () => {
  it('when nothing is open, then there is no post', () => {
    expect(closeOuts('2026-11-23 08:00', '2026-11-23 23:00')).toEqual([]);
  });

  it('when a tip, a scanner and a load are open, then 15 minutes before closing each is named', () => {
    given.note('2026-11-23 16:00', [
      { kind: 'scan-started', scanner: 'A', tip: '1' },
      { kind: 'scan-finished', scanner: 'A' },
      { kind: 'removed', tips: ['1'] },
      { kind: 'load-started', load: '118', tips: ['2', '3'] },
    ]);
    const posts = play(given, '2026-11-23 17:10', '2026-11-23 23:00').filter(
      ({ about }) => about === 'close-out',
    );
    expect(posts).toEqual([
      {
        at: '2026-11-23 17:15',
        room: '!quay:example.org',
        about: 'close-out',
        text: [
          'Quay Street before closing:',
          '• Wipe down blue scanner',
          '• Send tip 1: used and not sent',
          '• Cover blue scanner',
          '• Load 118: no result yet, on since 16:00',
          HOW,
        ].join('\n'),
        items: ['scanner:A', 'tip:1', 'load:118'],
        mentions: [],
      },
    ]);
  });

  it('when a used tip is still on the scanner, then it is to come off', () => {
    given.note('2026-11-23 16:00', [
      { kind: 'scan-started', scanner: 'A', tip: '1' },
      { kind: 'scan-finished', scanner: 'A' },
      { kind: 'wiped', scanner: 'A', part: 'all' },
    ]);
    expect(closeOuts('2026-11-23 17:10', '2026-11-23 18:00')).toEqual([
      `2026-11-23 17:15 Quay Street before closing:\n• Take off tip 1: used, still on blue scanner\n• Cover blue scanner\n${HOW}`,
    ]);
  });

  it('when all of it was dealt with, then there is no post', () => {
    given.note('2026-11-23 16:00', [
      { kind: 'scan-started', scanner: 'A', tip: '1' },
      { kind: 'scan-finished', scanner: 'A' },
      { kind: 'removed', tips: ['1'] },
    ]);
    given.note('2026-11-23 16:30', [
      { kind: 'sent', tips: ['1'] },
      { kind: 'wiped', scanner: 'A', part: 'all' },
      { kind: 'covered', scanner: 'A' },
    ]);
    expect(closeOuts('2026-11-23 16:30', '2026-11-23 23:00')).toEqual([]);
  });

  it('when the day has a break, then the close-out keeps to the last closing', () => {
    given.note('2026-11-25 09:00', { kind: 'used', tips: ['1'] });
    expect(closeOuts('2026-11-25 09:00', '2026-11-25 23:00').map((post) => post.slice(0, 16))).toEqual([
      '2026-11-25 17:15',
    ]);
  });

  it('when a note moves the closing, then it is 15 minutes before that', () => {
    given.note('2026-11-24 09:00', [
      { kind: 'used', tips: ['1'] },
      { kind: 'hours', day: '2026-11-24', shut: '15:00' },
    ]);
    expect(closeOuts('2026-11-24 09:00', '2026-11-24 23:00').map((post) => post.slice(0, 16))).toEqual([
      '2026-11-24 14:45',
    ]);
  });

  it('when something only comes up in the last minutes, then no second list is made of it', () => {
    play(given, '2026-11-23 17:00', '2026-11-23 17:16');
    given.note('2026-11-23 17:20', { kind: 'used', tips: ['1'] });
    expect(closeOuts('2026-11-23 17:20', '2026-11-23 23:00')).toEqual([]);
  });
});

describe('given a program that was down at the time of the close-out', () => {
  beforeEach(() => {
    given.note('2026-11-23 16:00', { kind: 'used', tips: ['1'] });
  });

  it('when it is back before closing, then the close-out comes, and says since when', () => {
    expect(closeOuts('2026-11-23 17:25', '2026-11-23 23:00')).toEqual([
      `2026-11-23 17:25 Quay Street before closing:\n• Send tip 1: used and not sent\nDue since 17:15.\n${HOW}`,
    ]);
  });

  it('when it is back after closing, then it stays silent and the next brief names what is open', () => {
    const posts = play(given, '2026-11-23 17:45', '2026-11-24 08:20');
    expect(told(posts, 'close-out')).toEqual([]);
    const next = openMatters(given.view('2026-11-23 17:45')).filter(({ about }) => about === 'close-out');
    expect(next.map(({ stages }) => stages[0]?.at)).toEqual([given.at('2026-11-24 17:15')]);
    expect(told(posts, 'brief')[0]).toContain('1 used (1)');
  });
});
