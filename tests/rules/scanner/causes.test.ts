import { describe, expect, it } from 'vitest';
import { notReadyWords, type ReadinessWord, readinessOf } from '../../../core/rules/readiness.ts';
import { calibrationRule } from '../../../core/rules/scanner/calibration.ts';
import { Given } from '../given.ts';
import { calibrated, FERNGATE, passed, words } from './ferngate.ts';
import { play } from './play.ts';

// A Wednesday: nothing is due by the week.
const WED = '2026-11-25';

/** Everything calibrated on that week's Monday, so that causes stand alone. */
function thisWeek(): Given {
  const given = calibrated();
  given.note('2026-11-23 08:45', passed('A', 'B'));
  given.note('2026-11-24 05:00', passed('C'));
  return given;
}

function ofA(posts: readonly string[]): readonly string[] {
  return posts.filter((post) => post.includes('scanner:A'));
}

function lineOfA(given: Given, at: string): readonly string[] {
  const matter = calibrationRule(given.view(at)).find(({ items }) => items.includes('scanner:A'));
  return words(matter?.line ?? []);
}

describe('moved', () => {
  it('to another site: due on arrival, asked for when settling is over, then the same three steps', () => {
    const given = thisWeek();
    given.note(`${WED} 09:00`, { kind: 'moved', items: ['scanner:A'], site: 'north' });
    expect(readinessOf(given.view(`${WED} 09:00`), 'A').calibrationDue).toBe('moved');
    expect(ofA(play(given, `${WED} 09:00`, `${WED} 17:00`))).toEqual([
      'wed 09:25 !north calibration first scanner:A',
      'wed 10:25 !north calibration again scanner:A',
      'wed 11:25 !north calibration lead scanner:A',
    ]);
  });

  it('settled at that minute, and not before', () => {
    const given = thisWeek();
    given.note(`${WED} 09:00`, { kind: 'moved', items: ['scanner:A'], site: 'north' });
    expect(readinessOf(given.view(`${WED} 09:24`), 'A').settledBy).toBe(given.at(`${WED} 09:25`));
    expect(notReadyWords(readinessOf(given.view(`${WED} 09:25`), 'A'))).toEqual(['moved']);
  });

  it('says where it came from and how long calibrating takes', () => {
    const given = thisWeek();
    given.note(`${WED} 09:00`, { kind: 'moved', items: ['scanner:A'], site: 'north' });
    expect(lineOfA(given, `${WED} 09:25`)).toEqual([
      'Calibrate blue scanner (2 to 3 minutes): came from Quay Street 09:00, not calibrated since.',
      '• Twist until it clicks.',
    ]);
  });

  it('to another room of the same site: not due', () => {
    const given = thisWeek();
    given.note(`${WED} 09:00`, { kind: 'moved', items: ['scanner:A'], site: 'quay', room: 's2' });
    expect(readinessOf(given.view(`${WED} 09:00`), 'A').calibrationDue).toBeNull();
    expect(ofA(play(given, `${WED} 09:00`, `${WED} 17:00`))).toEqual([]);
  });

  it('settled after closing: asked for when the site opens', () => {
    const given = thisWeek();
    given.note(`${WED} 16:50`, { kind: 'moved', items: ['scanner:A'], site: 'north' });
    expect(ofA(play(given, `${WED} 16:50`, '2026-11-26 09:30'))).toEqual([
      'thu 09:00 !north calibration first scanner:A',
    ]);
  });

  it('on a Monday morning: one asking names the move and the week, and 10:30 does not ask beside it', () => {
    const given = calibrated();
    given.note('2026-11-23 09:05', { kind: 'moved', items: ['scanner:A'], site: 'north' });
    expect(ofA(play(given, '2026-11-23 09:05', '2026-11-23 10:40'))).toEqual([
      'mon 09:30 !north calibration first scanner:A',
      'mon 10:30 !north calibration again scanner:A',
    ]);
    expect(lineOfA(given, '2026-11-23 10:40')[0]).toBe(
      'Calibrate blue scanner (2 to 3 minutes): came from Quay Street 09:05, not calibrated since; weekly calibration, due today.',
    );
  });

  it('and dropped while it settles: one post for both when settling is over', () => {
    const given = thisWeek();
    given.note(`${WED} 09:05`, { kind: 'moved', items: ['scanner:A'], site: 'north' });
    given.note(`${WED} 09:10`, { kind: 'fault', item: 'scanner:A', sort: 'dropped' });
    expect(ofA(play(given, `${WED} 09:10`, `${WED} 10:00`))).toEqual([
      'wed 09:30 !north calibration first scanner:A',
    ]);
    expect(lineOfA(given, `${WED} 09:30`)[0]).toContain(
      'dropped 09:10, not calibrated since; came from Quay Street 09:05',
    );
  });

  it('and a pass that was answered to have been at room temperature: nothing is asked', () => {
    const given = thisWeek();
    given.note(`${WED} 09:00`, { kind: 'moved', items: ['scanner:A'], site: 'north' });
    const turn = given.note(`${WED} 09:10`, passed('A'));
    expect(readinessOf(given.view(`${WED} 09:11`), 'A').calibrationDue).toBe('moved');
    given.note(`${WED} 09:12`, { kind: 'pass-confirmed', scanner: 'A', of: `${turn}.0` });
    expect(readinessOf(given.view(`${WED} 09:12`), 'A')).toMatchObject({
      ready: true,
      calibrationDue: null,
      settledBy: null,
      because: [],
    });
    expect(ofA(play(given, `${WED} 09:12`, `${WED} 17:00`))).toEqual([]);
  });
});

describe('temperature', () => {
  it('5 °C or more from the reading at its last pass: asked for at once, and still due if it comes back', () => {
    const given = calibrated();
    given.note('2026-11-23 08:40', [
      { kind: 'temperature', celsius: 21.5, site: 'quay' },
      ...passed('A', 'B'),
    ]);
    given.note(`${WED} 09:00`, { kind: 'temperature', celsius: 16.6, site: 'quay' });
    expect(ofA(play(given, `${WED} 09:00`, `${WED} 09:01`))).toEqual([]);
    given.note(`${WED} 09:02`, { kind: 'temperature', celsius: 16.5, site: 'quay' });
    expect(play(given, `${WED} 09:02`, `${WED} 09:03`)).toEqual([
      'wed 09:02 !quay calibration first scanner:A scanner:B',
    ]);
    given.note(`${WED} 09:30`, { kind: 'temperature', celsius: 21.5, site: 'quay' });
    expect(readinessOf(given.view(`${WED} 09:31`), 'A').calibrationDue).toBe('temperature');
    expect(lineOfA(given, `${WED} 09:31`)[0]).toBe(
      'Calibrate blue scanner (2 to 3 minutes): 16.5 °C here 09:02, 21.5 °C at its last calibration.',
    );
  });

  it('no reading at its last pass: nothing to compare, not due', () => {
    const given = thisWeek();
    given.note(`${WED} 09:00`, { kind: 'temperature', celsius: 9, site: 'quay' });
    expect(readinessOf(given.view(`${WED} 09:01`), 'A').calibrationDue).toBeNull();
  });
});

describe('dropped, repaired, failed', () => {
  it('dropped: asked for at once though it is held, and a pass frees it', () => {
    const given = thisWeek();
    given.note(`${WED} 09:00`, { kind: 'fault', item: 'scanner:A', sort: 'dropped' });
    expect(notReadyWords(readinessOf(given.view(`${WED} 09:00`), 'A'))).toEqual(['held', 'dropped']);
    expect(ofA(play(given, `${WED} 09:00`, `${WED} 09:10`))).toEqual([
      'wed 09:00 !quay calibration first scanner:A',
    ]);
    given.note(`${WED} 09:15`, passed('A'));
    expect(readinessOf(given.view(`${WED} 09:15`), 'A').ready).toBe(true);
    expect(ofA(play(given, `${WED} 09:15`, `${WED} 17:00`))).toEqual([]);
  });

  it('repaired: asked for at once', () => {
    const given = thisWeek();
    given.note(`${WED} 09:00`, { kind: 'repaired', items: ['scanner:A'] });
    expect(readinessOf(given.view(`${WED} 09:00`), 'A')).toMatchObject({
      ready: false,
      calibrationDue: 'repaired',
    });
    expect(ofA(play(given, `${WED} 09:00`, `${WED} 09:10`))).toEqual([
      'wed 09:00 !quay calibration first scanner:A',
    ]);
  });

  it('failed after it was asked for: the same asking goes on', () => {
    const given = calibrated();
    play(given, '2026-11-23 09:00', '2026-11-23 10:39');
    given.note('2026-11-23 10:40', { kind: 'calibrated', scanner: 'A', outcome: 'failed' });
    expect(ofA(play(given, '2026-11-23 10:40', '2026-11-23 17:00'))).toEqual([
      'mon 11:30 !quay calibration again scanner:A scanner:B',
      'mon 12:30 !quay calibration lead scanner:A scanner:B',
    ]);
  });

  it('failed with nothing asked: the reply is the first word, asking comes an hour after', () => {
    const given = thisWeek();
    given.note(`${WED} 09:00`, { kind: 'calibrated', scanner: 'A', outcome: 'failed' });
    expect(ofA(play(given, `${WED} 09:00`, `${WED} 17:00`))).toEqual([
      'wed 10:00 !quay calibration first scanner:A',
      'wed 11:00 !quay calibration again scanner:A',
      'wed 12:00 !quay calibration lead scanner:A',
    ]);
  });

  it('failed twice: the post says to stop and call support, and a pass ends it', () => {
    const given = thisWeek();
    given.note(`${WED} 09:00`, { kind: 'calibrated', scanner: 'A', outcome: 'failed' });
    given.note(`${WED} 09:20`, { kind: 'calibrated', scanner: 'A', outcome: 'failed' });
    expect(lineOfA(given, `${WED} 10:00`)).toEqual([
      'Blue scanner: do not use it, call support: calibration failed 2 times, last 09:20.',
    ]);
    given.note(`${WED} 11:00`, passed('A'));
    expect(readinessOf(given.view(`${WED} 11:00`), 'A').ready).toBe(true);
  });

  it('a new cause after an asking has begun: a new asking with both in it, in place of the old one', () => {
    const given = calibrated();
    given.note('2026-11-23 08:40', passed('B'));
    play(given, '2026-11-23 09:00', '2026-11-23 10:49');
    given.note('2026-11-23 10:50', { kind: 'fault', item: 'scanner:A', sort: 'dropped' });
    expect(ofA(play(given, '2026-11-23 10:50', '2026-11-23 14:00'))).toEqual([
      'mon 10:50 !quay calibration first scanner:A',
      'mon 11:50 !quay calibration again scanner:A',
      'mon 12:50 !quay calibration lead scanner:A',
    ]);
  });
});

describe('what is undone', () => {
  it('a move that is set aside is asked for no longer, and what it had taken in is due again', () => {
    const given = calibrated();
    const turn = given.note('2026-11-23 08:35', { kind: 'moved', items: ['scanner:A'], site: 'north' });
    play(given, '2026-11-23 08:35', '2026-11-23 09:30');
    given.timeline.setAside(turn);
    expect(play(given, '2026-11-23 09:30', '2026-11-23 10:40')).toEqual([
      'mon 10:30 !quay calibration first scanner:A scanner:B',
    ]);
  });
});

describe('a tick', () => {
  it('records a pass by whoever ticked', () => {
    const given = thisWeek();
    given.note(`${WED} 09:00`, { kind: 'repaired', items: ['scanner:A'] });
    const matter = calibrationRule(given.view(`${WED} 09:00`)).find(({ items }) =>
      items.includes('scanner:A'),
    );
    expect(matter?.tick?.(given.at(`${WED} 09:30`), '@tom:example.org')).toEqual([
      {
        kind: 'calibrated',
        when: '2026-11-25T09:30:00Z',
        by: '@tom:example.org',
        scanner: 'A',
        outcome: 'passed',
      },
    ]);
    expect(matter?.leads).toEqual(['@rosa:example.org']);
  });
});

describe('ready: placed, calibrated, settled, clean, not held', () => {
  const cases: readonly [string, Parameters<Given['note']>[1], readonly ReadinessWord[]][] = [
    ['on its way', { kind: 'departed', items: ['scanner:A'] }, ['in-transit']],
    ['missing', { kind: 'missing', items: ['scanner:A'] }, ['missing']],
    ['held', { kind: 'held', items: ['scanner:A'] }, ['held']],
    ['arrived', { kind: 'moved', items: ['scanner:A'], site: 'north' }, ['moved', 'settling']],
    ['scanned with', { kind: 'scan-finished', scanner: 'A' }, ['not-wiped']],
    ['in doubt', { kind: 'doubted', item: 'scanner:A' }, ['doubted']],
    ['failed', { kind: 'calibrated', scanner: 'A', outcome: 'failed' }, ['failed']],
    ['scanning', { kind: 'scan-started', scanner: 'A' }, []],
  ];
  it.each(cases)('%s', (_name, told, expected) => {
    const given = thisWeek();
    given.note(`${WED} 09:00`, told);
    const readiness = readinessOf(given.view(`${WED} 09:01`), 'A');
    expect(notReadyWords(readiness)).toEqual(expected);
    expect(readiness.ready).toBe(expected.length === 0);
  });

  it('the first of failed, dropped, repaired, moved, temperature, never, weekly is named', () => {
    const given = new Given(FERNGATE);
    const dueAt = (at: string) => readinessOf(given.view(at), 'A').calibrationDue;
    expect(dueAt(`${WED} 08:59`)).toBe('never');
    given.note(`${WED} 09:00`, { kind: 'moved', items: ['scanner:A'], site: 'north' });
    expect(dueAt(`${WED} 09:00`)).toBe('moved');
    given.note(`${WED} 09:01`, { kind: 'repaired', items: ['scanner:A'] });
    expect(dueAt(`${WED} 09:01`)).toBe('repaired');
    given.note(`${WED} 09:02`, { kind: 'fault', item: 'scanner:A', sort: 'dropped' });
    expect(dueAt(`${WED} 09:02`)).toBe('dropped');
    given.note(`${WED} 09:40`, { kind: 'calibrated', scanner: 'A', outcome: 'failed' });
    expect(dueAt(`${WED} 09:40`)).toBe('failed');
  });

  it('a scanner that the practice does not have is not ready', () => {
    expect(notReadyWords(readinessOf(new Given(FERNGATE).view(`${WED} 09:00`), 'Z'))).toEqual([
      'unknown-scanner',
    ]);
  });
});
