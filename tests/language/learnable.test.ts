import { expect, test } from 'vitest';
import { canLearn } from '../../core/language/learnable.ts';
import { parsePractice } from '../../core/practice/parse.ts';
import { PRACTICE } from '../rehearse/play.ts';

function practice() {
  const parsed = parsePractice(PRACTICE);
  if ('mistakes' in parsed) throw new Error(JSON.stringify(parsed.mistakes));
  return parsed.practice;
}

test.each(['the gun', 'big bertha', 'Fiona’s room', 'the annexe', 'wee man'])(
  '“%s” can be learned',
  (words) => {
    expect(canLearn(practice(), words)).toBe(true);
  },
);

test.each([
  ['blue', 'a scanner'],
  ['the green', 'a scanner'],
  ['North Clinic', 'a site'],
  ['room 1', 'a room'],
  ['Rosa', 'a person'],
  ['decon', 'a room'],
  ['tip', 'a word of the trade'],
  ['the autoclave', 'a word of the trade'],
  ['calibrated', 'a word of the trade'],
  ['yes', 'an answer'],
  ['44', 'like an id'],
  ['T4', 'like an id'],
  ['d', 'like an id'],
  ['room 9', 'like a room by number'],
  ['scanner Z', 'like a scanner by letter'],
  ['😀', 'no word'],
])('“%s” is never learned: %s', (words) => {
  expect(canLearn(practice(), words)).toBe(false);
});
