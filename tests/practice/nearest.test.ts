import { expect, test } from 'vitest';
import { nearest } from '../../core/practice/file/nearest.ts';

const known = ['name', 'also', 'home', 'north', 'quay', 'settleTauMinutes', 'temperatureChangeCelsius'];

// One slip in a short word, more in a long one; Damerau 1964: insertion, omission, substitution, transposition.
test.each([
  ['nam', 'name'],
  ['names', 'name'],
  ['nome', 'name'],
  ['nmae', 'name'],
  ['norht', 'north'],
  ['North', 'north'],
  ['settletauminute', 'settleTauMinutes'],
  ['temperatureChange', 'temperatureChangeCelsius'],
  ['settle', 'settleTauMinutes'],
  ['set', null],
  ['lime', null],
  ['x', null],
  ['', null],
])('%j is meant as %j', (word, meant) => {
  expect(nearest(word, known)).toBe(meant);
});
