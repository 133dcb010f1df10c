import { describe, expect, test } from 'vitest';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { textOf } from './ask.ts';

const TWO = FERNGATE.replace(
  'tips:\n',
  'autoclaves:\n  - {id: big, name: big autoclave, site: quay}\n  - {id: lit, name: little autoclave, site: north}\ntips:\n',
);
const AT = '2026-11-24 11:00';

describe('tests of the autoclaves', () => {
  test('given none was ever noted, when they are asked for, then that is said', () => {
    const given = new Given(FERNGATE);
    expect(textOf(given, { kind: 'tests' }, AT)).toBe('No autoclave test is noted.');
    expect(textOf(given, { kind: 'tests', sort: 'leak' }, AT)).toContain('leak test: none noted yet');
  });

  test('given a spore test with its result, when it is asked for, then the result, the day it was run, and when the next is due', () => {
    const given = new Given(TWO);
    given.note('2026-11-18 09:00', {
      kind: 'spore-test',
      outcome: 'passed',
      ran: '2026-11-16',
      autoclave: 'big',
    });
    expect(textOf(given, { kind: 'tests', sort: 'spore' }, AT)).toBe(
      'The big autoclave, spore test: negative (passed), run Mon 16 Nov (Rosa). Was due yesterday.',
    );
  });

  test('given one that still incubates, then that it has no result, and how the one before came out', () => {
    const given = new Given(TWO);
    given.note('2026-11-16 09:00', {
      kind: 'spore-test',
      outcome: 'failed',
      ran: '2026-11-16',
      autoclave: 'big',
    });
    given.note('2026-11-23 09:00', {
      kind: 'spore-test',
      outcome: 'running',
      ran: '2026-11-23',
      autoclave: 'big',
    });
    const text = textOf(given, { kind: 'tests', sort: 'spore', autoclave: 'big' }, AT);
    expect(text).toContain('run yesterday (Rosa), no result yet; the one before POSITIVE (failed)');
    expect(text).toContain('Next due Mon 30 Nov.');
  });

  test('given a daily test of yesterday, then that none is noted today; given one of today, then its result', () => {
    const given = new Given(TWO);
    given.note('2026-11-23 08:40', {
      kind: 'autoclave-test',
      sort: 'penetration',
      outcome: 'passed',
      autoclave: 'big',
    });
    const ask = { kind: 'tests', sort: 'penetration' } as const;
    expect(textOf(given, ask, AT)).toContain('none noted today; last passed yesterday 08:40 (Rosa)');
    given.note('2026-11-24 08:40', {
      kind: 'autoclave-test',
      sort: 'penetration',
      outcome: 'failed',
      autoclave: 'big',
    });
    expect(textOf(given, ask, AT)).toContain('steam penetration test: failed 08:40 (Rosa).');
  });

  test('given two sites, then those of another site are told only where it is named', () => {
    const given = new Given(TWO);
    given.note('2026-11-24 08:40', {
      kind: 'autoclave-test',
      sort: 'leak',
      outcome: 'passed',
      autoclave: 'lit',
    });
    expect(textOf(given, { kind: 'tests' }, AT)).toBe('No autoclave test is noted.');
    expect(textOf(given, { kind: 'tests', site: 'north' }, AT)).toContain(
      'The little autoclave, leak test: passed',
    );
  });
});

describe('loads', () => {
  function loads(): Given {
    const given = new Given(TWO);
    given.note('2026-11-23 08:00', { kind: 'sterile', tips: ['1', '2', '3', '4', '5', '6'] });
    given.note('2026-11-23 10:00', { kind: 'load-started', load: '7', tips: ['1', '2'], autoclave: 'big' });
    given.note('2026-11-23 11:00', { kind: 'load-finished', load: '7', outcome: 'failed', autoclave: 'big' });
    given.note('2026-11-24 10:00', { kind: 'load-started', load: '8', tips: ['3', '4'], autoclave: 'big' });
    given.note('2026-11-24 10:05', { kind: 'sent', tips: ['5'] });
    return given;
  }

  test('given none is on, when what is in the autoclave is asked for, then that is said', () => {
    expect(textOf(new Given(TWO), { kind: 'loads', which: 'open' }, AT)).toBe('No load is on.');
  });

  test('given one is on, then it with its tips and since when; tips sent with no load named are told beside', () => {
    expect(textOf(loads(), { kind: 'loads', which: 'open' }, AT).split('\n')).toEqual([
      '1 load with no result yet:',
      '• Load 8 (the big autoclave): no result yet, tips 3, 4, on 10:00 (Rosa)',
      'Sent, no load named: tip 5.',
    ]);
  });

  test('given another autoclave is named, then none of this one', () => {
    expect(textOf(loads(), { kind: 'loads', which: 'open', autoclave: 'lit' }, AT)).toBe(
      'No load is on in the little autoclave.',
    );
  });

  test('given one failed in November, when failed ones are asked for, then it is told for that month and for no other', () => {
    const ask = { kind: 'loads', which: 'failed' } as const;
    const text = textOf(loads(), { ...ask, from: '2026-11-01', to: '2026-11-30' }, AT);
    expect(text).toContain('1 load failed: November 2026.');
    expect(text).toContain('Load 7 (the big autoclave): failed, tips 1, 2');
    expect(textOf(loads(), { ...ask, from: '2026-10-01', to: '2026-10-31' }, AT)).toBe(
      'No failed load: October 2026.',
    );
  });

  test('given it is corrected to passed, then it is no failed one any more', () => {
    const given = loads();
    given.note('2026-11-23 11:10', { kind: 'load-finished', load: '7', outcome: 'passed', autoclave: 'big' });
    expect(textOf(given, { kind: 'loads', which: 'failed', from: '2026-11-01', to: '2026-11-30' }, AT)).toBe(
      'No failed load: November 2026.',
    );
  });

  test('all of a day, the latest first', () => {
    const given = loads();
    given.note('2026-11-24 10:50', { kind: 'load-started', load: '9', tips: ['6'], autoclave: 'big' });
    const text = textOf(given, { kind: 'loads', which: 'all', from: '2026-11-24', to: '2026-11-24' }, AT);
    expect(text).toMatch(/^2 loads: 24 November 2026\.\n• Load 9 .*\n• Load 8 /);
  });
});
