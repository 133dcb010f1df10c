import { describe, expect, it } from 'vitest';
import { toText } from '../../../bot/show/text.ts';
import { tipRules } from '../../../core/rules/tips/rules.ts';
import { toIso } from '../../../core/time/instant.ts';
import type { Given } from '../given.ts';
import { counted, FERNGATE, heard } from '../loads/heard.ts';

/** Tips 1 to 8 have that many of their 10 cycles behind them. */
function worn(cyclesSoFar: number): Given {
  return counted(
    FERNGATE.replace(
      '{ids: 1-8, home: quay, cycles: 100}',
      `{ids: 1-8, home: quay, cycles: 10, cyclesSoFar: ${cyclesSoFar}}`,
    ),
  );
}

/** Tip 1 goes round once; gives what is said at once when its load ends. */
function round(given: Given, load: string, day: string): readonly string[] {
  given.note(`${day} 09:00`, { kind: 'used', tips: ['1'] });
  given.note(`${day} 09:10`, { kind: 'load-started', load, tips: ['1'], autoclave: 'small' });
  return heard(given, `${day} 10:00`, { kind: 'load-finished', load, outcome: 'passed', autoclave: 'small' });
}

function open(given: Given, local: string): readonly string[] {
  const view = given.view(local);
  return tipRules
    .flatMap((rule) => rule(view))
    .map(({ key, about, room, line, stages }) => {
      const [first] = stages;
      return `${key} ${about} ${room} ${toIso(first?.at ?? 0)} ${toText(line)}`;
    });
}

describe('a tip near its maker’s limit', () => {
  it('given 3 cycles are left, then nothing', () => {
    expect(open(worn(7), '2026-11-23 10:00')).toEqual([]);
  });

  it('given its load brings it within 2, then order, due once, from that load on', () => {
    const given = worn(7);
    expect(round(given, '118', '2026-11-23')).toEqual([]);
    expect(open(given, '2026-11-23 10:00')).toEqual([
      'near-limit|tip:1|10 order !quay:example.org 2026-11-23T10:00:00Z Order a tip in place of tip 1: 8 of 10 cycles.',
    ]);
  });

  it('given that was said and it comes to the limit, then one last use', () => {
    const given = worn(8).told('near-limit|tip:1|10', 'first', '2026-11-23 08:30');
    expect(round(given, '118', '2026-11-23')).toEqual([]);
    expect(round(given, '119', '2026-11-24')).toEqual([
      'order\nOne last use: tip 1. At the maker’s limit of cycles; retire after it.',
    ]);
  });

  it('given nothing was said before, then the order says that it is the last use', () => {
    const given = worn(9);
    expect(round(given, '118', '2026-11-23')).toEqual([]);
    expect(open(given, '2026-11-23 10:00')[0]).toContain(
      'Order a tip in place of tip 1: 10 of 10 cycles. One last use, then retire it.',
    );
  });

  it('given it is at the limit and sent again, then a caution to retire it, all in one post', () => {
    const given = worn(10);
    given.note('2026-11-23 09:00', { kind: 'used', tips: ['1', '2'] });
    expect(heard(given, '2026-11-23 09:30', { kind: 'sent', tips: ['1', '2'] })).toEqual([
      [
        'caution',
        'Retire tips 1 and 2. They have no cycle left.',
        '• Tip 1: 10 of 10 cycles.',
        '• Tip 2: 10 of 10 cycles.',
        'The maker’s limit comes first: do not put them on a scanner again. Note “binned tips 1 and 2”.',
      ].join('\n'),
    ]);
  });

  it('given it was sent all the same and is fitted past the limit, then a warning', () => {
    const given = worn(10);
    round(given, '118', '2026-11-23');
    const [warning] = heard(given, '2026-11-23 11:00', { kind: 'fitted', tip: '1', scanner: 'A' });
    expect(warning?.split('\n')[2]).toBe('Why: past its maker’s limit of cycles: 11 of 10.');
  });

  it('given it is retired, then it is due no longer', () => {
    const given = worn(8);
    given.note('2026-11-23 09:00', { kind: 'retired', tips: ['1', '2', '3', '4', '5', '6', '7', '8'] });
    expect(open(given, '2026-11-23 10:00')).toEqual([]);
  });
});

describe('what the record cannot take', () => {
  it('given tips used since, when they are said to be sterile, then one warning for all, and nothing changes', () => {
    const given = counted();
    given.note('2026-11-23 09:00', { kind: 'used', tips: ['2', '4'] });
    expect(heard(given, '2026-11-23 11:00', { kind: 'sterile', tips: ['2', '3', '4'] })).toEqual([
      [
        'warning',
        'Not taken: tips 2 and 4 are not sterile on record. Do not use.',
        '• Tip 2: used, 09:00 (Rosa); no passed load since.',
        '• Tip 4: used, 09:00 (Rosa); no passed load since.',
        'Through a load, with its result noted, makes sterile. If a note is wrong, edit it.',
      ].join('\n'),
    ]);
    expect(given.state.tips.get('2')?.state).toBe('used');
  });

  it('given a tip is put in a second load while the first is open, then a caution', () => {
    const given = counted();
    given.note('2026-11-23 09:00', { kind: 'used', tips: ['2'] });
    given.note('2026-11-23 09:10', { kind: 'load-started', load: '118', tips: ['2'], autoclave: 'small' });
    expect(
      heard(given, '2026-11-23 09:30', { kind: 'load-started', load: '7', tips: ['2'], autoclave: 'big' }),
    ).toEqual([
      [
        'caution',
        'In two loads at once: tip 2. Sterile only when both have passed. If one is a slip, edit that note.',
        '• Tip 2: load 118 (the small autoclave) and load 7 (the big autoclave).',
      ].join('\n'),
    ]);
  });

  it('given a tip goes through a second load unused, then that is said', () => {
    const given = counted();
    given.note('2026-11-23 09:10', { kind: 'load-started', load: '118', tips: ['2'], autoclave: 'small' });
    given.note('2026-11-23 10:00', { kind: 'load-finished', load: '118', outcome: 'passed' });
    expect(
      heard(given, '2026-11-23 10:30', {
        kind: 'load-started',
        load: '119',
        tips: ['2'],
        autoclave: 'small',
      }),
    ).toEqual([
      [
        'load',
        'Not used since the last load: tip 2. Was a use not noted?',
        '• Tip 2: load 118 (the small autoclave) and load 119 (the small autoclave).',
      ].join('\n'),
    ]);
  });

  it('given a tip in an open load is removed from a scanner by a note, then its pass will not count for it', () => {
    const given = counted();
    given.note('2026-11-23 09:10', { kind: 'load-started', load: '118', tips: ['2'], autoclave: 'small' });
    expect(heard(given, '2026-11-23 09:30', { kind: 'removed', tips: ['2'] })).toEqual([
      'load\nTip 2: out before load 118 (the small autoclave) had its result. A pass will not count for it. It needs another load.',
    ]);
  });

  it('given a tip in an open load is fitted, then the warning says that the load has no result, and nothing says it twice', () => {
    const given = counted();
    given.note('2026-11-23 09:10', { kind: 'load-started', load: '118', tips: ['2'], autoclave: 'small' });
    const said = heard(given, '2026-11-23 09:30', { kind: 'fitted', tip: '2', scanner: 'A' });
    expect(said.map((post) => post.split('\n')[0])).toEqual(['warning', 'question']);
    expect(said[0]).toContain('load 118 (the small autoclave) has no result yet');
  });
});
