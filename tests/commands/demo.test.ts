import { beforeAll, expect, test } from 'vitest';
import { run } from '../../bot/commands/demo.ts';

const told: string[] = [];
beforeAll(() => run([], { out: (line) => told.push(line) }));

test.each([
  ['days in words', /^\n── Monday 23 November ──$/],
  ['reactions on the line of their note', /Dan: tip 2 bagged {2}👍$/],
  ['a request to calibrate', /Scanward: Calibrate white scanner/],
  ['a move with settling', /settles until 09:30/],
  ['an unsafe tip', /@Dan: Stop: tip 3 must not be used/],
  ['its answer', /Dan: no, took it straight off again {2}👍/],
  ['a failed load looked back on', /@Priya: Load 118 .* failed.* 1 scan concerned/],
  ['the scan concerned', /• Tue 13:02, blue scanner, Mill Lane: tip 2/],
  ['a brief', /Scanward: Mill Lane today/],
  ['which tips are out', /Scanward: 3 tips out at Mill Lane/],
  ['what was answered with no, and what was closed, are not open', /Incidents: 2, none open/],
])('the week shows %s', (_, shown) => {
  expect(told.filter((line) => shown.test(line))).not.toEqual([]);
});

test('nothing in it went unread, and nothing is struck with signs', () => {
  expect(told.filter((line) => /~|Taken as|No incident is open/.test(line))).toEqual([]);
});
