import { describe, expect, it } from 'vitest';
import { BACK_CASES } from './back.cases.ts';
import { back, contextAt } from './told.ts';

describe('facts look back', () => {
  it.each(BACK_CASES)('%s', (note, meant) => {
    expect(back(note, contextAt())).toBe(meant);
  });
});
