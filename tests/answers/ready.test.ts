import { describe, expect, it } from 'vitest';
import type { Item } from '../../core/reading/slots.ts';
import { Given } from '../rules/given.ts';
import { calibrated, FERNGATE, passed } from '../rules/scanner/ferngate.ts';
import { AT, aDay } from './a-day.ts';
import { answerTo, textOf } from './ask.ts';
import { ALL_ROOM } from './three-sites.ts';

/** The weekly calibration of Monday 23 November has been done. */
function weekly(): Given {
  const given = calibrated();
  given.note('2026-11-23 10:30', passed('A', 'B', 'C'));
  return given;
}

const ready = (given: Given, item: Item, at = AT) => textOf(given, { kind: 'ready', item }, at);

describe('is it good to go?', () => {
  it('a scanner that is', () => {
    expect(ready(weekly(), 'scanner:A')).toBe('Ready: blue scanner, Quay Street.');
  });

  it('one whose weekly calibration is due: ready, with that shown', () => {
    expect(ready(calibrated(), 'scanner:A', '2026-11-23 11:00')).toBe(
      'Ready: blue scanner, Quay Street (weekly calibration, due today).',
    );
  });

  it('one that is not: why, and what to take instead', () => {
    const given = weekly();
    given.note('2026-11-24 10:20', { kind: 'fault', item: 'scanner:A', sort: 'dropped' });
    expect(ready(given, 'scanner:A')).toBe(
      `Not ready: blue scanner: held until it passes calibration, since 10:20; dropped 10:20, not calibrated since.
Ready here: red scanner.`,
    );
  });

  it('no scanner named: those of the chat room, what is ready first', () => {
    const given = weekly();
    given.note('2026-11-24 10:20', { kind: 'fault', item: 'scanner:A', sort: 'dropped' });
    const answer = answerTo(given, { kind: 'ready' }, AT);
    expect(textOf(given, { kind: 'ready' }, AT)).toBe(`• Ready: red scanner, Quay Street.
• Not ready: blue scanner: held until it passes calibration, since 10:20; dropped 10:20, not calibrated since.`);
    expect(answer.items).toEqual(['scanner:A', 'scanner:B']);
    expect(answerTo(given, { kind: 'ready' }, AT, ALL_ROOM).items).toHaveLength(3);
  });

  it('a tip that may be used: by which load, where, and what still has to be looked at', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-24 08:00', { kind: 'load-started', load: '118', tips: ['4'] });
    given.note('2026-11-24 08:40', { kind: 'load-finished', load: '118', outcome: 'passed' });
    expect(ready(given, 'tip:4')).toBe(`Yes: tip 4 is sterile (load 118, 08:40), Quay Street.
Its pack must be whole and dry, its indicator changed.`);
  });

  it('one that is on a scanner and not used yet: its pack is no question any more', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-24 08:00', { kind: 'load-started', load: '118', tips: ['4'] });
    given.note('2026-11-24 08:40', { kind: 'load-finished', load: '118', outcome: 'passed' });
    given.note('2026-11-24 10:00', { kind: 'fitted', tip: '4', scanner: 'A' });
    expect(ready(given, 'tip:4')).toBe('Yes: tip 4 is sterile (load 118, 08:40), on blue scanner.');
  });

  it('one that is sterile by word alone: whose', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-23 16:00', { kind: 'sterile', tips: ['4'] }, { from: '@tom:example.org' });
    expect(ready(given, 'tip:4').split('\n')[0]).toBe(
      'Yes: tip 4 is sterile (by Tom’s word, no load noted, yesterday 16:00), Quay Street.',
    );
  });

  it('one at its limit of cycles: its last use', () => {
    const given = new Given(
      FERNGATE.replace('{ids: 1-12, home: quay}', '{ids: 1-12, home: quay, cycles: 1}'),
    );
    given.note('2026-11-24 08:00', { kind: 'load-started', load: '118', tips: ['4'] });
    given.note('2026-11-24 08:40', { kind: 'load-finished', load: '118', outcome: 'passed' });
    expect(ready(given, 'tip:4').split('\n')[0]).toBe(
      'Yes: tip 4 is sterile (load 118, 08:40), Quay Street. Its last use: retire it after.',
    );
  });

  it('a tip that may not: everything against it, and which may', () => {
    expect(ready(aDay(), 'tip:4')).toBe(
      `No: tip 4: load 118 failed, yesterday 15:00 (Rosa). Also: used, yesterday 11:25 (Rosa); no passed load since.
No sterile tip is on record at Quay Street.`,
    );
    expect(ready(aDay(), 'tip:77')).toBe('Tip 77 is not in the practice file.');
  });

  it('an autoclave', () => {
    const given = aDay();
    expect(ready(given, 'autoclave')).toBe('Yes: the autoclave is not held on this record.');
    given.note('2026-11-24 10:30', { kind: 'held', items: ['autoclave'], reason: 'door seal' });
    expect(ready(given, 'autoclave')).toBe(
      'No: the autoclave is out of service since 10:30 (Rosa): door seal.',
    );
  });
});
