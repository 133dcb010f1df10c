import { type Parsed, type Scan, textAt } from './scan.ts';

export type WhichWord = 'plain' | 'last' | 'this' | 'next';

const WHICH: ReadonlyMap<string, WhichWord> = new Map([
  ['last', 'last'],
  ['past', 'last'],
  ['previous', 'last'],
  ['this', 'this'],
  ['coming', 'this'],
  ['next', 'next'],
]);

/** "Last", "this", "this coming", "next" before a day or a longer stretch; `plain` and nothing read where none stands there. */
export function whichAt(scan: Scan, i: number): Parsed<WhichWord> {
  const the = textAt(scan, i) === 'the' ? i + 1 : i;
  const which = WHICH.get(textAt(scan, the));
  if (which === undefined) return { value: 'plain', next: i };
  if (which === 'this' && textAt(scan, the + 1) === 'coming') return { value: 'this', next: the + 2 };
  return { value: which, next: the + 1 };
}
