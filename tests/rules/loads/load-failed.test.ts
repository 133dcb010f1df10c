import { describe, expect, it } from 'vitest';
import type { Given } from '../given.ts';
import { counted, heard, TOM } from './heard.ts';

/** Tips 2 and 5 used on Friday, and in load 118, which went on at 08:40 on Monday. */
function inLoad(): Given {
  const given = counted();
  given.note('2026-11-20 10:00', { kind: 'used', tips: ['2', '5'] });
  given.note('2026-11-23 08:40', { kind: 'load-started', load: '118', tips: ['2', '5'], autoclave: 'small' });
  return given;
}

const passed = { kind: 'load-finished', load: '118', outcome: 'passed' } as const;
const failed = { kind: 'load-finished', load: '118', outcome: 'failed' } as const;

/** One scan on blue in Surgery 2 with that tip. */
function scan(given: Given, local: string, tip: string, earliest?: string): void {
  given.note(
    local,
    [
      {
        kind: 'scan-started',
        scanner: 'A',
        tip,
        room: 's2',
        site: 'quay',
        ...(earliest === undefined ? {} : { earliest }),
      },
      { kind: 'scan-finished', scanner: 'A' },
      { kind: 'wiped', scanner: 'A', part: 'all' },
    ],
    TOM,
  );
}

describe('a load that failed', () => {
  it('given nothing was fitted or used since, then one line and nobody is called', () => {
    expect(heard(inLoad(), '2026-11-23 09:40', failed)).toEqual([
      [
        'look-back',
        'Load 118 (the small autoclave) failed. Tips 2 and 5 are not sterile: through another load before use. None was fitted or used since.',
      ].join('\n'),
    ]);
  });

  it('given it is corrected to failed after scans, then a warning to the lead with every scan, newest first', () => {
    const given = inLoad();
    given.note('2026-11-23 09:40', passed);
    scan(given, '2026-11-23 10:15', '2');
    scan(given, '2026-11-23 11:05', '5');
    expect(heard(given, '2026-11-23 11:30', failed)).toEqual([
      [
        'warning @rosa',
        'Load 118 (the small autoclave) failed: it had been taken as passed. 2 scans concerned.',
        'Tips 2 and 5 are not sterile: through another load before use.',
        'Take off now: tip 5 (on blue scanner).',
        'Newest first:',
        '• 11:05, blue scanner, Surgery 2, Quay Street: tip 5 (Tom)',
        '• 10:15, blue scanner, Surgery 2, Quay Street: tip 2 (Tom)',
        'What follows is for the lead and the practice’s own procedure. No patient names here, please.',
      ].join('\n'),
    ]);
  });

  it('given a tip passed another load since, then its later scans stood under that one', () => {
    const given = inLoad();
    given.note('2026-11-23 09:40', passed);
    scan(given, '2026-11-23 10:15', '2');
    given.note('2026-11-23 10:30', { kind: 'removed', tips: ['2'] });
    given.note('2026-11-23 10:40', { kind: 'load-started', load: '119', tips: ['2'], autoclave: 'small' });
    given.note('2026-11-23 11:40', {
      kind: 'load-finished',
      load: '119',
      outcome: 'passed',
      autoclave: 'small',
    });
    scan(given, '2026-11-23 12:00', '2');
    const [warning] = heard(given, '2026-11-23 12:30', failed);
    // Tip 2 is sterile by load 119: only tip 5 still needs one.
    expect(warning?.split('\n')[2]).toBe('Tip 5 is not sterile: through another load before use.');
    expect(warning?.split('\n').filter((line) => line.startsWith('•'))).toEqual([
      '• 10:15, blue scanner, Surgery 2, Quay Street: tip 2 (Tom)',
    ]);
  });

  it('given a tip was only fitted, then the fitting is named', () => {
    const given = inLoad();
    given.note('2026-11-23 09:40', passed);
    given.note('2026-11-23 10:15', { kind: 'fitted', tip: '2', scanner: 'A' }, TOM);
    const [warning] = heard(given, '2026-11-23 10:30', failed);
    expect(warning?.split('\n')).toContain(
      '• 10:15, blue scanner, Quay Street: tip 2 fitted, no scan noted (Tom)',
    );
    expect(warning).toContain('1 fitting with no scan noted concerned.');
  });

  it('given no tips are on record in it, then which ones is asked, once', () => {
    expect(heard(counted(), '2026-11-23 09:40', failed)).toEqual([
      [
        'question',
        'Which tips were in load 118? It failed, and none is on record in it, so none becomes sterile by it.',
        'Type their numbers, or say when it went on: “load 118 on at 9 with tips 1, 2 and 3”.',
      ].join('\n'),
    ]);
  });
});

describe('a result that cannot stand', () => {
  it('given figures that miss their time, then it counts as failed and nobody may release it', () => {
    expect(heard(inLoad(), '2026-11-23 09:40', { ...passed, celsius: 134, minutes: 2 })).toEqual([
      [
        'warning',
        'Load 118 (the small autoclave) counts as failed. 134 °C for 2 min is too short: 134–137 °C needs 3 min by the UK table. Nobody may release it.',
        'Tips 2 and 5 are not sterile: through another load before use.',
      ].join('\n'),
    ]);
  });

  it('given an indicator that failed, then the same', () => {
    expect(heard(inLoad(), '2026-11-23 09:40', { ...passed, indicator: 'failed' })[0]?.split('\n')[1]).toBe(
      'Load 118 (the small autoclave) counts as failed. Its indicator failed. Nobody may release it.',
    );
  });

  it('given a temperature with no published value, then who may release it is said, and the lead is called', () => {
    expect(heard(inLoad(), '2026-11-23 09:40', { ...passed, celsius: 131, minutes: 20 })).toEqual([
      [
        'warning @rosa',
        'Load 118 (the small autoclave) ran at 131 °C: no value for that in the UK table. Its tips 2 and 5 are not sterile yet.',
        'Rosa (lead), Dan (deputy) or Mo (manager) may release it: “load 118 is fine to use”. Otherwise run them again.',
      ].join('\n'),
      'question\nDo you release load 118 (the small autoclave) all the same? Answer yes or no.',
    ]);
  });

  it('given it came out wet, then its tips are not sterile', () => {
    expect(heard(inLoad(), '2026-11-23 09:40', { ...passed, dry: false })).toEqual([
      [
        'warning',
        'Load 118 (the small autoclave) came out wet: a wet pack keeps nothing sterile.',
        'Tips 2 and 5 are not sterile: through another load before use.',
      ].join('\n'),
    ]);
  });

  it('given a colleague says that a failed load passed, then the lead is asked, and nothing changes', () => {
    const given = inLoad();
    given.note('2026-11-23 09:40', failed);
    expect(heard(given, '2026-11-23 10:00', passed, TOM)).toEqual([
      [
        'question @rosa',
        'Load 118 (the small autoclave) stays failed. Tom says that it passed after all.',
        'Rosa (lead), Dan (deputy) or Mo (manager): if that is right, type “load 118 passed”.',
      ].join('\n'),
    ]);
  });
});
