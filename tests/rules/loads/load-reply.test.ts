import { describe, expect, it } from 'vitest';
import type { SaidOf } from '../../../core/record/entry.ts';
import { loadReply } from '../../../core/rules/loads/load-reply.ts';
import type { Given } from '../given.ts';
import { counted, FERNGATE, inWords, TOM } from './heard.ts';

type Finished = Omit<SaidOf<'load-finished'>, 'when' | 'kind'>;

/** The reply to a result typed at that local time. */
function reply(
  given: Given,
  local: string,
  said: Finished,
  parts: Parameters<Given['note']>[2] = {},
): readonly string[] {
  const turn = given.note(local, { kind: 'load-finished', ...said }, parts);
  const entry = given.timeline.entry(`${turn}.0`);
  if (entry === undefined) throw new Error('the note was not kept');
  return loadReply(entry, given.view(local)).map(inWords);
}

function inLoad(text = FERNGATE): Given {
  const given = counted(text);
  given.note('2026-11-20 10:00', { kind: 'used', tips: ['2', '5'] });
  given.note('2026-11-23 08:40', { kind: 'load-started', load: '118', tips: ['2', '5'], autoclave: 'small' });
  return given;
}

const everything = { celsius: 134, minutes: 3, indicator: 'passed', dry: true, by: 'Rosa' } as const;

describe('the reply to a load that passed', () => {
  it('given nothing more is said, then its tips by name and what was not said', () => {
    expect(reply(inLoad(), '2026-11-23 09:40', { load: '118', outcome: 'passed' })).toEqual([
      [
        'load',
        'Load 118 (the small autoclave) passed: tips 2 and 5 are sterile.',
        'Not said: temperature, minutes, indicator, dry or wet and who released it.',
      ].join('\n'),
    ]);
  });

  it('given everything is said, then what its figures were held against', () => {
    expect(reply(inLoad(), '2026-11-23 09:40', { load: '118', outcome: 'passed', ...everything })).toEqual([
      [
        'load',
        'Load 118 (the small autoclave) passed: tips 2 and 5 are sterile.',
        '134 °C for 3 min: long enough by the UK table.',
      ].join('\n'),
    ]);
  });

  it('given a tip was used meanwhile, then it is named as not sterile', () => {
    const given = inLoad();
    given.note('2026-11-23 09:00', { kind: 'used', tips: ['2'] });
    expect(reply(given, '2026-11-23 09:40', { load: '118', outcome: 'passed', ...everything })[0]).toBe(
      [
        'load',
        'Load 118 (the small autoclave) passed: tip 5 is sterile.',
        'Not tip 2: something was noted of it meanwhile.',
        '134 °C for 3 min: long enough by the UK table.',
      ].join('\n'),
    );
  });

  it('given no table is named, then figures are not judged, and that is said once', () => {
    const given = inLoad(FERNGATE.replace('rules: {loadTable: uk}\n', ''));
    const once =
      'No load table is named in the practice file, so figures are recorded, not judged. I say this once.';
    const first = reply(given, '2026-11-23 09:40', {
      load: '118',
      outcome: 'passed',
      ...everything,
    })[0]?.split('\n');
    expect(first?.slice(2)).toEqual(['134 °C for 3 min: recorded, not judged.', once]);
    given.note('2026-11-23 10:00', { kind: 'used', tips: ['2'] });
    given.note('2026-11-23 10:40', { kind: 'load-started', load: '119', tips: ['2'], autoclave: 'small' });
    const second = reply(given, '2026-11-23 11:40', {
      load: '119',
      outcome: 'passed',
      ...everything,
    })[0]?.split('\n');
    expect(second?.slice(2)).toEqual(['134 °C for 3 min: recorded, not judged.']);
  });

  it('given no limit of cycles is set, then that is said once', () => {
    const given = inLoad(FERNGATE.replaceAll(', cycles: 100', ''));
    const first = reply(given, '2026-11-23 09:40', {
      load: '118',
      outcome: 'passed',
      ...everything,
    })[0]?.split('\n');
    expect(first?.at(-1)).toBe(
      'No limit of cycles is set for tips 2 and 5: cycles are only counted. I say this once.',
    );
    given.note('2026-11-23 10:00', { kind: 'used', tips: ['1'] });
    given.note('2026-11-23 10:40', { kind: 'load-started', load: '119', tips: ['1'], autoclave: 'small' });
    expect(
      reply(given, '2026-11-23 11:40', { load: '119', outcome: 'passed', ...everything })[0],
    ).not.toContain('limit');
  });

  it.each([
    ['failed', { outcome: 'failed' }],
    ['counts as failed', { outcome: 'passed', celsius: 134, minutes: 1 }],
    ['has no published value', { outcome: 'passed', celsius: 131, minutes: 9 }],
    ['came out wet', { outcome: 'passed', dry: false }],
  ] as const)('given it %s, then its warning speaks and this does not', (_what, said) => {
    expect(reply(inLoad(), '2026-11-23 09:40', { load: '118', ...said })).toEqual([]);
  });

  it('given its tips are not known, then they are asked for and this says nothing', () => {
    expect(reply(counted(), '2026-11-23 09:40', { load: '7', outcome: 'passed' })).toEqual([]);
  });

  it('given it was run empty, then no tip becomes sterile by it', () => {
    const given = counted();
    given.note('2026-11-23 08:40', { kind: 'load-started', load: '7', tips: [], autoclave: 'small' });
    const said = reply(given, '2026-11-23 09:40', { load: '7', outcome: 'passed', ...everything });
    expect(said[0]?.split('\n')[1]).toBe(
      'Load 7 (the small autoclave) passed. No tip becomes sterile by it.',
    );
  });

  it('given the correction was refused, then nothing is said to have passed', () => {
    const given = inLoad();
    given.note('2026-11-23 09:40', { kind: 'load-finished', load: '118', outcome: 'failed' });
    expect(reply(given, '2026-11-23 10:00', { load: '118', outcome: 'passed' }, TOM)).toEqual([]);
  });
});
