import { describe, expect, test } from 'vitest';
import { Given } from '../rules/given.ts';
import { calibrated, FERNGATE, passed } from '../rules/scanner/ferngate.ts';
import { AT, aDay } from './a-day.ts';
import { answerTo, textOf } from './ask.ts';

describe('how everything stands', () => {
  test('given a quiet day, then one line', () => {
    const given = calibrated();
    given.note('2026-11-23 10:30', passed('A', 'B', 'C'));
    given.note('2026-11-24 08:00', {
      kind: 'sterile',
      tips: ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10', '11', '12'],
    });
    expect(textOf(given, { kind: 'due', all: true }, AT)).toBe(
      'Quay Street: blue scanner and red scanner ready; 12 sterile tips; no scans booked; nothing due.',
    );
  });

  test('given much is open, then it is the day’s brief: what must not wait, scanners, tips, loads', () => {
    const text = textOf(aDay(), { kind: 'due', all: true }, AT);
    expect(text).toMatch(/^Quay Street today\n/);
    expect(text).toContain('Load 119: no result yet');
    expect(text).toContain('Blue scanner');
    expect(text.length).toBeLessThan(1500);
  });
});

describe('where everything is', () => {
  test('given no item, then every scanner, wherever it is', () => {
    const answer = answerTo(aDay(), { kind: 'where' }, AT);
    expect(answer.items).toEqual(['scanner:A', 'scanner:B', 'scanner:C']);
    expect(textOf(aDay(), { kind: 'where' }, AT)).toContain('Red scanner: on its way to North Clinic');
  });

  test('given a site, then what is there, and nothing that has left it', () => {
    const text = textOf(aDay(), { kind: 'where', site: 'quay' }, AT);
    expect(text).toMatch(/^Quay Street:\n• Blue scanner: (not )?ready\n/);
    expect(text).not.toContain('Red scanner');
    expect(text).toContain('In load 119');
    expect(textOf(aDay(), { kind: 'where', site: 'north' }, AT)).toBe(
      'North Clinic: no scanner and no tip on record there.',
    );
  });

  test('given a room, then only what is in it', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-24 09:00', { kind: 'moved', items: ['scanner:A'], site: 'quay', room: 's2' });
    expect(textOf(given, { kind: 'where', site: 'quay', room: 's2' }, AT)).toBe(
      'Surgery 2, Quay Street:\n• Blue scanner: not ready',
    );
  });
});

describe('one person', () => {
  test('given two have typed, when one’s day is asked for, then only theirs is counted', () => {
    const given = aDay();
    const day = { kind: 'record', from: '2026-11-24', to: '2026-11-24' } as const;
    expect(textOf(given, { ...day, person: 'Tom' }, AT)).toMatch(
      /^24 November 2026: 1 line by Tom, all in the file\./,
    );
    expect(textOf(given, { ...day, person: 'Ines' }, AT)).toBe('24 November 2026: nothing noted by Ines.');
    expect(answerTo(given, { ...day, person: 'Tom' }, AT).file?.name).toBe('record-tom-2026-11-24.csv');
  });

  test('given one was shown calibrating, when it is asked what, then that; of anything else, that it is not on record', () => {
    expect(textOf(aDay(), { kind: 'who-can', person: 'Tom' }, AT)).toContain(
      'Tom was shown:\n• how to calibrate, today by Rosa',
    );
    expect(textOf(aDay(), { kind: 'who-can', person: 'Tom', topic: 'load' }, AT)).toBe(
      'Tom is not on record as shown how to run a load. To note it: “showed Tom how to run a load”.',
    );
    expect(textOf(aDay(), { kind: 'who-can' }, AT)).toContain(
      'Shown:\n• Tom how to calibrate, today by Rosa',
    );
  });
});

describe('incidents with no stretch of time said', () => {
  test('given none, then that is said of all of the record, and of open ones', () => {
    const given = new Given(FERNGATE);
    expect(textOf(given, { kind: 'incidents' }, AT)).toBe('No incident on record.');
    expect(textOf(given, { kind: 'incidents', open: true }, AT)).toBe('No open incident on record.');
  });

  test('given a load failed after its tip was used, then its incident is among the open ones', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-23 09:00', { kind: 'used', tips: ['4'] });
    given.note('2026-11-23 09:30', { kind: 'fitted', tip: '4', scanner: 'A' });
    const finding = given.state.history.findings.recent().findLast(({ kind }) => kind === 'unsafe-tip');
    if (finding === undefined) throw new Error('nothing was found');
    const opened = {
      kind: 'incident-opened',
      incident: finding.key,
      of: finding.mark.entry,
      sort: 'unsafe-tip',
    } as const;
    given.note('2026-11-23 09:31', { ...opened, items: [...finding.items] }, { from: '' });
    expect(textOf(given, { kind: 'incidents', open: true }, AT)).toMatch(
      /^1 incident, 1 open\.\n• Mon|yesterday/,
    );
    expect(answerTo(given, { kind: 'incidents' }, AT).file?.name).toBe('incidents.csv');
  });
});

describe('which autoclave may be used, none named', () => {
  test('given two are listed and one is held, then each is told', () => {
    const given = new Given(
      FERNGATE.replace(
        'tips:\n',
        'autoclaves:\n  - {id: big, name: big autoclave, site: quay}\n  - {id: lit, name: little autoclave, site: quay}\ntips:\n',
      ),
    );
    given.note('2026-11-24 09:00', { kind: 'held', items: ['autoclave:lit'], reason: 'door seal' });
    expect(textOf(given, { kind: 'ready', item: 'autoclave' }, AT).split('\n')).toEqual([
      '• Yes: the big autoclave is not held on this record.',
      '• No: the little autoclave is out of service since 09:00 (Rosa): door seal.',
    ]);
  });
});
