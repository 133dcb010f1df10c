import { describe, expect, it } from 'vitest';
import type { Ask } from '../../core/reading/ask.ts';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { answerTo, textOf } from './ask.ts';
import { ALL_ROOM, allSterile, fortyTips } from './three-sites.ts';

const STERILE: Ask = { kind: 'tips', filter: 'sterile' };
const AT = '2026-11-24 11:00';

describe('how many sterile tips have we got?', () => {
  it('how many and which, the oldest first', () => {
    const given = allSterile(fortyTips());
    given.note('2026-11-24 08:00', { kind: 'used', tips: ['1', '3'] });
    given.note('2026-11-24 08:30', { kind: 'load-started', load: '119', tips: ['1', '3'] });
    given.note('2026-11-24 09:30', { kind: 'load-finished', load: '119', outcome: 'passed' });
    expect(textOf(given, STERILE, AT)).toBe('18 sterile tips at Quay Street, oldest first: 2, 4–18, 1, 3.');
    expect(answerTo(given, STERILE, AT).items.slice(-2)).toEqual(['tip:1', 'tip:3']);
  });

  it('by site where several are asked about', () => {
    const given = allSterile(fortyTips());
    given.note('2026-11-24 08:00', { kind: 'used', tips: ['20'] });
    expect(textOf(given, STERILE, AT, ALL_ROOM)).toBe(`39 sterile tips, oldest first:
• Quay Street 18: 1–18
• North Clinic 11: 19, 21–30
• Hill House 10: 31–40`);
  });

  it('what must be used soon, what is taken by word alone, what is not known', () => {
    const given = new Given(`${FERNGATE}rules: {wrapped: noted}\n`);
    given.note('2026-11-24 08:00', { kind: 'load-started', load: '118', tips: ['5', '6'] });
    given.note('2026-11-24 08:40', { kind: 'load-finished', load: '118', outcome: 'passed' });
    given.note('2026-11-24 09:00', [
      { kind: 'bagged', tips: ['7'] },
      { kind: 'sent', tips: ['7'] },
    ]);
    given.note('2026-11-24 09:30', { kind: 'sterile', tips: ['7', '8'] });
    expect(textOf(given, STERILE, AT)).toBe(`4 sterile tips at Quay Street, oldest first: 5–8.
• Use by today: tips 5, 6, 8
• Sterile by word alone, no load noted: tips 7, 8
• Not known yet: tips 1–4, 9–12`);
  });

  it('none here: what is elsewhere', () => {
    const given = allSterile(fortyTips());
    given.note('2026-11-24 08:00', {
      kind: 'used',
      tips: given.practice.tips.slice(0, 18).map(({ id }) => id),
    });
    given.note('2026-11-24 08:10', { kind: 'used', tips: given.practice.tips.slice(21).map(({ id }) => id) });
    expect(textOf(given, STERILE, AT)).toBe(
      'No sterile tip is on record at Quay Street. North Clinic has tips 19, 20 and 21.',
    );
  });
});
