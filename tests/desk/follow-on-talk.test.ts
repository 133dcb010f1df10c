import { expect, test } from 'vitest';
import { Desk } from '../../core/desk/desk.ts';
import type { Turn } from '../../core/desk/turn.ts';
import { HOUR, MINUTE } from '../../core/time/instant.ts';
import { judgeFolder } from '../corpus/report.ts';
import { PLAIN } from '../days/scenes.ts';

const TOLD = [
  'used tip 5 on green',
  'calibrated green, all good',
  'can’t find tip 4',
  'used tips 1 and 2',
  'wiped green',
];
const AT = PLAIN.start + 3 * HOUR;

/** What a desk makes of words that the same person types a minute after a note. */
function after(told: string, words: string): Turn | null {
  const desk = new Desk(PLAIN.readers);
  desk.settings(PLAIN.file, PLAIN.start);
  const note = (id: string, text: string, at: number) =>
    desk.take({ sort: 'note', id, room: '!quay:example.org', from: '@tom:example.org', at, text }, at);
  note('$1', told, AT);
  return note('$2', words, AT + MINUTE);
}

test('talk in the trade’s own words a minute after a note: nothing is taken, at most 1 in 100 is asked about', () => {
  const lines = judgeFolder('talk').map(({ one }) => one.note);
  const turns = lines.map((words, n) => after(TOLD[n % TOLD.length] ?? '', words));
  const taken = lines.filter((_, n) => turns[n]?.leans !== undefined);
  const asked = lines.filter((_, n) => turns[n]?.asked?.some(({ purpose }) => purpose.sort === 'meant'));
  expect(taken).toEqual([]);
  expect(asked.length).toBeLessThanOrEqual(lines.length / 100);
  // What leans is seen here at all.
  expect(after('wiped green', 'blue too')?.leans).toBeDefined();
}, 120_000);
