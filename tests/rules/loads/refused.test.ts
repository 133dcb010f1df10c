import { describe, expect, it } from 'vitest';
import { counted, heard, TOM } from './heard.ts';

describe('a release that is not theirs', () => {
  it('given another placed the hold, then who may release it', () => {
    const given = counted();
    given.note('2026-11-23 08:40', { kind: 'held', items: ['tip:4'] });
    expect(heard(given, '2026-11-23 09:00', { kind: 'released', items: ['tip:4'] }, TOM)).toEqual([
      'tips\nTip 4 is not released. Rosa (lead), Dan (deputy) or Mo (manager) may release it.',
    ]);
  });

  it('given a colleague placed it, then that colleague is named too', () => {
    const given = counted();
    given.note('2026-11-23 08:40', { kind: 'held', items: ['tip:4'] }, TOM);
    expect(
      heard(given, '2026-11-23 09:00', { kind: 'released', items: ['tip:4'] }, { from: '@una:example.org' }),
    ).toEqual([
      'tips\nTip 4 is not released. Tom, who placed the hold, may release it. Rosa (lead), Dan (deputy) or Mo (manager) may release it.',
    ]);
  });

  it('given a failed load, then nobody may', () => {
    const given = counted();
    given.note('2026-11-23 08:40', { kind: 'load-started', load: '118', tips: ['2'], autoclave: 'small' });
    given.note('2026-11-23 09:40', { kind: 'load-finished', load: '118', outcome: 'failed' });
    expect(heard(given, '2026-11-23 10:00', { kind: 'released', items: ['load:118'] })).toEqual([
      'load\nLoad 118 (the small autoclave) is not released. The load failed or was recalled; nobody may release it. Run its tips again.',
    ]);
  });

  it('given an autoclave with a positive spore test, then a clear repeat is needed', () => {
    const given = counted();
    given.note('2026-11-23 08:40', { kind: 'spore-test', outcome: 'failed', autoclave: 'big' });
    expect(heard(given, '2026-11-23 10:00', { kind: 'released', items: ['autoclave:big'] })).toEqual([
      'load\nThe big autoclave is not released. After a positive spore test it is out of service until a repeat is clear.',
    ]);
  });

  it('given a dropped scanner, then a pass is needed', () => {
    const given = counted();
    given.note('2026-11-23 08:40', { kind: 'fault', item: 'scanner:A', sort: 'dropped' });
    expect(heard(given, '2026-11-23 10:00', { kind: 'released', items: ['scanner:A'] })).toEqual([
      'caution\nBlue scanner is not released. It was dropped, and is held until it passes its calibration.',
    ]);
  });

  it('given nothing is held, then that is said', () => {
    expect(heard(counted(), '2026-11-23 10:00', { kind: 'released', items: ['tip:4'] })).toEqual([
      'tips\nNothing to release: tip 4 is not held. Nothing was changed.',
    ]);
  });

  it('given a colleague closes an incident, then it stays open', () => {
    const given = counted();
    const incident = 'x:unsafe-tip:tip:4';
    const turn = given.note('2026-11-23 08:40', { kind: 'held', items: ['tip:4'] });
    given.note('2026-11-23 08:41', {
      kind: 'incident-opened',
      incident,
      of: `${turn}.0`,
      items: ['tip:4'],
      sort: 'unsafe-tip',
    });
    expect(
      heard(given, '2026-11-23 09:00', { kind: 'incident-closed', incident, reason: 'done' }, TOM),
    ).toEqual(['incident\nThe incident stays open. Rosa (lead), Dan (deputy) or Mo (manager) may close it.']);
  });
});
