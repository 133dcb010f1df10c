import { describe, expect, it } from 'vitest';
import { combineTimes } from '../../../core/language/times/combine.ts';
import { findTimes } from '../../../core/language/times/find.ts';
import { resolveForward } from '../../../core/language/times/forward.ts';
import { tokenize } from '../../../core/language/tokens.ts';
import { contextAt } from './told.ts';

function combined(note: string) {
  const context = contextAt();
  const [a, b, more] = findTimes(tokenize(note), context);
  if (a === undefined || b === undefined || more !== undefined) throw new Error(`not two times in: ${note}`);
  const both = combineTimes(a, b);
  return both === null ? null : resolveForward(both, context);
}

describe('two time phrases of one clause', () => {
  it('puts a day and the times that stand apart together', () => {
    const found = combined('6 scans on Thursday at north at 9, 10:30 and 2');
    expect(found?.days).toEqual(['2026-11-26']);
    expect(found?.times).toEqual(['09:00', '10:30', '14:00']);
  });

  it('takes the later order as well', () => {
    const found = combined('scans at 9 and 2 in surgery 2 tomorrow');
    expect(found?.days).toEqual(['2026-11-26']);
    expect(found?.times).toEqual(['09:00', '14:00']);
  });

  it('keeps a stretch of hours', () => {
    const found = combined('open 9 to 1 at quay on Saturday');
    expect([found?.days, found?.open, found?.shut]).toEqual([['2026-11-28'], '09:00', '13:00']);
  });

  it('lets "just" give way', () => {
    expect(combined('just wiped A at 5')?.times).toEqual(['17:00']);
  });

  it.each(['used 4 at 9 then 5 at 10', 'used 4 yesterday then 5 today', 'wiped 20 min ago on Monday then'])(
    'keeps apart: %s',
    (note) => {
      expect(combined(note)).toBeNull();
    },
  );
});
