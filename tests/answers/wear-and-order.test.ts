import { describe, expect, test } from 'vitest';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { textOf } from './ask.ts';

const AT = '2026-11-24 11:00';
const LIMITED = FERNGATE.replace(
  '{ids: 1-12, home: quay}',
  '{ids: 1-3, home: quay, cycles: 100, cyclesSoFar: 99}\n  - {ids: 4-12, home: quay, cycles: 100, cyclesSoFar: 40}',
);

describe('how far tips are worn', () => {
  test('given no limit is set, then cycles alone, and that a limit can be set', () => {
    const text = textOf(new Given(FERNGATE), { kind: 'wear' }, AT);
    expect(text).toMatch(/^No limit is set, so only cycles are counted\./);
    expect(text).toContain('• Tip 1: 0 cycles done');
  });

  test('given three are near theirs, then they come first, with what is left', () => {
    const text = textOf(new Given(LIMITED), { kind: 'wear' }, AT);
    expect(text.split('\n').slice(0, 2)).toEqual([
      '3 tips near their limit:',
      '• Tip 1: 99 of 100 cycles, 1 left, Quay Street',
    ]);
  });

  test('given none is, then that is said first', () => {
    const text = textOf(
      new Given(LIMITED.replace('cyclesSoFar: 99', 'cyclesSoFar: 90')),
      { kind: 'wear' },
      AT,
    );
    expect(text).toMatch(/^None is near its limit\. Fewest cycles left:\n• Tip 1: 90 of 100 cycles, 10 left/);
  });

  test('of one tip: cycles done and left, uses; a retired one is said to be', () => {
    const given = new Given(LIMITED);
    given.note('2026-11-24 09:00', { kind: 'used', tips: ['4'] });
    expect(textOf(given, { kind: 'wear', item: 'tip:4' }, AT)).toBe(
      'Tip 4: 40 of 100 cycles, 60 left; 1 use.',
    );
    given.note('2026-11-24 09:30', { kind: 'retired', tips: ['4'] });
    expect(textOf(given, { kind: 'wear', item: 'tip:4' }, AT)).toContain('Retired 09:30.');
    expect(textOf(given, { kind: 'wear', item: 'tip:99' }, AT)).toBe('Tip 99 is not in the practice file.');
  });
});

describe('whether to order tips', () => {
  /** So many uses on each of the open days before. */
  function used(each: number, soFar: number): Given {
    const given = new Given(LIMITED.replace(/cyclesSoFar: \d+/g, `cyclesSoFar: ${soFar}`));
    for (const day of ['16', '17', '18', '19', '20', '23'])
      for (let n = 0; n < each; n++)
        given.note(`2026-11-${day} 0${9 + Math.floor(n / 60)}:${String(n % 60).padStart(2, '0')}`, {
          kind: 'used',
          tips: [String(1 + (n % 12))],
        });
    return given;
  }

  test('given no limit, or no use on record, then that it cannot be said, and why', () => {
    expect(textOf(new Given(FERNGATE), { kind: 'order' }, AT)).toBe(
      'Cannot say yet: the practice file gives no limit of cycles to count against.',
    );
    expect(textOf(new Given(LIMITED), { kind: 'order' }, AT)).toBe(
      'Cannot say yet: there are under 5 open days of use on record.',
    );
  });

  test('given many cycles are left, then not yet, in how many days, and the figures', () => {
    const text = textOf(used(4, 10), { kind: 'order' }, AT);
    expect(text).toMatch(
      /^Not yet: order in about \d+ open days, then \d+ tips\.\n\d+ cycles are left, use is 4 a day/,
    );
  });

  test('given few are left, then order now, and how many', () => {
    expect(textOf(used(8, 97), { kind: 'order' }, AT)).toMatch(
      /^Order \d+ tips: \d+ cycles are left in all\./,
    );
  });
});
