import { describe, expect, it } from 'vitest';
import type { Given, Told } from '../given.ts';
import { counted, heard, TOM } from './heard.ts';

/** A clear test run on Monday 16 November, then load 118 with tips 2 and 5, which passed; its checks noted or not. */
function sinceNegative(checks: 'noted' | 'not noted'): Given {
  const given = counted();
  given.note('2026-11-16 09:00', {
    kind: 'spore-test',
    outcome: 'passed',
    ran: '2026-11-16',
    autoclave: 'big',
  });
  given.note('2026-11-23 08:40', { kind: 'load-started', load: '118', tips: ['2', '5'], autoclave: 'big' });
  const good = checks === 'noted' ? ({ celsius: 134, minutes: 3.5, indicator: 'passed' } as const) : {};
  given.note('2026-11-23 09:40', { kind: 'load-finished', load: '118', outcome: 'passed', ...good });
  return given;
}

const positive = { kind: 'spore-test', outcome: 'failed', autoclave: 'big' } as const;

describe('a positive spore test', () => {
  it('given the loads’ own checks are noted good, then out of service, the loads listed, tips usable', () => {
    expect(heard(sinceNegative('noted'), '2026-11-23 12:00', positive)).toEqual([
      [
        'spore-test @rosa',
        'Spore test positive: the big autoclave is out of service.',
        'Their own figures and indicators are noted good, so their tips stay usable. Repeat the test at once.',
        'Loads since its last negative test, newest first:',
        '• load 118, today: tips 2 and 5',
        'Check how it was loaded and run, and repeat the spore test; a clear repeat puts it back in service. Your local code comes first.',
      ].join('\n'),
    ]);
  });

  it('given a load of which nobody said the autoclave, then it is listed too: it may have been in this one', () => {
    const given = sinceNegative('noted');
    given.note('2026-11-23 10:00', { kind: 'load-started', load: '77', tips: ['7'] });
    given.note('2026-11-23 10:40', { kind: 'load-finished', load: '77', outcome: 'passed' });
    const [post] = heard(given, '2026-11-23 12:00', positive);
    expect(post?.split('\n').slice(2, 7)).toEqual([
      'Recalled: tip 7 (load 77): not sterile. Through another autoclave before use.',
      'Why: good figures and a good indicator are not both noted of it.',
      'Loads since its last negative test, newest first:',
      '• load 77 (autoclave not said), today: tip 7',
      '• load 118, today: tips 2 and 5',
    ]);
  });

  it('given such a load ended before the last negative test, then it is not listed', () => {
    const given = counted();
    given.note('2026-11-13 08:00', { kind: 'load-started', load: '77', tips: ['7'] });
    given.note('2026-11-13 08:40', { kind: 'load-finished', load: '77', outcome: 'passed' });
    given.note('2026-11-16 09:00', {
      kind: 'spore-test',
      outcome: 'passed',
      ran: '2026-11-16',
      autoclave: 'big',
    });
    expect(heard(given, '2026-11-23 12:00', positive)[0]).toContain('No loads are on record since');
  });

  it('given such a load runs while the test comes back, then it is recalled once its result comes, until its autoclave is told', () => {
    const given = sinceNegative('noted');
    const begun = given.note('2026-11-23 11:30', { kind: 'load-started', load: '77', tips: ['7'] });
    given.note('2026-11-23 12:00', positive);
    const state = () => given.state.tips.get('7')?.state;
    given.note('2026-11-23 12:20', { kind: 'load-finished', load: '77', outcome: 'passed' });
    expect([state(), given.state.loads.get('77@2026-11-23')?.recalled?.at]).toEqual([
      'used',
      given.at('2026-11-23 12:20'),
    ]);
    given.timeline.setAside(begun);
    given.note('2026-11-23 11:30', { kind: 'load-started', load: '77', tips: ['7'], autoclave: 'small' });
    expect(state()).toBe('sterile');
  });

  it('given its own checks are noted good, then its tips are usable as those of any other load', () => {
    const given = sinceNegative('noted');
    given.note('2026-11-23 11:30', { kind: 'load-started', load: '77', tips: ['7'] });
    given.note('2026-11-23 12:00', positive);
    given.note('2026-11-23 12:20', {
      ...{ kind: 'load-finished', load: '77', outcome: 'passed' },
      ...{ celsius: 134, minutes: 3.5, indicator: 'passed' },
    });
    expect(given.state.tips.get('7')?.state).toBe('sterile');
  });

  it('given a load’s checks are not noted, then it is recalled, and every scan under it is listed', () => {
    const given = sinceNegative('not noted');
    given.note(
      '2026-11-23 10:15',
      { kind: 'scan-started', scanner: 'A', tip: '2', room: 's2', site: 'quay' },
      TOM,
    );
    expect(heard(given, '2026-11-23 12:00', positive).map((post) => post.split('\n'))).toEqual([
      [
        'spore-test @rosa',
        'Spore test positive: the big autoclave is out of service.',
        'Recalled: tips 2 and 5 (load 118): not sterile. Through another autoclave before use.',
        'Why: good figures and a good indicator are not both noted of it.',
        'Loads since its last negative test, newest first:',
        '• load 118, today: tips 2 and 5',
        'Check how it was loaded and run, and repeat the spore test; a clear repeat puts it back in service. Your local code comes first.',
      ],
      [
        'look-back @rosa',
        '1 scan with recalled tips. Newest first:',
        '• 10:15, blue scanner, Surgery 2, Quay Street: tip 2 (Tom)',
        'What follows is for the lead and the practice’s own procedure. No patient names here, please.',
      ],
    ]);
  });

  it('given a repeat is positive too, then every tip since is recalled, and repair comes first', () => {
    const given = sinceNegative('noted');
    given.note('2026-11-23 12:00', positive);
    const [post] = heard(given, '2026-11-23 15:00', positive);
    expect(post?.split('\n').slice(1)).toEqual([
      'Spore test positive: the big autoclave is out of service. 2 positive in a row.',
      'Recalled: tips 2 and 5 (load 118): not sterile. Through another autoclave before use.',
      'Why: the repeat is positive too.',
      'Loads since its last negative test, newest first:',
      '• load 118, today: tips 2 and 5',
      'Inspection or repair first, then 3 clear empty-chamber cycles in a row. Your local code comes first.',
    ]);
  });

  it('given a load is started on it meanwhile, then a warning with the one that is in service', () => {
    const given = sinceNegative('noted');
    given.note('2026-11-23 12:00', positive, TOM);
    const told: Told = { kind: 'load-started', load: '119', tips: ['1'], autoclave: 'big' };
    expect(heard(given, '2026-11-23 12:30', told)[0]).toBe(
      [
        'warning',
        'Stop load 119: the big autoclave is out of service. Its tips are not to be relied on.',
        'Why: spore test positive, 12:00 (Tom).',
        'In service here: small autoclave.',
      ].join('\n'),
    );
  });
});

describe('tests of an autoclave', () => {
  it('given a failed test, then it is held for the lead, deputy or manager', () => {
    const told = {
      kind: 'autoclave-test',
      sort: 'penetration',
      outcome: 'failed',
      autoclave: 'big',
    } as const;
    expect(heard(counted(), '2026-11-23 08:35', told)).toEqual([
      [
        'warning @rosa',
        'No loads on the big autoclave: its steam penetration test failed. It is held.',
        'In service here: small autoclave.',
        'Rosa (lead), Dan (deputy) or Mo (manager) may release it.',
      ].join('\n'),
    ]);
  });

  it('given the practice makes them, when the day’s first load comes without, then one caution', () => {
    const given = counted();
    given.note('2026-11-20 08:40', {
      kind: 'autoclave-test',
      sort: 'control',
      outcome: 'passed',
      autoclave: 'big',
    });
    const load = (number: string, tip: string): Told => ({
      kind: 'load-started',
      load: number,
      tips: [tip],
      autoclave: 'big',
    });
    given.note('2026-11-23 08:20', { kind: 'used', tips: ['1', '2'] });
    expect(heard(given, '2026-11-23 08:40', load('118', '1'))).toEqual([
      [
        'caution',
        'Load 118 is the day’s first on the big autoclave, and no automatic control test is noted today.',
        'If it was done, note it. The maker’s instructions and your local code come first.',
      ].join('\n'),
    ]);
    expect(heard(given, '2026-11-23 10:40', load('119', '2'))).toEqual([]);
  });

  it('given two autoclaves and none named, then which is asked', () => {
    expect(heard(counted(), '2026-11-23 08:35', { kind: 'spore-test', outcome: 'passed' })).toEqual([
      [
        'question',
        'Which autoclave? Nothing is recorded until you say.',
        '1. big autoclave',
        '2. small autoclave',
      ].join('\n'),
    ]);
  });
});
