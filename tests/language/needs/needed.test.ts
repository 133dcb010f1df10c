import { describe, expect, test } from 'vitest';
import { neededBy } from '../../../core/language/needs/needed.ts';

const WHAT_IS_NEEDED: readonly [pattern: RegExp, needed: string | null][] = [
  [/where is it/, '*where*'],
  [/^where is it$/, 'where'],
  [/\bwhere\b|whereabouts/, 'where *whereabouts*'],
  [/^(?:undo|scrap) (?:that|it)$/, 'undo scrap'],
  [/^(?:please )*undo$/, 'undo'],
  [/^(?:please)*undo$/, '*undo*'],
  [/^tips? status$/, 'status'],
  [/tips?$/, '*tip*'],
  [/colou+r/, '*colou*'],
  [/^l8r$/, 'l'],
  [/(?!never)again/, '*again*'],
  [/(?<=.) undo/, '*undo*'],
  [/ab{0,2}cde/, '*cde*'],
  [/[xyz] \d+/, null],
  [/one|\d/, null],
  [/(?:load )?\d/, null],
  [/"quoted"/, 'quoted'],
  [/how('s| is) it going/, 'it'],
];

describe('what a pattern needs is read from its source', () => {
  test.each(WHAT_IS_NEEDED)('%s needs %s', (pattern, needed) => {
    const runs = neededBy(pattern)?.map(({ text, whole }) => (whole ? text : `*${text}*`));
    expect(runs?.join(' ') ?? null).toBe(needed);
  });
});
