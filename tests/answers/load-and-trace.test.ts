import { describe, expect, it } from 'vitest';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { AT, aDay } from './a-day.ts';
import { answerTo, textOf } from './ask.ts';

const UK = FERNGATE.replace('people:', 'rules: {loadTable: uk}\npeople:');
const load = (given: Given, number: string) => textOf(given, { kind: 'load', load: number }, AT);

describe('what was in load 118?', () => {
  it('open: its tips, since when', () => {
    expect(load(aDay(), '119')).toBe(`Load 119: no result yet, tips 7–9.
• On 09:30 (Rosa)`);
    expect(answerTo(aDay(), { kind: 'load', load: '119' }, AT).items).toEqual([
      'load:119',
      'tip:7',
      'tip:8',
      'tip:9',
    ]);
  });

  it('failed after it had passed: both, its figures, what was not said, and that scans are concerned', () => {
    expect(load(aDay(), '118')).toBe(`Load 118: failed, tips 4, 5.
• On yesterday 10:00 (Rosa), out yesterday 10:40 (Rosa)
• Noted as passed yesterday 10:40 (Rosa), then failed yesterday 15:00 (Rosa)
• 134 °C for 3.5 min, indicator failed
• F0 68 min at 121.1 °C, for interest only: it passes nothing
• Not said: dry or wet
• 1 scan or fitting since it ended: ask “load 118: where did those tips go?”`);
  });

  it('passed, failed, and passed after all: all three in order', () => {
    const given = aDay();
    given.note('2026-11-24 09:00', {
      kind: 'load-finished',
      load: '118',
      outcome: 'passed',
      indicator: 'passed',
    });
    expect(load(given, '118')).toContain(
      'Noted as passed yesterday 10:40 (Rosa), then failed yesterday 15:00 (Rosa), then passed 09:00 (Rosa)',
    );
  });

  it('at a temperature with no published value, then released', () => {
    const given = new Given(UK);
    given.note('2026-11-24 08:00', { kind: 'load-started', load: '118', tips: ['1', '2', '3'] });
    given.note('2026-11-24 08:40', {
      kind: 'load-finished',
      load: '118',
      outcome: 'passed',
      celsius: 130,
      minutes: 6,
      indicator: 'passed',
      dry: true,
    });
    expect(load(given, '118')).toBe(`Load 118: not released, tips 1–3.
• On 08:00 (Rosa), out 08:40 (Rosa)
• 130 °C for 6 min, indicator passed, dry
• F0 47 min at 121.1 °C, for interest only: it passes nothing
• Ran at a temperature with no published value: the lead, deputy or manager may release it`);
    given.note('2026-11-24 09:00', { kind: 'load-released', load: '118' });
    expect(load(given, '118').split('\n').at(-1)).toBe('• Released 09:00 (Rosa)');
  });

  it('too short for its temperature, and wet', () => {
    const given = new Given(UK);
    given.note('2026-11-24 08:40', {
      kind: 'load-finished',
      load: '118',
      outcome: 'passed',
      celsius: 134,
      minutes: 2,
      dry: false,
    });
    expect(load(given, '118')).toBe(`Load 118: failed, no tips noted.
• Start not noted, out 08:40 (Rosa)
• 134 °C for 2 min, wet
• F0 39 min at 121.1 °C, for interest only: it passes nothing
• Not said: indicator
• Counts as failed: too short for its temperature
• Came out wet: its tips are not sterile`);
  });

  it('one number on two autoclaves: the latest of each, or the one named', () => {
    const autoclaves = `autoclaves:
  - {id: big, name: big autoclave, site: quay}
  - {id: small, name: small autoclave, site: north}
people:`;
    const given = new Given(FERNGATE.replace('people:', autoclaves));
    given.note('2026-11-23 08:00', { kind: 'load-started', load: '118', tips: ['1'], autoclave: 'big' });
    given.note('2026-11-24 08:00', { kind: 'load-started', load: '118', tips: ['2'], autoclave: 'small' });
    expect(load(given, '118')).toBe(`Load 118 (the big autoclave): no result yet, tip 1.
• On yesterday 08:00 (Rosa)
Load 118 (the small autoclave): no result yet, tip 2.
• On 08:00 (Rosa)`);
    expect(load(given, 'small/118')).toBe(`Load 118 (the small autoclave): no result yet, tip 2.
• On 08:00 (Rosa)`);
  });

  it('one that is not there', () => {
    expect(load(aDay(), '7')).toBe('Load 7: not on this record.');
  });
});

describe('where did those tips go?', () => {
  it('every scan since the load ended, and where its tips are now', () => {
    expect(
      textOf(aDay(), { kind: 'trace', load: '118' }, AT),
    ).toBe(`1 scan with tips of load 118 since it ended:
• yesterday 11:05: tip 4 on blue scanner, Surgery 2, Quay Street (Rosa)
The tips now:
• On blue scanner, used: tip 4 since yesterday 11:25 (Rosa)
• On the way to North Clinic, used: tip 5 since 10:00 (Rosa)`);
    const { about, items } = answerTo(aDay(), { kind: 'trace', load: '118' }, AT);
    expect(about).toBe('look-back');
    expect(items).toEqual(['load:118', 'tip:4', 'tip:5', 'scanner:A']);
  });

  it('a tip, since its last good load', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-23 08:00', { kind: 'used', tips: ['4'] });
    given.note('2026-11-23 09:00', { kind: 'load-started', load: '117', tips: ['4'] });
    given.note('2026-11-23 09:40', { kind: 'load-finished', load: '117', outcome: 'passed' });
    given.note('2026-11-24 09:30', {
      kind: 'used',
      tips: ['4'],
      scanner: 'B',
      earliest: '2026-11-24T08:30:00Z',
    });
    given.note('2026-11-24 10:00', { kind: 'fitted', tip: '4', scanner: 'A' }, { from: '@tom:example.org' });
    expect(textOf(given, { kind: 'trace', item: 'tip:4' }, AT)).toBe(
      `1 scan and 1 fitting with no scan noted with tip 4 since its last good load, newest first:
• 10:00: tip 4 on blue scanner, Quay Street, fitted only (Tom)
• 08:30 to 09:30: tip 4 on red scanner, Quay Street (Rosa)
The tip now:
• On blue scanner: tip 4 since 10:00 (Tom)`,
    );
  });

  it('none, and nothing of that name', () => {
    expect(textOf(aDay(), { kind: 'trace', item: 'tip:10' }, AT)).toBe(
      `No scan on record with tip 10 since the record began.
The tip now:
• Not known yet: tip 10`,
    );
    expect(textOf(aDay(), { kind: 'trace', load: '9' }, AT)).toBe(
      'Nothing to trace: load 9 is not on this record.',
    );
  });

  it('more than a phone shows: the rest in a file', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-23 08:00', { kind: 'load-started', load: '118', tips: ['4'] });
    given.note('2026-11-23 08:40', { kind: 'load-finished', load: '118', outcome: 'failed' });
    for (let n = 10; n < 20; n++) {
      given.note(`2026-11-23 ${n}:00`, { kind: 'scan-started', scanner: 'A', tip: '4' });
      given.note(`2026-11-23 ${n}:20`, { kind: 'scan-finished', scanner: 'A' });
    }
    const { message, file } = answerTo(given, { kind: 'trace', load: '118' }, AT);
    expect(message).toHaveLength(5);
    expect(textOf(given, { kind: 'trace', load: '118' }, AT)).toContain('10 scans with tips of load 118');
    expect(textOf(given, { kind: 'trace', load: '118' }, AT)).toContain('\nAnd 2 more, in the file.\n');
    expect(file?.name).toBe('trace-load-118.csv');
    expect(file?.content.split('\r\n').slice(0, 2)).toEqual([
      'when (local),when (UTC),what,tip,scanner,where,by',
      '2026-11-23 19:00,2026-11-23T19:00:00Z,scan,4,blue scanner,Quay Street,Rosa',
    ]);
    expect(file?.content.split('\r\n')).toHaveLength(12);
  });
});
