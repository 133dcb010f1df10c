import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PatternsByNeed } from '../../../core/language/needs/patterns-by-need.ts';

const PATTERNS: readonly RegExp[] = [
  /^(?:whats|what is) (?:in|on) (?:the )?autoclaves?$/,
  /^(?:any )?tips? (?:left|missing)$/,
  /^when (?:is|was) it (?:last )?done$/,
  /^\w+ \w+$/,
  /^(?:is )?(?:everything|it all) ready$/,
  /missing|left/,
];
const found = new PatternsByNeed(PATTERNS, (pattern) => pattern);

const line = fc
  .array(
    fc.constantFrom(
      ...'whats what is in on the autoclave autoclaves any tip tips left missing when was it last done everything all ready'.split(
        ' ',
      ),
    ),
    { maxLength: 6 },
  )
  .map((words) => words.join(' '));

test('every pattern that matches a line is among those found for it, in their order', () => {
  fc.assert(
    fc.property(line, (text) => {
      const matching = PATTERNS.filter((pattern) => pattern.test(text));
      expect(found.mayMatch(text).filter((pattern) => pattern.test(text))).toEqual(matching);
    }),
    { numRuns: 3000 },
  );
});

test('a line without what a pattern needs does not find it', () => {
  expect(found.mayMatch('whats in the autoclaves')).toEqual([PATTERNS[0], PATTERNS[3]]);
});
