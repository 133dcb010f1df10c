import { describe, expect, test } from 'vitest';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { answerTo, textOf } from './ask.ts';

const AT = '2026-11-24 11:00';
const tom = { from: '@tom:example.org' };

describe('covers', () => {
  test('given nothing was said of it, a tip on it, or the cover back: what the record has', () => {
    const given = new Given(FERNGATE);
    const ask = { kind: 'cover', item: 'scanner:A' } as const;
    expect(textOf(given, ask, AT)).toBe('Blue scanner: no cover noted.');
    given.note('2026-11-24 09:00', { kind: 'fitted', tip: '4', scanner: 'A' });
    expect(textOf(given, ask, AT)).toBe('Blue scanner: no cover: tip 4 is on, since 09:00 (Rosa).');
    given.note('2026-11-24 09:30', { kind: 'removed', tips: ['4'] });
    given.note('2026-11-24 09:31', { kind: 'covered', scanner: 'A' }, tom);
    expect(textOf(given, ask, AT)).toBe('Blue scanner: cover on, since 09:31 (Tom).');
  });

  test('given none is named, then each of the site, those without it first', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-24 09:31', { kind: 'covered', scanner: 'A' });
    expect(textOf(given, { kind: 'cover' }, AT).split('\n')).toEqual([
      '• Red scanner: no cover noted.',
      '• Blue scanner: cover on, since 09:31 (Rosa).',
    ]);
  });
});

describe('what is on hold or missing', () => {
  test('given nothing is, then that is said', () => {
    const given = new Given(FERNGATE);
    expect(textOf(given, { kind: 'out-of-use' }, AT)).toBe('Nothing is on hold or missing on this record.');
    expect(textOf(given, { kind: 'out-of-use', which: 'held' }, AT)).toBe(
      'Nothing is on hold on this record.',
    );
    expect(textOf(given, { kind: 'out-of-use', which: 'missing' }, AT)).toBe(
      'Nothing is missing on this record.',
    );
  });

  test('given some are, then since when, by whom and why; a released, found or retired one no longer', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-24 09:00', { kind: 'held', items: ['tip:3'], reason: 'cracked mirror' }, tom);
    given.note('2026-11-24 09:01', { kind: 'fault', item: 'scanner:A', sort: 'dropped' });
    given.note('2026-11-24 09:02', { kind: 'missing', items: ['tip:5'] });
    expect(textOf(given, { kind: 'out-of-use' }, AT).split('\n')).toEqual([
      '• Blue scanner: on hold since 09:01 (Rosa), dropped, until its calibration passes',
      '• Tip 3: on hold since 09:00 (Tom), cracked mirror',
      '• Tip 5: missing since 09:02 (Rosa)',
    ]);
    expect(answerTo(given, { kind: 'out-of-use', which: 'missing' }, AT).items).toEqual(['tip:5']);
    given.note('2026-11-24 09:10', { kind: 'found', items: ['tip:5'] });
    given.note('2026-11-24 09:11', { kind: 'retired', tips: ['3'] });
    expect(textOf(given, { kind: 'out-of-use' }, AT)).not.toMatch(/Tip/);
  });

  test('given a load ran at a temperature with no published value, then it waits to be released', () => {
    const given = new Given(`${FERNGATE}rules: {loadTable: uk}\n`);
    given.note('2026-11-24 08:00', { kind: 'load-started', load: '7', tips: ['1'] });
    given.note('2026-11-24 09:00', {
      kind: 'load-finished',
      load: '7',
      outcome: 'passed',
      celsius: 140,
      minutes: 5,
    });
    expect(textOf(given, { kind: 'out-of-use', which: 'held' }, AT)).toBe('• Load 7: waits to be released');
  });
});

test('who may release and close: by name and part; anyone’s own hold is said to be theirs', () => {
  expect(textOf(new Given(FERNGATE), { kind: 'who-may' }, AT)).toBe(
    'Rosa (lead) may release what is held, or a load, and close an incident.\nWhat you put on hold yourself you may release too.',
  );
});
