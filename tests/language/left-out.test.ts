import { describe, expect, test } from 'vitest';
import { makeReader } from '../../core/language/reader.ts';
import { practiceIn } from '../practice/base-file.ts';
import { FERNGATE } from '../rules/loads/heard.ts';

const read = makeReader(practiceIn(FERNGATE));
const AT = Date.UTC(2026, 10, 23, 10, 15);

const HEADS = [
  'all',
  'everything',
  'all of them',
  'all of em',
  'all tips',
  'all the tips',
  'every tip',
  'they’re all',
];
const STATES = [
  'sterile',
  'washed',
  'bagged',
  'sent',
  'used',
  'on the shelf',
  'in the autoclave',
  'fine to use',
];
const BARS = [
  'except',
  'except for',
  'bar',
  'but',
  'but not',
  'apart from',
  'besides',
  'excluding',
  'minus',
  'barring',
  'other than',
  'not',
  'save',
  'aside from',
  'not counting',
  'without',
];
const SPARED = ['4', 'tips 4, 6', 'number 4'];

/** Every way of saying that all are so but some: those left out must never be told as so. */
function sayings(): readonly string[] {
  return BARS.flatMap((bar) =>
    SPARED.flatMap((spared) => HEADS.flatMap((head) => allBut(head, `${bar} ${spared}`))),
  );
}

function allBut(head: string, spared: string): readonly string[] {
  const be = head.startsWith('they’re') ? 'now' : head.startsWith('every') ? 'is' : 'are';
  return STATES.flatMap((state) => [
    `${head} ${state} ${spared}`,
    `${head} ${be} ${state} ${spared}`,
    `${head} ${spared} ${be} ${state}`,
    `${head} ${be} ${state}, ${spared}`,
  ]);
}

/** The facts that tell of tip 4 what is told of all the others. */
function toldOfSpared(text: string): readonly string[] {
  const { facts } = read(text, { at: AT }).reading;
  return facts.flatMap((fact) => {
    const named = 'tips' in fact && fact.tips !== undefined ? fact.tips : [];
    const freed = fact.kind === 'released' ? fact.items : [];
    return named.includes('4') || freed.includes('tip:4') ? [`${text} → ${fact.kind}`] : [];
  });
}

describe('what is left out of a set', () => {
  test('is never told as so, in thousands of ways of saying it', () => {
    const all = sayings();
    expect(all.length).toBeGreaterThan(12_000);
    expect(all.flatMap(toldOfSpared)).toEqual([]);
  });

  test.each([
    'tips 1 to 8 sterile and on the shelf except 4',
    'tips 1 to 8 are sterile, all on the shelf bar 4',
    '1-8 sterile and put away apart from 4',
    'tips 1 to 8 sterile, not 4',
    'tips 1 to 8 back from steri and put away, but not 4',
    'tips 1 to 8 washed and bagged except 4',
  ])('nor where it is said in a later part: %s', (text) => {
    expect(read(text, { at: AT }).reading.facts).not.toEqual([]);
    expect(toldOfSpared(text)).toEqual([]);
  });

  test('what was used was used, though not all of it was sent', () => {
    const { facts } = read('used 1, 2 and 4 and sent them except 4', { at: AT }).reading;
    expect(facts).toMatchObject([{ kind: 'used', tips: ['1', '2', '4'] }]);
  });
});
