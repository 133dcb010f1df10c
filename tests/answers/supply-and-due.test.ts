import { describe, expect, it } from 'vitest';
import type { Given } from '../rules/given.ts';
import { calibrated, passed } from '../rules/scanner/ferngate.ts';
import { AT, aDay } from './a-day.ts';
import { answerTo, textOf } from './ask.ts';
import { ALL_ROOM, HILL_ROOM } from './three-sites.ts';

function weekly(): Given {
  const given = calibrated();
  given.note('2026-11-23 10:30', passed('A', 'B', 'C'));
  return given;
}

describe('have we enough tips?', () => {
  it('nothing booked, enough, enough only when a load is back', () => {
    const given = weekly();
    given.note('2026-11-24 08:00', { kind: 'sterile', tips: ['1', '2'] });
    expect(textOf(given, { kind: 'supply' }, AT)).toBe(
      'Nothing booked at Quay Street today: 2 sterile tips. Not known: tips 3–12.',
    );
    given.note('2026-11-24 08:10', {
      kind: 'booked',
      count: 2,
      day: '2026-11-24',
      times: ['14:00', '15:00'],
      site: 'quay',
    });
    expect(textOf(given, { kind: 'supply' }, AT)).toBe(
      'Enough at Quay Street today: 2 sterile tips; 2 scans booked, first 14:00. Not known: tips 3–12.',
    );
    expect(textOf(aDay(), { kind: 'supply' }, AT)).toBe(
      'Enough once the autoclave’s tips are back at Quay Street today: 0 sterile tips, 3 at the autoclave; 3 scans booked, first 14:00. Not known: tips 10–12.',
    );
  });

  it('short: from when first, then what prevents it', () => {
    const given = weekly();
    given.note('2026-11-24 08:00', { kind: 'sterile', tips: ['1', '2'] });
    given.note('2026-11-24 08:01', {
      kind: 'used',
      tips: ['3', '4', '5', '6', '7', '8', '9', '10', '11', '12'],
    });
    given.note('2026-11-24 08:10', {
      kind: 'booked',
      count: 3,
      day: '2026-11-24',
      times: ['14:00', '15:00', '16:00'],
      site: 'quay',
    });
    const answer = answerTo(given, { kind: 'supply' }, AT);
    expect(textOf(given, { kind: 'supply' }, AT)).toContain('Short of sterile tips from 16:00');
    expect(answer.about).toBe('supply');
    expect(answer.items).toContain('tip:3');
  });

  it('another day, at every site', () => {
    const given = weekly();
    expect(textOf(given, { kind: 'supply', day: '2026-11-25' }, AT, ALL_ROOM)).toBe(
      `• Nothing booked at Quay Street tomorrow: 0 sterile tips. Not known: tips 1–12.
• Nothing booked at North Clinic tomorrow: 0 sterile tips.
• Nothing booked at Hill House tomorrow: 0 sterile tips.`,
    );
  });
});

describe('what’s due?', () => {
  it('nothing', () => {
    expect(textOf(weekly(), { kind: 'due' }, AT, HILL_ROOM)).toBe('Nothing due at Hill House today.');
    expect(textOf(weekly(), { kind: 'due', day: '2026-11-25' }, AT, HILL_ROOM)).toBe(
      'Nothing due at Hill House tomorrow.',
    );
  });

  it('what waits already', () => {
    const given = weekly();
    given.note('2026-11-24 10:20', { kind: 'fault', item: 'scanner:A', sort: 'dropped' });
    expect(textOf(given, { kind: 'due' }, AT)).toBe(`1 due at Quay Street today:
• Calibrate blue scanner (2 to 3 minutes): dropped 10:20, not calibrated since.`);
    expect(answerTo(given, { kind: 'due' }, AT).items).toEqual(['scanner:A']);
  });

  it('on a day to come: when it will be asked for, and nothing that waits already', () => {
    const given = weekly();
    given.note('2026-11-24 10:20', { kind: 'fault', item: 'autoclave', sort: 'other' });
    given.note('2026-11-24 10:20', { kind: 'repaired', items: ['scanner:C'] });
    expect(textOf(given, { kind: 'due', day: '2026-11-30' }, AT, HILL_ROOM)).toBe(
      'Nothing due at Hill House on Mon 30 Nov.',
    );
    expect(textOf(given, { kind: 'due', day: '2026-11-30' }, AT)).toBe(`2 due at Quay Street on Mon 30 Nov:
• Calibrate blue scanner (2 to 3 minutes): weekly calibration (asked for Mon 10:30)
• Calibrate red scanner (2 to 3 minutes): weekly calibration (asked for Mon 10:30)`);
  });

  it('by site where several are asked about', () => {
    const given = weekly();
    given.note('2026-11-24 10:20', [
      { kind: 'fault', item: 'scanner:A', sort: 'dropped' },
      { kind: 'repaired', items: ['scanner:C'] },
    ]);
    expect(textOf(given, { kind: 'due' }, AT, ALL_ROOM)).toBe(`2 due today:
Quay Street
• Calibrate blue scanner (2 to 3 minutes): dropped 10:20, not calibrated since.
Hill House
• Calibrate green scanner (2 to 3 minutes): repaired, lent or updated 15:50, not calibrated since.`);
  });
});
