import { describe, expect, it } from 'vitest';
import { makeEntry } from '../../../core/record/make-entry.ts';
import { Timeline } from '../../../core/record/timeline.ts';
import { openLoads } from '../../../core/rules/day/open-loads.ts';
import { DAY, toIso } from '../../../core/time/instant.ts';
import { Given } from '../given.ts';
import { ONE_SITE } from './practices.ts';

function begun(practice = ONE_SITE): Given {
  const given = new Given(practice);
  given.note('2026-09-01 10:00', { kind: 'load-started', load: '118', tips: ['1'] });
  return given;
}

const named = (given: Given, at: string) => openLoads(given.view(at), 'quay').map(({ number }) => number);

describe('a load with no result', () => {
  it('is named for sixty days, and no longer; its tip stays not sterile', () => {
    const given = begun();
    // Real time: the clocks have gone back since.
    expect(named(given, '2026-10-31 08:59')).toEqual(['118']);
    expect(named(given, '2026-10-31 09:00')).toEqual([]);
    expect(given.state.tips.get('1')?.state).toBe('in-load');
  });

  it('for as long as the practice file says', () => {
    const given = begun(ONE_SITE.replace('rules: {', 'rules: {openLoadDays: 7, '));
    expect(named(given, '2026-09-08 09:59')).toEqual(['118']);
    expect(named(given, '2026-09-08 10:00')).toEqual([]);
  });

  it('goes to the archive then, where its result still finds it', () => {
    const { practice } = begun();
    const timeline = new Timeline(practice, { keep: 2, most: 4, days: 0 });
    const start = Date.parse('2026-09-01T09:00:00Z');
    const from = '@rosa:example.org';
    const tell = (turn: number, days: number, what: Parameters<typeof makeEntry>[0]['what']) => {
      const noted = start + days * DAY;
      timeline.add([makeEntry({ what, turn, index: 0, noted, by: from, from, room: '!quay:example.org' })]);
    };
    const at = (days: number) => ({ when: toIso(start + days * DAY) });
    for (const [turn, load] of ['117', '118', '119'].entries())
      tell(turn + 1, 0, { kind: 'load-started', load, tips: [String(turn + 1)], ...at(0) });
    for (let day = 1; day <= 70; day += 1)
      tell(day + 10, day, { kind: 'wiped', scanner: 'A', part: 'all', ...at(day) });
    // The first and the last of all stay.
    expect(timeline.state.loads.recent().map(({ number }) => number)).toEqual(['117', '119']);
    tell(100, 71, { kind: 'load-finished', load: '118', outcome: 'passed', ...at(71) });
    expect(timeline.state.tips.get('2')?.state).toBe('sterile');
  });
});
