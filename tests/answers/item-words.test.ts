import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { idRanges, itemWords, tipsAsRanges } from '../../core/words/item-words.ts';
import { nameOf } from '../../core/words/people-words.ts';
import { practiceIn } from '../practice/base-file.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';

describe('ids as ranges', () => {
  it.each([
    [[], ''],
    [['4'], '4'],
    [['1', '2'], '1, 2'],
    [['1', '2', '3', '4', '7'], '1–4, 7'],
    [['4', '2', '3', '4'], '4, 2–4'],
    [['N1', 'N2', 'N3', '4', '5'], 'N1–N3, 4, 5'],
    [['K-08', 'K-09', 'K-10'], 'K-08–K-10'],
    [['9', '010', '011'], '9, 010, 011'],
    [['A', 'B', 'C'], 'A, B, C'],
  ])('%j: %s', (ids, words) => {
    expect(idRanges(ids)).toBe(words);
  });

  it('no tip is lost, none is added, the order stays', () => {
    const numbers = fc.array(fc.integer({ min: 0, max: 30 }).map(String), { maxLength: 30 });
    fc.assert(
      fc.property(numbers, (ids) => {
        const back = idRanges(ids)
          .split(', ')
          .flatMap((part) => {
            const [from = '', to = from] = part.split('–');
            if (from === '') return [];
            return Array.from({ length: Number(to) - Number(from) + 1 }, (_, n) => String(Number(from) + n));
          });
        expect(back).toEqual(ids);
      }),
    );
  });

  it('one tip is a tip', () => {
    expect(tipsAsRanges(['4'])).toBe('tip 4');
    expect(tipsAsRanges(['4', '5', '6'])).toBe('tips 4–6');
  });
});

describe('what a practice calls its things', () => {
  const practice = practiceIn(
    FERNGATE.replace(
      'people:',
      'autoclaves: [{id: big, name: big autoclave, site: quay}, {id: small, name: The Little One, site: quay}]\npeople:',
    ),
  );
  it.each([
    ['scanner:A', 'blue scanner'],
    ['scanner:Z', 'scanner Z'],
    ['calibration-tip:A', 'blue scanner’s calibration tip'],
    ['tip:4', 'tip 4'],
    ['load:118', 'load 118'],
    ['load:big/118', 'load 118 (the big autoclave)'],
    ['load:big/118@2026-11-23~2', 'load 118 (the big autoclave)'],
    ['load:118@2026-11-23', 'load 118'],
    ['autoclave:small', 'The Little One'],
    ['autoclave', 'the autoclave'],
  ] as const)('%s: %s', (item, words) => {
    expect(itemWords(practice, item)).toBe(words);
  });

  it('people by the file’s name, by the name said, by their chat name; the program by its own', () => {
    expect(nameOf(practice, '@rosa:example.org')).toBe('Rosa');
    expect(nameOf(practice, 'Ann')).toBe('Ann');
    expect(nameOf(practice, '@locum.kim:example.org')).toBe('locum.kim');
    expect(nameOf(practice, null)).toBe('Scanward');
  });
});
