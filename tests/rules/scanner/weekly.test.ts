import { describe, expect, it } from 'vitest';
import { readinessOf } from '../../../core/rules/readiness.ts';
import { calibrationRule } from '../../../core/rules/scanner/calibration.ts';
import { requestTime } from '../../../core/rules/scanner/request-time.ts';
import { Given } from '../given.ts';
import { calibrated, FERNGATE, passed } from './ferngate.ts';
import { play } from './play.ts';

const MON = '2026-11-23';

describe('weekly calibration: asked for', () => {
  it('on Monday at 10:30, again after 60 min, the lead after 120, then nothing more that day', () => {
    expect(play(calibrated(), `${MON} 00:00`, `${MON} 23:59`)).toEqual([
      'mon 10:30 !quay calibration first scanner:A scanner:B',
      'mon 11:30 !quay calibration again scanner:A scanner:B',
      'mon 12:30 !quay calibration lead scanner:A scanner:B',
    ]);
  });

  it('nothing more on the days after it, until the next Monday', () => {
    const given = calibrated();
    play(given, `${MON} 00:00`, `${MON} 23:59`);
    const later = play(given, '2026-11-24 00:00', '2026-11-30 10:30');
    expect(later.filter((post) => !post.includes('scanner:C'))).toEqual([
      'mon 10:30 !quay calibration first scanner:A scanner:B',
    ]);
  });

  it('not once passed, and the rest of the three steps stops for the one that passed', () => {
    const given = calibrated();
    expect(play(given, `${MON} 08:00`, `${MON} 10:40`)).toHaveLength(1);
    given.note(`${MON} 10:45`, passed('A'));
    expect(play(given, `${MON} 10:45`, `${MON} 11:30`)).toEqual([
      'mon 11:30 !quay calibration again scanner:B',
    ]);
  });

  it('not where a pass was noted on that Monday before 10:30', () => {
    const given = calibrated();
    given.note(`${MON} 08:40`, passed('A', 'B'));
    expect(play(given, `${MON} 08:40`, `${MON} 23:00`)).toEqual([]);
  });

  it('where a pass was noted on the Sunday before all the same', () => {
    const given = calibrated();
    given.note('2026-11-22 16:00', passed('A', 'B'));
    expect(play(given, `${MON} 08:40`, `${MON} 10:30`)).toEqual([
      'mon 10:30 !quay calibration first scanner:A scanner:B',
    ]);
  });

  it('on the next open day where Monday is closed by the hours, by the local clock of a half-hour zone', () => {
    const given = calibrated('Asia/Kolkata');
    expect(
      play(given, '2026-11-24 00:00', '2026-11-24 12:00').filter((post) => post.includes('!hill')),
    ).toEqual(['tue 10:30 !hill calibration first scanner:C', 'tue 11:30 !hill calibration again scanner:C']);
  });

  it('on the next open day where a note closed the Monday', () => {
    const given = calibrated();
    given.note('2026-11-20 09:00', { kind: 'closed', site: 'quay', days: [MON] });
    expect(play(given, `${MON} 00:00`, '2026-11-24 10:30').filter((post) => post.includes('!quay'))).toEqual([
      'tue 10:30 !quay calibration first scanner:A scanner:B',
    ]);
  });

  it.each([
    ['on the closed Monday', `${MON} 11:00`],
    ['early on the substitute day', '2026-11-24 08:35'],
  ])('not where a pass was noted %s', (_when, at) => {
    const given = calibrated();
    given.note('2026-11-20 09:00', { kind: 'closed', site: 'quay', days: [MON] });
    given.note(at, passed('A', 'B'));
    expect(play(given, at, '2026-11-24 23:00').filter((post) => post.includes('!quay'))).toEqual([]);
  });

  it('over a closed Christmas week once, on the first open day', () => {
    const given = new Given(FERNGATE);
    given.note('2026-12-21 09:00', passed('A', 'B', 'C'));
    expect(
      play(given, '2026-12-26 00:00', '2026-12-29 10:30').filter((post) => post.includes('!quay')),
    ).toEqual(['tue 10:30 !quay calibration first scanner:A scanner:B']);
  });

  it('where the scanner is now, in one post with the others there', () => {
    const given = calibrated();
    given.note(
      '2026-11-19 09:00',
      { kind: 'moved', items: ['scanner:A'], site: 'north' },
      { room: '!north:example.org' },
    );
    given.note('2026-11-19 10:00', passed('A'));
    expect(play(given, `${MON} 00:00`, `${MON} 10:30`)).toEqual([
      'mon 10:30 !north calibration first scanner:A',
      'mon 10:30 !quay calibration first scanner:B',
    ]);
  });

  it('at 10:30 on the local clock on both sides of a clock change', () => {
    const given = new Given(FERNGATE);
    given.note('2026-10-14 09:00', passed('A', 'B', 'C'));
    const at = (day: string) => given.at(`${day} 10:30`);
    expect(play(given, '2026-10-19 00:00', '2026-10-19 10:30')).toHaveLength(1);
    given.note('2026-10-19 10:31', passed('A', 'B'));
    // The clocks go back on Sunday 25 October 2026: Monday's 10:30 is a week and an hour later.
    expect(at('2026-10-26') - at('2026-10-19')).toBe((7 * 24 + 1) * 3_600_000);
    expect(play(given, '2026-10-26 00:00', '2026-10-26 10:30')).toEqual([
      'mon 10:30 !quay calibration first scanner:A scanner:B',
    ]);
  });
});

describe('weekly calibration: never done', () => {
  it('stays open from week to week, so that no post says it was done, until a pass', () => {
    const given = calibrated();
    play(given, `${MON} 08:30`, '2026-12-07 10:30');
    const open = (at: string) =>
      calibrationRule(given.view(at)).filter(
        ({ key, items }) => items.includes('scanner:A') && given.said.saidAt(key, 'first') !== null,
      );
    expect(open('2026-12-07 10:31').map(({ key }) => key)).toEqual([
      'calibration|scanner:A|weekly|2026-12-07',
      'calibration|scanner:A|weekly|2026-11-30',
      'calibration|scanner:A|weekly|2026-11-23',
    ]);
    given.note('2026-12-07 10:40', passed('A'));
    expect(open('2026-12-07 10:40')).toEqual([]);
  });
});

describe('weekly calibration: put off', () => {
  it('by a scan under way at 10:30, until it finishes', () => {
    const given = calibrated();
    given.note(`${MON} 10:20`, { kind: 'scan-started', scanner: 'A' });
    expect(play(given, `${MON} 10:20`, `${MON} 10:44`)).toEqual([
      'mon 10:30 !quay calibration first scanner:B',
    ]);
    given.note(`${MON} 10:45`, [
      { kind: 'scan-finished', scanner: 'A' },
      { kind: 'wiped', scanner: 'A', part: 'all' },
    ]);
    expect(play(given, `${MON} 10:45`, `${MON} 10:50`)).toEqual([
      'mon 10:45 !quay calibration first scanner:A',
    ]);
  });

  it('by that scan until 11:00 at most', () => {
    const given = calibrated();
    given.note(`${MON} 10:20`, { kind: 'scan-started', scanner: 'A' });
    expect(play(given, `${MON} 10:20`, `${MON} 11:29`)).toEqual([
      'mon 10:30 !quay calibration first scanner:B',
      'mon 11:00 !quay calibration first scanner:A',
    ]);
  });

  it.each([
    ['begun after it', `${MON} 10:31`, null, '10:30'],
    ['of the day before that nobody ended', '2026-11-22 17:00', null, '10:30'],
    ['that ends after 11:00', `${MON} 10:20`, `${MON} 11:20`, '11:00'],
  ])('by a scan %s: asked at the time it would be', (_name, started, ended, expected) => {
    const given = calibrated();
    given.note(started, { kind: 'scan-started', scanner: 'A' });
    if (ended !== null) given.note(ended, { kind: 'scan-finished', scanner: 'A' });
    const view = given.view(`${MON} 11:30`);
    const scanner = view.state.scanners.get('A');
    const time = scanner === undefined ? null : requestTime(view, scanner, 'quay', MON);
    expect(time?.at).toBe(given.at(`${MON} ${expected}`));
  });

  it('not by a scan that finished before 10:30', () => {
    const given = calibrated();
    given.note(`${MON} 10:10`, { kind: 'scan-started', scanner: 'A' });
    given.note(`${MON} 10:25`, [
      { kind: 'scan-finished', scanner: 'A' },
      { kind: 'wiped', scanner: 'A', part: 'all' },
    ]);
    expect(play(given, `${MON} 10:25`, `${MON} 10:30`)).toEqual([
      'mon 10:30 !quay calibration first scanner:A scanner:B',
    ]);
  });

  it('while it is held, until it is released', () => {
    const given = calibrated();
    given.note(`${MON} 08:40`, { kind: 'held', items: ['scanner:A'], reason: 'cable' });
    expect(play(given, `${MON} 08:40`, `${MON} 11:14`)).toEqual([
      'mon 10:30 !quay calibration first scanner:B',
    ]);
    given.note(`${MON} 11:15`, { kind: 'released', items: ['scanner:A'] });
    expect(play(given, `${MON} 11:15`, `${MON} 11:20`)).toEqual([
      'mon 11:15 !quay calibration first scanner:A',
    ]);
  });

  it('while it is missing, until it is found; found in the evening, until the site opens', () => {
    const given = calibrated();
    given.note(`${MON} 08:40`, { kind: 'missing', items: ['scanner:A'] });
    expect(play(given, `${MON} 08:40`, `${MON} 21:59`).filter((post) => post.includes('scanner:A'))).toEqual(
      [],
    );
    given.note(`${MON} 22:00`, { kind: 'found', items: ['scanner:A'] });
    expect(
      play(given, `${MON} 22:00`, '2026-11-24 08:30').filter((post) => post.includes('scanner:A')),
    ).toEqual(['tue 08:30 !quay calibration first scanner:A']);
  });

  it('while it is on its way, until it has arrived and settled, with the move in the same post', () => {
    const given = calibrated();
    given.note(`${MON} 10:00`, { kind: 'departed', items: ['scanner:A'], site: 'north' });
    expect(play(given, `${MON} 10:00`, `${MON} 10:49`)).toEqual([
      'mon 10:30 !quay calibration first scanner:B',
    ]);
    given.note(`${MON} 10:50`, { kind: 'moved', items: ['scanner:A'], site: 'north' });
    expect(play(given, `${MON} 10:50`, `${MON} 11:29`)).toEqual([
      'mon 11:15 !north calibration first scanner:A',
    ]);
  });

  it('by "later", and the steps behind it with it', () => {
    const given = calibrated();
    given.note(`${MON} 08:40`, passed('B'));
    play(given, `${MON} 08:40`, `${MON} 10:40`);
    given.said.putOff('calibration|scanner:A|weekly|2026-11-23', given.at(`${MON} 12:00`));
    expect(play(given, `${MON} 10:40`, `${MON} 15:00`)).toEqual([
      'mon 12:00 !quay calibration again scanner:A',
      'mon 13:00 !quay calibration lead scanner:A',
    ]);
  });

  it('by the site being shut: what falls due then is said once at opening', () => {
    const given = calibrated();
    given.note(`${MON} 08:40`, { kind: 'hours', site: 'quay', day: MON, shut: '11:00' });
    expect(play(given, `${MON} 08:40`, '2026-11-24 10:00').filter((post) => post.includes('!quay'))).toEqual([
      'mon 10:30 !quay calibration first scanner:A scanner:B',
      'tue 08:30 !quay calibration lead scanner:A scanner:B',
    ]);
  });
});

describe('weekly calibration: ready', () => {
  it('until that day’s closing, with the reason shown; from then on not', () => {
    const given = calibrated();
    const at = (time: string) => {
      const { ready, because, calibrationDue } = readinessOf(given.view(time), 'A');
      return {
        ready,
        calibrationDue,
        because: because.map(({ word, blocks }) => `${word}${blocks ? '!' : ''}`),
      };
    };
    expect(at('2026-11-22 23:59')).toEqual({ ready: true, calibrationDue: null, because: [] });
    expect(at(`${MON} 00:00`)).toEqual({ ready: true, calibrationDue: 'weekly', because: ['weekly'] });
    expect(at(`${MON} 17:29`)).toEqual({ ready: true, calibrationDue: 'weekly', because: ['weekly'] });
    expect(at(`${MON} 17:30`)).toEqual({ ready: false, calibrationDue: 'weekly', because: ['weekly!'] });
    expect(at('2026-11-26 10:00')).toEqual({ ready: false, calibrationDue: 'weekly', because: ['weekly!'] });
  });

  it('not on the Monday after one that was missed, from its first minute on', () => {
    const view = calibrated().view('2026-11-30 08:35');
    const { ready, because, weekly } = readinessOf(view, 'A');
    expect(ready).toBe(false);
    // The reason names the week that was missed; what is asked for is this one's.
    expect(because).toMatchObject([{ word: 'weekly', blocks: true, day: MON }]);
    expect(weekly?.day).toBe('2026-11-30');
  });

  it('not in the week after a missed one whose Monday is closed, but once it passes', () => {
    const given = calibrated();
    given.note('2026-11-20 09:00', { kind: 'closed', site: 'quay', days: ['2026-11-30'] });
    expect(readinessOf(given.view('2026-12-01 08:40'), 'A').ready).toBe(false);
    given.note('2026-12-01 08:45', passed('A'));
    expect(readinessOf(given.view('2026-12-01 08:45'), 'A').ready).toBe(true);
  });
});

describe('never calibrated', () => {
  it('is due and not ready, and asked for at 10:30 on the first open day there is, not only on Mondays', () => {
    const given = new Given(FERNGATE);
    const { ready, calibrationDue } = readinessOf(given.view('2026-11-25 08:00'), 'A');
    expect({ ready, calibrationDue }).toEqual({ ready: false, calibrationDue: 'never' });
    expect(
      play(given, '2026-11-25 08:00', '2026-11-27 23:00').filter((post) => post.includes('!quay')),
    ).toEqual([
      'wed 10:30 !quay calibration first scanner:A scanner:B',
      'wed 11:30 !quay calibration again scanner:A scanner:B',
      'wed 12:30 !quay calibration lead scanner:A scanner:B',
    ]);
  });

  it('begun on a Wednesday evening: on Thursday', () => {
    const given = new Given(FERNGATE);
    const [matter] = calibrationRule(given.view('2026-11-25 18:00'));
    expect(matter?.stages).toEqual([{ stage: 'first', at: given.at('2026-11-26 10:30') }]);
    const posts = play(given, '2026-11-25 18:00', '2026-11-26 10:30');
    expect(posts.filter((post) => post.includes('!quay'))).toEqual([
      'thu 10:30 !quay calibration first scanner:A scanner:B',
    ]);
  });

  it('begun on a Saturday: on Monday', () => {
    expect(
      play(new Given(FERNGATE), '2026-11-28 08:00', '2026-11-30 10:30').filter((post) =>
        post.includes('!quay'),
      ),
    ).toEqual(['mon 10:30 !quay calibration first scanner:A scanner:B']);
  });
});
