import { describe, expect, test } from 'vitest';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { answerTo, textOf } from './ask.ts';

const YEAR = { kind: 'incidents', from: '2026-01-01', to: '2026-12-31' } as const;
const tom = { from: '@tom:example.org' };

/** Tip 4 is fitted though used: the finding's key as the record names it. */
function unsafe(given: Given, date: string): { incident: string; of: string } {
  given.note(`${date} 09:00`, { kind: 'used', tips: ['4'] }, tom);
  given.note(`${date} 09:30`, { kind: 'fitted', tip: '4', scanner: 'A' }, tom);
  const finding = given.state.history.findings.recent().findLast(({ kind }) => kind === 'unsafe-tip');
  if (finding === undefined) throw new Error('nothing was found');
  const of = finding.mark.entry;
  const opened = { kind: 'incident-opened', incident: finding.key, of, items: finding.items } as const;
  given.note(`${date} 09:31`, { ...opened, items: [...finding.items], sort: 'unsafe-tip' }, { from: '' });
  return { incident: finding.key, of };
}

describe('the incidents of a stretch of time', () => {
  test('given none, when they are asked for, then that is said', () => {
    expect(textOf(new Given(FERNGATE), YEAR, '2026-11-25 09:00')).toBe('No incident on record: 2026.');
  });

  test('given one that nobody answered, when they are asked for, then it stands open, not answered', () => {
    const given = new Given(FERNGATE);
    unsafe(given, '2026-11-23');
    expect(textOf(given, YEAR, '2026-11-25 09:00').split('\n')).toEqual([
      '1 incident, 1 open: 2026.',
      '• Mon 09:31: unsafe tip: tip 4 and blue scanner. Not answered yet. Open.',
      'All of it is in the file.',
    ]);
  });

  test('given one answered and closed, then who answered, who closed it and with what are told', () => {
    const given = new Given(FERNGATE);
    const { incident, of } = unsafe(given, '2026-11-23');
    given.note('2026-11-23 09:33', { kind: 'incident-answered', incident, of, tip: '4', reached: true }, tom);
    given.note('2026-11-23 12:00', {
      kind: 'incident-closed',
      incident,
      reason: 'dentist told, patient seen',
    });
    const text = textOf(given, YEAR, '2026-11-25 09:00');
    expect(text).toContain('1 incident, none open');
    expect(text).toContain(
      'Reached a patient (Tom, Mon 09:33). Closed: dentist told, patient seen (Rosa, Mon 12:00).',
    );
    const { file } = answerTo(given, YEAR, '2026-11-25 09:00');
    const [head, row] = file?.content.split('\r\n') ?? [];
    expect(file?.name).toBe('incidents-2026-01-01-to-2026-12-31.csv');
    expect(head).toMatch(/^opened \(local\),opened \(UTC\),what,why,items,where,stands,reached a patient,/);
    expect(row).toMatch(/^2026-11-23 09:31,2026-11-23T09:31:00Z,unsafe tip,/);
    expect(row).toMatch(
      /,closed,yes,Tom,2026-11-23 09:33,Rosa,2026-11-23 12:00,"?dentist told, patient seen"?$/,
    );
  });

  test('given one answered with no, then it is over and not open', () => {
    const given = new Given(FERNGATE);
    const { incident, of } = unsafe(given, '2026-11-23');
    given.note(
      '2026-11-23 09:33',
      { kind: 'incident-answered', incident, of, tip: '4', reached: false },
      tom,
    );
    expect(textOf(given, YEAR, '2026-11-25 09:00')).toContain('Reached no patient (Tom, Mon 09:33). Over.');
  });

  test.each([
    ['the day before', '2026-11-22'],
    ['the day after', '2026-11-24'],
  ])('given one of another day (%s), then it is not told', (_name, day) => {
    const given = new Given(FERNGATE);
    unsafe(given, '2026-11-23');
    expect(textOf(given, { ...YEAR, from: day, to: day }, '2026-11-25 09:00')).toContain('No incident');
    expect(textOf(given, { ...YEAR, site: 'north' }, '2026-11-25 09:00')).toContain('No incident');
  });
});
