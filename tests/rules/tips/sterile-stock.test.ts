import { describe, expect, it } from 'vitest';
import { canUse } from '../../../core/rules/tips/can-use.ts';
import { sterileStock } from '../../../core/rules/tips/sterile-stock.ts';
import type { Given } from '../given.ts';
import { counted, FERNGATE } from '../loads/heard.ts';

const stock = (given: Given, local: string, site: string | null) =>
  sterileStock(given.view(local), site).map(({ id }) => id);

describe('which tips may be fitted at a site', () => {
  it('then the oldest first, those that became sterile together in the file’s order', () => {
    const given = counted();
    given.note('2026-11-23 09:00', { kind: 'used', tips: ['1', '2'] });
    given.note('2026-11-23 09:10', { kind: 'load-started', load: '118', tips: ['1'], autoclave: 'small' });
    given.note('2026-11-23 10:00', { kind: 'load-finished', load: '118', outcome: 'passed' });
    expect(stock(given, '2026-11-23 10:30', 'quay')).toEqual(['3', '4', '5', '6', '7', '8', '1']);
    expect(stock(given, '2026-11-23 10:30', 'north')).toEqual(['9', '10']);
    expect(stock(given, '2026-11-23 10:30', null)).toEqual(['3', '4', '5', '6', '7', '8', '9', '10', '1']);
  });

  it('then not those held, doubted, on their way, missing or on a scanner', () => {
    const given = counted();
    given.note('2026-11-23 09:00', [
      { kind: 'held', items: ['tip:1'] },
      { kind: 'doubted', item: 'tip:2' },
      { kind: 'departed', items: ['tip:3'] },
      { kind: 'missing', items: ['tip:4'] },
      { kind: 'fitted', tip: '5', scanner: 'A' },
    ]);
    expect(stock(given, '2026-11-23 10:30', 'quay')).toEqual(['6', '7', '8']);
  });

  it('given they are wrapped, then good up to and with the day one year on', () => {
    expect(stock(counted(), '2027-11-20 23:59', 'north')).toEqual(['9', '10']);
    expect(stock(counted(), '2027-11-21 00:00', 'north')).toEqual([]);
  });

  it('given only a bagged tip counts as wrapped, then the others are good that day only', () => {
    const given = counted(FERNGATE.replace('{loadTable: uk}', '{loadTable: uk, wrapped: noted}'));
    given.note('2026-11-20 09:30', { kind: 'bagged', tips: ['7'] });
    expect(stock(given, '2026-11-20 23:59', 'quay')).toHaveLength(8);
    expect(stock(given, '2026-11-21 00:00', 'quay')).toEqual(['7']);
  });
});

describe('can I use tip 4?', () => {
  it('given it is sterile, then yes', () => {
    expect(canUse(counted().view('2026-11-23 10:00'), '4')).toEqual({ usable: true, reasons: [] });
  });

  it('given it was fitted sterile and not scanned with, then yes; once scanned with, no', () => {
    const given = counted();
    given.note('2026-11-23 09:00', { kind: 'fitted', tip: '4', scanner: 'A' });
    expect(canUse(given.view('2026-11-23 10:00'), '4')?.usable).toBe(true);
    given.note('2026-11-23 10:05', { kind: 'scan-started', scanner: 'A' });
    const after = canUse(given.view('2026-11-23 10:10'), '4');
    expect(after?.usable).toBe(false);
    expect(after?.reasons.map(({ why }) => why)).toEqual(['used']);
  });

  it('given the practice has no such tip, then null', () => {
    expect(canUse(counted().view('2026-11-23 10:00'), '44')).toBeNull();
  });
});
