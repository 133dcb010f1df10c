import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { csvFile, toCsv } from '../../core/answers/csv.ts';

describe('rows as CSV', () => {
  // RFC 4180 §2: CRLF; fields with a line break, a quote or a comma are quoted; quotes are doubled.
  it.each([
    [[['aaa', 'b"bb', 'ccc']], 'aaa,"b""bb",ccc\r\n'],
    [[['aaa', 'b\r\nbb', 'ccc']], 'aaa,"b\r\nbb",ccc\r\n'],
    [
      [
        ['a,b', ''],
        ['c', 'd'],
      ],
      '"a,b",\r\nc,d\r\n',
    ],
  ])('%j', (rows, text) => {
    expect(toCsv(rows)).toBe(text);
  });

  // OWASP, "CSV Injection": its own two examples; an apostrophe in front, quotes around, quotes doubled.
  it.each([
    ['=1+2";=1+2', `"'=1+2"";=1+2"\r\n`],
    [`=1+2'" ;,=1+2`, `"'=1+2'"" ;,=1+2"\r\n`],
    ['@SUM(1)', `"'@SUM(1)"\r\n`],
    ['\tx', `"'\tx"\r\n`],
    ['-5', '-5\r\n'],
    ['+44 20', `"'+44 20"\r\n`],
    ['-5.5', '-5.5\r\n'],
  ])('%j cannot run as a formula', (field, text) => {
    expect(toCsv([[field]])).toBe(text);
  });

  it('reads back as it was, but for the apostrophes', () => {
    const rows = fc.array(fc.array(fc.string({ unit: 'grapheme' }), { minLength: 2, maxLength: 2 }), {
      minLength: 1,
    });
    fc.assert(
      fc.property(rows, (table) => {
        const back = Papa.parse<string[]>(toCsv(table), { delimiter: ',', newline: '\r\n' }).data.slice(
          0,
          -1,
        );
        expect(back.map((row) => row.map((field) => field.replace(/^'(?=[=+\-@\t\r\n])/, '')))).toEqual(
          table,
        );
      }),
    );
  });

  it('a file’s name holds nothing that a folder would trip over', () => {
    expect(csvFile('load:big/118', ['a'], [['1']])).toEqual({
      name: 'load-big-118.csv',
      type: 'text/csv',
      content: 'a\r\n1\r\n',
    });
  });
});
