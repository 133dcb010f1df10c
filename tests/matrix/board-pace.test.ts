import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Boards } from '../../bot/chat/matrix/rooms/boards.ts';
import { transportOn } from '../../bot/store/transport.ts';
import { openTransportDb } from '../../bot/store/transport-schema.ts';
import { board } from '../../core/answers/board.ts';
import { Desk } from '../../core/desk/desk.ts';
import { BASE } from '../practice/base-file.ts';

const ROOM = '!quay:example.org';
const START = Date.parse('2026-11-25T10:00:00Z');

beforeEach(() => {
  vi.useFakeTimers({ now: START });
});
afterEach(() => {
  vi.useRealTimers();
});

// Issue of the board: "edited in place, at most once in 20 s, always true".
test('a minute of a note a second edits the board three times at most, and the last word is on it', async () => {
  const transport = transportOn(openTransportDb(':memory:'));
  const db = new DatabaseSync(':memory:');
  db.exec('CREATE TABLE fact (name TEXT PRIMARY KEY, value TEXT NOT NULL)');
  const desk = new Desk();
  desk.settings(BASE, START);
  const boards = new Boards(
    db,
    transport,
    [ROOM],
    (room) => room,
    async () => null,
  );
  const sent: { key: string; at: number; says: string }[] = [];
  const deliver = () => {
    for (const { key, body } of transport.unsent()) {
      sent.push({ key, at: Date.now(), says: JSON.stringify(body) });
      transport.sent(key, `$${sent.length}`);
    }
  };
  const look = () => boards.look(Date.now, (at) => desk.view(at), deliver);
  look();
  for (let second = 1; second <= 60; second++) {
    await vi.advanceTimersByTimeAsync(1000);
    const text = `temperature in surgery 1 is ${second % 2 === 0 ? 21 : 15} degrees, moved A to ${second % 2 === 0 ? 'quay' : 'north'}`;
    desk.take(
      { sort: 'note', id: `$n${second}`, room: ROOM, from: '@rosa:example.org', at: Date.now(), text },
      Date.now(),
    );
    look();
  }
  await vi.advanceTimersByTimeAsync(20_000);
  const posts = sent.filter(({ key }) => !key.includes('/edit/') && !key.endsWith('/pin'));
  const edits = sent.filter(({ key }) => key.includes('/edit/'));
  expect(posts).toHaveLength(1);
  expect(edits.length).toBeGreaterThan(0);
  expect(edits.length).toBeLessThanOrEqual(4);
  const gaps = edits.slice(1).map(({ at }, index) => at - (edits[index]?.at ?? 0));
  expect(Math.min(...gaps)).toBeGreaterThanOrEqual(20_000);
  const last = edits.at(-1);
  expect(last?.says).toContain(JSON.stringify(board(desk.view(last?.at ?? 0), ROOM)));
});
