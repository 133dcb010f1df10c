import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnsOf, wrapped } from '../../bot/chat/terminal/wrap.ts';

describe('a long line at the width of a phone', () => {
  it('breaks between words and goes on under its own words', () => {
    expect(wrapped('    • Wipe down blue scanner: scan ended 09:10', 30)).toEqual([
      '    • Wipe down blue scanner:',
      '      scan ended 09:10',
    ]);
    expect(wrapped('[12] Stop: tip 4 must not be used', 20)).toEqual([
      '[12] Stop: tip 4',
      '     must not be',
      '     used',
    ]);
  });

  it('an emoji takes two columns', () => {
    expect(columnsOf('✅ ok')).toBe(5);
    expect(columnsOf('1️⃣')).toBe(2);
  });

  it('without a width nothing is broken', () => {
    const long = 'word '.repeat(60);
    expect(wrapped(long, null)).toEqual([long]);
  });

  it('keeps every word in order, and none over the width but a word that is longer itself', () => {
    const word = fc.stringMatching(/^[a-z]{1,30}$/);
    fc.assert(
      fc.property(fc.array(word, { minLength: 1 }), fc.integer({ min: 20, max: 60 }), (words, width) => {
        const lines = wrapped(`    • ${words.join(' ')}`, width);
        expect(lines.join(' ').replace('•', '').trim().split(/ +/)).toEqual(words);
        for (const line of lines)
          if (line.trim().includes(' ', 2)) expect(columnsOf(line)).toBeLessThanOrEqual(width);
      }),
    );
  });
});
