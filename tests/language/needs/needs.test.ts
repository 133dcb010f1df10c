import fc from 'fast-check';
import { expect, test } from 'vitest';
import { needing, needsMetIn } from '../../../core/language/needs/needs.ts';

const PATTERNS: readonly RegExp[] = [
  /^(?:ok |please )*(?:undo|scrap|take back)(?: (?:that|it|one))*$/,
  /\bwhere('s|s)?\b|whereabouts|seen (?:the |my )?/,
  /tips? left|how many (?!people)\w+/,
  /^(?:in )?(?:a|one) ?(?:bit|mo|sec)$/,
  /l8r|\d+ min|later(?: on)?/,
  /[0-9]x|no+pe/,
  /(?:not|n't) (?:yet|now)\b/,
];
const BITS = PATTERNS.map((pattern) => needing(pattern));

const word = fc.constantFrom(
  ..."ok please undo scrap take back that it one where where's whereabouts seen the my tip tips left how many people of in a bit mo sec abit l8r 10 min later on 3x noope nope not yet now isn't latertips".split(
    ' ',
  ),
);

test('whatever a pattern matches holds what it needs, however its words are cut into parts', () => {
  fc.assert(
    fc.property(fc.array(fc.array(word, { minLength: 1, maxLength: 3 }), { maxLength: 4 }), (parts) => {
      const texts = parts.map((words) => words.join(' '));
      const met = texts.reduce((bits, text) => bits | needsMetIn(text), 0);
      for (const [i, pattern] of PATTERNS.entries()) {
        if (pattern.test(texts.join(' '))) expect(met & (BITS[i] ?? 0), String(pattern)).not.toBe(0);
      }
    }),
    { numRuns: 3000 },
  );
});

test('a pattern is not tried on words that it does not need', () => {
  const bit = needing(/^undo (?:that|it)$/);
  expect(needsMetIn('undone') & bit).toBe(0);
  expect(needsMetIn('undooo') & bit).toBe(bit);
});
