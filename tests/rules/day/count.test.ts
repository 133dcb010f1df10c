import { describe, expect, it } from 'vitest';
import { baseWith } from '../../practice/base-file.ts';
import { Given } from '../given.ts';
import { play, told } from '../play.ts';
import { ONE_SITE } from './practices.ts';

describe('given a record in which no tips have been counted', () => {
  it('when the site opens after the first start, then one question asks for what is unknown', () => {
    const given = new Given(ONE_SITE);
    const posts = play(given, '2026-11-22 20:00', '2026-11-27 12:00');
    expect(told(posts, 'question')).toEqual([
      [
        '2026-11-23 08:30 What have we got? I know nothing yet of these tips:',
        '• Quay Street: tips 1–6',
        'Type what is sterile, used, on a scanner or lost, in one note or several. Such as: “tips 1 to 6 are sterile and on the shelf”.',
        'Calibrated lately? Say when: “calibrated blue scanner yesterday at 11”.',
      ].join('\n'),
    ]);
  });

  it('when it is started while the site is open, then it asks at once', () => {
    const given = new Given(ONE_SITE);
    const [first] = play(given, '2026-11-23 10:00', '2026-11-23 10:05');
    expect(first).toMatchObject({ at: '2026-11-23 10:00', about: 'question', room: '!quay:example.org' });
  });

  it('when a chat room serves several sites, then it is one question for all of them', () => {
    const given = new Given(
      baseWith([
        '  - {room: "!quay:example.org", sites: [quay]}\n  - {room: "!north:example.org", sites: [north]}',
        '  - {room: "!all:example.org", sites: [quay, north]}',
      ]),
    );
    const questions = told(play(given, '2026-11-23 08:00', '2026-11-23 17:00'), 'question');
    expect(questions).toHaveLength(1);
    expect(questions[0]).toContain('• Quay Street: tips 1–12\n• North Clinic: tips N1, N2');
  });

  it('when the tips are told before the site opens, then nothing is asked', () => {
    const given = new Given(ONE_SITE);
    given.note('2026-11-23 08:00', { kind: 'sterile', tips: ['1', '2', '3', '4', '5', '6'] });
    expect(told(play(given, '2026-11-23 08:00', '2026-11-27 12:00'), 'question')).toEqual([]);
  });

  it('when each day begins, then the brief asks too, until the count is noted', () => {
    const given = new Given(ONE_SITE);
    const [brief] = told(play(given, '2026-11-23 08:00', '2026-11-23 08:20'), 'brief');
    expect(brief).toContain('• Not counted yet: say which tips are which');
    given.note('2026-11-23 09:00', { kind: 'sterile', tips: ['1', '2', '3', '4', '5', '6'] });
    const [next] = told(play(given, '2026-11-24 08:00', '2026-11-24 08:20'), 'brief');
    expect(next).not.toContain('Not counted');
  });
});

describe('given a count that told half of the tips', () => {
  it('when ten minutes have brought no more, then the rest is listed once', () => {
    const given = new Given(ONE_SITE);
    given.note('2026-11-23 09:00', { kind: 'sterile', tips: ['1', '2', '3'] });
    expect(told(play(given, '2026-11-23 09:00', '2026-11-25 12:00'), 'tips')).toEqual([
      '2026-11-23 09:10 Still not known at Quay Street: tips 4–6. Not counted as sterile. Say what they are, or which are missing.',
    ]);
  });

  it('when the rest follows within ten minutes, then nothing is listed', () => {
    const given = new Given(ONE_SITE);
    given.note('2026-11-23 09:00', { kind: 'sterile', tips: ['1', '2', '3'] });
    given.note('2026-11-23 09:06', { kind: 'used', tips: ['4', '5', '6'] });
    expect(told(play(given, '2026-11-23 09:06', '2026-11-25 12:00'), 'tips')).toEqual([]);
  });
});

describe('given a count a quarter ago', () => {
  it('when the site opens on that day, or on its next open day, then a count is asked for once', () => {
    const given = new Given(ONE_SITE);
    // 30 November plus three months is 28 February 2027, a Sunday.
    given.note('2026-11-30 09:00', { kind: 'sterile', tips: ['1', '2', '3', '4', '5', '6'] });
    const questions = told(play(given, '2027-02-25 08:00', '2027-03-05 17:00'), 'question');
    expect(questions).toEqual([
      '2027-03-01 08:30 Count the tips at Quay Street: a count is due each quarter.\nType what you find, such as “tips 1 to 6 are sterile and on the shelf”.',
    ]);
  });

  it('when the practice counts more or less often, then the question says how often', () => {
    const given = new Given(ONE_SITE.replace('{loadTable: uk}', '{loadTable: uk, stocktakeEveryMonths: 6}'));
    given.note('2026-11-23 09:00', { kind: 'sterile', tips: ['1', '2', '3', '4', '5', '6'] });
    const posts = play(given, '2027-05-24 08:00', '2027-05-24 12:00');
    expect(told(posts, 'question').join()).toContain('a count is due every 6 months.');
    expect(told(play(given, '2027-02-23 08:00', '2027-02-23 12:00'), 'question')).toEqual([]);
  });
});
