import { describe, expect, it } from 'vitest';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { AT, aDay } from './a-day.ts';
import { answerTo, textOf } from './ask.ts';
import { ALL_ROOM, HILL_ROOM } from './three-sites.ts';

describe('what’s happened with it?', () => {
  it('a tip: the latest first, with its loads’ results, all of it in a file', () => {
    const answer = answerTo(aDay(), { kind: 'history', item: 'tip:4' }, AT);
    expect(textOf(aDay(), { kind: 'history', item: 'tip:4' }, AT)).toBe(
      `Tip 4: 10 notes, latest first. 1 cycle, 2 uses.
• yesterday 15:00 load 118 failed: indicator failed (Rosa)
• yesterday 11:25 blue scanner scan finished with tip 4 at Surgery 2, Quay Street (Rosa)
• yesterday 11:05 blue scanner scan started with tip 4 at Surgery 2, Quay Street (Rosa)
• yesterday 11:00 tip 4 fitted to blue scanner (Rosa)
• yesterday 10:40 load 118 passed: 134 °C, 3.5 min (Rosa)
• yesterday 10:00 load 118 started with tips 4, 5 (Rosa)
And 4 more, in the file.`,
    );
    expect(answer.file?.name).toBe('tip-4.csv');
    expect(answer.file?.content.split('\r\n')).toHaveLength(12);
  });

  it('a scan whose note names the scanner alone is the tip’s too', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-24 08:00', { kind: 'fitted', tip: '4', scanner: 'A' });
    given.note('2026-11-24 08:30', { kind: 'scan-finished', scanner: 'A' });
    expect(textOf(given, { kind: 'history', item: 'tip:4' }, AT)).toBe(
      `Tip 4: 2 notes, latest first. 0 cycles, 1 use.
• 08:30 blue scanner scan finished (Rosa)
• 08:00 tip 4 fitted to blue scanner (Rosa)`,
    );
  });

  it('a load whose number has come round again: only the one that is meant', () => {
    const given = new Given(FERNGATE);
    given.note('2026-10-01 08:00', { kind: 'load-started', load: '118', tips: ['1'] });
    given.note('2026-10-01 08:40', { kind: 'load-finished', load: '118', outcome: 'failed' });
    given.note('2026-11-24 08:00', { kind: 'load-started', load: '118', tips: ['2'] });
    given.note('2026-11-24 08:40', { kind: 'load-finished', load: '118', outcome: 'passed', dry: true });
    expect(textOf(given, { kind: 'history', item: 'load:118' }, AT)).toBe(`Load 118: 2 notes, latest first.
• 08:40 load 118 passed: dry (Rosa)
• 08:00 load 118 started with tip 2 (Rosa)`);
    expect(textOf(given, { kind: 'history', item: 'tip:1' }, AT)).toContain('Tip 1: 2 notes');
  });

  it('a scanner: short enough needs no file', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-24 08:40', { kind: 'fault', item: 'scanner:A', sort: 'cable' });
    const answer = answerTo(given, { kind: 'history', item: 'scanner:A' }, AT);
    expect(textOf(given, { kind: 'history', item: 'scanner:A' }, AT)).toBe(
      `Blue scanner: 1 note. 0 scans, 1 fault.
• 08:40 blue scanner: cable at fault (Rosa)`,
    );
    expect(answer.file).toBeUndefined();
    expect(textOf(given, { kind: 'history', item: 'scanner:C' }, AT)).toBe(
      'Green scanner: nothing noted yet.',
    );
  });
});

describe('October’s record please', () => {
  const november = { kind: 'record', from: '2026-11-01', to: '2026-11-30' } as const;

  it('how much there is and what went wrong, all of it in a file', () => {
    const { about, file } = answerTo(aDay(), november, AT);
    expect(textOf(aDay(), november, AT)).toBe(`November 2026: 20 lines, all in the file.
• Calibrations: 1 passed
• Loads: 1 failed, 1 passed
• Scans finished: 2
• Wipe-downs: 1`);
    expect(about).toBe('record');
    expect(file?.name).toBe('record-2026-11-01-to-2026-11-30.csv');
    expect(file?.content.split('\r\n').slice(0, 4)).toEqual([
      'when (local),when (UTC),what,items,where,by,noted (UTC)',
      '2026-11-23 08:00,2026-11-23T08:00:00Z,tips 1–9 said to be sterile,tip:1 tip:2 tip:3 tip:4 tip:5 tip:6 tip:7 tip:8 tip:9,Quay Street,Rosa,2026-11-23T08:00:00Z',
      '2026-11-23 09:00,2026-11-23T09:00:00Z,"21.5 °C at Surgery 1, Quay Street",,"Surgery 1, Quay Street",Rosa,2026-11-23T09:00:00Z',
      '2026-11-23 09:10,2026-11-23T09:10:00Z,"blue scanner calibrated, passed",scanner:A,Quay Street,Tom,2026-11-23T09:10:00Z',
    ]);
  });

  it('incidents first, and which are still open', () => {
    const given = aDay();
    given.note('2026-11-24 10:20', {
      kind: 'incident-opened',
      incident: '9.0:unsafe-tip:tip:4',
      of: '9.0',
      items: ['tip:4'],
      sort: 'unsafe-tip',
    });
    expect(textOf(given, november, AT).split('\n')[1]).toBe('• Incidents: 1, 1 still open');
  });

  it('a load said to have passed that counts as failed is counted so, and its line says it', () => {
    const given = aDay();
    given.note('2026-11-24 10:20', {
      kind: 'load-finished',
      load: '120',
      outcome: 'passed',
      indicator: 'failed',
    });
    expect(textOf(given, november, AT)).toContain('• Loads: 2 failed, 1 passed');
    expect(answerTo(given, november, AT).file?.content).toContain('; counts as failed');
  });

  it('nothing', () => {
    const none = { kind: 'record', from: '2026-11-22', to: '2026-11-22' } as const;
    expect(textOf(aDay(), none, AT)).toBe('22 November 2026: nothing noted.');
    expect(answerTo(aDay(), none, AT).file).toBeUndefined();
  });

  it('a day is the site’s own: half past twelve at night at Hill House is seven in the evening in London', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-23 19:00', { kind: 'wiped', scanner: 'C', part: 'all' }, { room: HILL_ROOM });
    given.note('2026-11-23 19:00', { kind: 'wiped', scanner: 'A', part: 'all' });
    const monday = { kind: 'record', from: '2026-11-23', to: '2026-11-23' } as const;
    const tuesday = { kind: 'record', from: '2026-11-24', to: '2026-11-24' } as const;
    expect(answerTo(given, monday, AT, ALL_ROOM).file?.content).toContain('blue scanner wiped down');
    expect(answerTo(given, monday, AT, ALL_ROOM).file?.content).not.toContain('green scanner');
    expect(answerTo(given, tuesday, AT, ALL_ROOM).file?.content).toContain(
      '2026-11-24 00:30,2026-11-23T19:00:00Z,green scanner wiped down,scanner:C,Hill House',
    );
  });

  it('of one site: what a chat room of several sites tells counts where its item is at home', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-24 08:00', { kind: 'wiped', scanner: 'C', part: 'all' }, { room: ALL_ROOM });
    given.note('2026-11-24 08:01', { kind: 'wiped', scanner: 'A', part: 'all' }, { room: ALL_ROOM });
    const hill = { kind: 'record', from: '2026-11-24', to: '2026-11-24', site: 'hill' } as const;
    expect(textOf(given, hill, AT, ALL_ROOM)).toBe(`24 November 2026, Hill House: 1 line, all in the file.
• Wipe-downs: 1`);
    expect(answerTo(given, hill, AT, ALL_ROOM).file?.name).toBe('record-hill-2026-11-24.csv');
  });
});
