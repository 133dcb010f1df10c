import { describe, expect, it } from 'vitest';
import { settleWaitRule } from '../../../core/rules/scanner/settle-wait.ts';
import type { Given } from '../given.ts';
import { calibrated, passed, words } from './ferngate.ts';
import { play } from './play.ts';

const MON = '2026-11-23';

function read(given: Given, time: string, celsius: number, room?: string): void {
  given.note(`${MON} ${time}`, {
    kind: 'temperature',
    celsius,
    site: 'quay',
    ...(room === undefined ? {} : { room }),
  });
}

describe('on a Monday morning the request waits while the room settles', () => {
  it('when the last two readings differ by 1.5 °C per hour or more: one post at 10:30 says why, asked at 12:00', () => {
    const given = calibrated();
    read(given, '08:40', 15);
    read(given, '09:40', 16.5);
    expect(play(given, `${MON} 09:40`, `${MON} 13:10`)).toEqual([
      'mon 10:30 !quay settle first scanner:A scanner:B',
      'mon 12:00 !quay calibration first scanner:A scanner:B',
      'mon 13:00 !quay calibration again scanner:A scanner:B',
    ]);
  });

  it('not when they differ by less', () => {
    const given = calibrated();
    read(given, '08:40', 15);
    read(given, '09:40', 16.4);
    expect(play(given, `${MON} 09:40`, `${MON} 10:30`)).toEqual([
      'mon 10:30 !quay calibration first scanner:A scanner:B',
    ]);
  });

  it('until a calmer reading, which ends the wait at once', () => {
    const given = calibrated();
    read(given, '08:40', 15);
    read(given, '09:40', 19);
    play(given, `${MON} 09:40`, `${MON} 10:49`);
    read(given, '10:50', 19.5);
    expect(play(given, `${MON} 10:50`, `${MON} 11:20`)).toEqual([
      'mon 10:50 !quay calibration first scanner:A scanner:B',
    ]);
  });

  it('with readings that name a room compared with that room’s alone', () => {
    const given = calibrated();
    read(given, '08:40', 15, 's1');
    read(given, '09:00', 20, 's2');
    read(given, '09:40', 15.5, 's1');
    expect(play(given, `${MON} 09:40`, `${MON} 10:30`)).toEqual([
      'mon 10:30 !quay calibration first scanner:A scanner:B',
    ]);
  });

  it('for the scanner whose room it is, where that is known', () => {
    const given = calibrated();
    given.note(`${MON} 08:35`, { kind: 'moved', items: ['scanner:B'], site: 'quay', room: 's2' });
    read(given, '08:40', 15, 's1');
    read(given, '08:41', 20, 's2');
    read(given, '09:41', 20.1, 's2');
    read(given, '09:42', 19, 's1');
    expect(play(given, `${MON} 09:42`, `${MON} 10:30`)).toEqual([
      'mon 10:30 !quay calibration first scanner:B',
      'mon 10:30 !quay settle first scanner:A',
    ]);
  });

  it('not by a reading of the day before', () => {
    const given = calibrated();
    given.note('2026-11-22 23:50', { kind: 'temperature', celsius: 5, site: 'quay' });
    read(given, '08:40', 19);
    expect(play(given, `${MON} 08:40`, `${MON} 10:30`)).toEqual([
      'mon 10:30 !quay calibration first scanner:A scanner:B',
    ]);
  });

  it('not for a scanner that is on its way', () => {
    const given = calibrated();
    read(given, '08:40', 15);
    read(given, '09:40', 19);
    given.note(`${MON} 09:45`, { kind: 'departed', items: ['scanner:A'], site: 'north' });
    expect(play(given, `${MON} 09:45`, `${MON} 10:30`)).toEqual(['mon 10:30 !quay settle first scanner:B']);
  });

  it('not by one reading that two people noted in the same minute', () => {
    const given = calibrated();
    read(given, '08:40', 19);
    read(given, '08:40', 19);
    expect(play(given, `${MON} 08:40`, `${MON} 10:30`)).toEqual([
      'mon 10:30 !quay calibration first scanner:A scanner:B',
    ]);
  });

  it('and a pass noted meanwhile counts', () => {
    const given = calibrated();
    read(given, '08:40', 15);
    read(given, '09:40', 19);
    given.note(`${MON} 10:40`, passed('A', 'B'));
    expect(play(given, `${MON} 10:40`, `${MON} 17:00`)).toEqual([]);
  });

  it('says both readings and until when', () => {
    const given = calibrated();
    read(given, '08:40', 15);
    read(given, '09:40', 19);
    const [matter] = settleWaitRule(given.view(`${MON} 10:30`));
    expect(words(matter?.line ?? [])).toEqual([
      'The room is still settling at Quay Street: 15.0 °C at 08:40, 19.0 °C at 09:40.',
      'Calibration is asked for when a reading is calmer, at 12:00 at the latest. A pass before then counts.',
    ]);
  });
});
