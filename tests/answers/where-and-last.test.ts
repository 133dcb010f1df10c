import { describe, expect, it } from 'vitest';
import type { Item } from '../../core/reading/slots.ts';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { AT, aDay } from './a-day.ts';
import { textOf } from './ask.ts';

const WHERE: readonly (readonly [Item, string])[] = [
  ['scanner:A', 'Blue scanner: Surgery 2, Quay Street, noted there yesterday 11:25 (Rosa), with tip 4 on.'],
  ['scanner:B', 'Red scanner: on its way to North Clinic, from Quay Street, since 10:00 (Rosa).'],
  ['scanner:C', 'Green scanner: Hill House, its home: no note has moved it.'],
  ['scanner:Z', 'Scanner Z: not in the practice file.'],
  ['tip:1', 'Tip 1: missing, since 09:35 (Rosa); last known at Quay Street.'],
  ['tip:3', 'Tip 3: held (cracked mirror), Quay Street, since 09:31 (Rosa).'],
  ['tip:4', 'Tip 4: on blue scanner, used, Surgery 2, Quay Street, since yesterday 11:00 (Rosa).'],
  ['tip:5', 'Tip 5: on the way to North Clinic, used, since 10:00 (Rosa).'],
  ['tip:7', 'Tip 7: in load 119, Quay Street, since 09:30 (Rosa).'],
  ['tip:10', 'Tip 10: Quay Street, its home: no note has spoken of it yet.'],
  ['tip:99', 'Tip 99: not in the practice file.'],
  ['calibration-tip:A', 'Blue scanner’s calibration tip: Quay Street.'],
  ['calibration-tip:B', 'Red scanner’s calibration tip: on its way with red scanner.'],
  ['autoclave', 'The autoclave: the practice file does not say where.'],
];

describe('where is it?', () => {
  it.each(WHERE)('%s', (item, text) => {
    expect(textOf(aDay(), { kind: 'where', item }, AT)).toBe(text);
  });

  it('by the clock of the site where it is: half an hour off at Hill House', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-24 05:00', { kind: 'moved', items: ['scanner:A'], site: 'hill', room: 'h1' });
    expect(textOf(given, { kind: 'where', item: 'scanner:A' }, AT)).toBe(
      'Blue scanner: Room 1, Hill House, since 10:30 (Rosa).',
    );
  });
});

it('a tip on a scanner that is on its way travels with it', () => {
  const given = aDay();
  given.note('2026-11-24 10:30', { kind: 'departed', items: ['scanner:A'], site: 'hill' });
  expect(textOf(given, { kind: 'where', item: 'tip:4' }, AT)).toBe(
    'Tip 4: on blue scanner, used, on its way to Hill House, since yesterday 11:00 (Rosa).',
  );
});

describe('when was it last …?', () => {
  it('calibrated: when, by whom, and what has made it due since', () => {
    const given = aDay();
    given.note('2026-11-24 10:30', { kind: 'fault', item: 'scanner:A', sort: 'dropped' });
    expect(textOf(given, { kind: 'last', of: 'calibration' }, AT)).toBe(
      `• Blue scanner: passed yesterday 09:10 (Tom). Due: dropped 10:30, not calibrated since.
• Red scanner: no pass on record.`,
    );
  });

  it('calibrated, and failed since', () => {
    const given = aDay();
    given.note('2026-11-24 10:45', { kind: 'calibrated', scanner: 'A', outcome: 'failed' });
    expect(textOf(given, { kind: 'last', of: 'calibration', item: 'scanner:A' }, AT)).toBe(
      'Blue scanner: passed yesterday 09:10 (Tom); failed 10:45 (Rosa).',
    );
  });

  it('scanned, with which tip and where', () => {
    expect(textOf(aDay(), { kind: 'last', of: 'scan', item: 'scanner:A' }, AT)).toBe(
      'Blue scanner: last scan ended yesterday 11:25 (Rosa), tip 4, Surgery 2, Quay Street.',
    );
    expect(textOf(aDay(), { kind: 'last', of: 'scan', item: 'scanner:C' }, AT)).toBe(
      'Green scanner: no scan on record.',
    );
  });

  it('wiped, and that it is dirty since', () => {
    expect(textOf(aDay(), { kind: 'last', of: 'wipe', item: 'scanner:A' }, AT)).toBe(
      'Blue scanner: wiped down yesterday 09:42 (Tom). Not since the scan that ended yesterday 11:25 (Rosa).',
    );
  });

  it('moved', () => {
    const given = aDay();
    given.note(
      '2026-11-24 10:20',
      { kind: 'moved', items: ['scanner:B'], site: 'north' },
      { from: '@tom:example.org' },
    );
    expect(textOf(given, { kind: 'last', of: 'move', item: 'scanner:B' }, AT)).toBe(
      'Red scanner: North Clinic, since 10:20 (Tom).',
    );
    expect(textOf(given, { kind: 'last', of: 'move', item: 'scanner:A' }, AT)).toBe(
      'Blue scanner: no move noted; at Surgery 2, Quay Street.',
    );
  });

  it('a tip’s last use', () => {
    expect(textOf(aDay(), { kind: 'last', of: 'scan', item: 'tip:4' }, AT)).toBe(
      'Tip 4: last used yesterday 11:05 (Rosa) on blue scanner, Surgery 2, Quay Street.',
    );
    expect(textOf(aDay(), { kind: 'last', of: 'scan', item: 'tip:10' }, AT)).toBe(`Tip 10: no use on record.
Tip 10: Quay Street, its home: no note has spoken of it yet.`);
  });

  it('the temperature, of each room that has one, the latest first', () => {
    const given = aDay();
    given.note('2026-11-24 10:00', { kind: 'temperature', celsius: 19, site: 'quay' });
    expect(textOf(given, { kind: 'last', of: 'temperature' }, AT)).toBe(`• 19.0 °C Quay Street, 10:00 (Rosa)
• 21.5 °C Surgery 1, Quay Street, yesterday 09:00 (Rosa)`);
    expect(textOf(given, { kind: 'last', of: 'temperature', site: 'hill' }, AT)).toBe(
      'Hill House: no temperature noted.',
    );
  });
});
