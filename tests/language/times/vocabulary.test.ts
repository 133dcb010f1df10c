import { describe, expect, it } from 'vitest';
import { findTimes } from '../../../core/language/times/find.ts';
import { TIME_TARGETS, TIME_WORDS } from '../../../core/language/times/vocabulary.ts';
import { tokenize } from '../../../core/language/tokens.ts';
import { BACK_CASES } from './back.cases.ts';
import { BACK_DAYS, FORWARD_DAYS } from './days.cases.ts';
import { FORWARD_CASES, HOURS_CASES, START_CASES } from './forward.cases.ts';
import { contextAt } from './told.ts';

describe('the words of the time grammar', () => {
  it('holds every word of every time phrase in the cases', () => {
    const notes = [BACK_CASES, FORWARD_CASES, HOURS_CASES, START_CASES, BACK_DAYS, FORWARD_DAYS].flatMap(
      (list) => list.map(([note]) => note),
    );
    const unknown = new Set<string>();
    for (const note of notes) {
      const tokens = tokenize(note);
      for (const { from, to } of findTimes(tokens, contextAt()))
        for (const token of tokens.slice(from, to))
          if (
            token.kind === 'word' &&
            token.text.length > 1 &&
            token.text !== "'s" &&
            !TIME_WORDS.has(token.text)
          )
            unknown.add(token.text);
    }
    expect([...unknown]).toEqual([]);
  });

  it('offers only words that it knows for putting slips right', () => {
    expect([...TIME_TARGETS].filter((word) => !TIME_WORDS.has(word))).toEqual([]);
    expect(TIME_TARGETS.has('yesterday')).toBe(true);
  });
});
