import { describe, expect, it } from 'vitest';
import { findTimes } from '../../../core/language/times/find.ts';
import { tokenize } from '../../../core/language/tokens.ts';
import { SILENT_CASES, SPAN_CASES } from './find.cases.ts';
import { contextAt, spanTexts } from './told.ts';

describe('which words are a time', () => {
  it.each(SPAN_CASES)('%s', (note, words) => {
    expect(spanTexts(note, contextAt()).join('|')).toBe(words);
  });

  it.each(SILENT_CASES)('nothing in: %s', (note) => {
    expect(spanTexts(note, contextAt())).toEqual([]);
  });

  it('leaves alone what is taken', () => {
    const tokens = tokenize('moved to 10 at 4');
    const taken = tokens.map((token) => token.text === '4');
    expect(findTimes(tokens, contextAt())).toHaveLength(1);
    expect(findTimes(tokens, contextAt(), taken)).toEqual([]);
  });
});
