import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import { Boards } from '../../bot/chat/matrix/rooms/boards.ts';
import { transportOn } from '../../bot/store/transport.ts';
import { openTransportDb } from '../../bot/store/transport-schema.ts';
import { Desk } from '../../core/desk/desk.ts';
import type { Effect } from '../../core/desk/effect.ts';
import { BASE } from '../practice/base-file.ts';

const ROOM = '!quay:example.org';
const START = Date.parse('2026-11-25T10:00:00Z');
const MINUTE = 60_000;

/** One chat room with a board, and devices that come into it; what is to be sent is sent at once. */
function wall() {
  const transport = transportOn(openTransportDb(':memory:'));
  const db = new DatabaseSync(':memory:');
  db.exec('CREATE TABLE fact (name TEXT PRIMARY KEY, value TEXT NOT NULL)');
  const desk = new Desk();
  desk.settings(BASE, START - MINUTE);
  let devices: ReadonlySet<string> = new Set(['@rosa:example.org PHONE']);
  const begin = () =>
    new Boards(
      db,
      transport,
      [ROOM],
      (room) => room,
      async () => devices,
    );
  let boards = begin();
  return {
    come: (...who: string[]) => {
      devices = new Set([...devices, ...who]);
    },
    restart: () => {
      boards = begin();
    },
    /** What a look brings, as "does key", one a line. */
    look: async (minute: number): Promise<readonly string[]> => {
      const at = START + minute * MINUTE;
      boards.look(
        () => at,
        (now) => desk.view(now),
        () => undefined,
      );
      await new Promise((resolve) => setImmediate(resolve));
      const effects = transport.unsent().map(({ body }) => body as Effect);
      for (const { key, does } of effects) transport.sent(key, does === 'post' ? `$${key}` : null);
      return effects.map(({ does, key }) => `${does} ${key.replace(`board/${ROOM}/`, '')}`);
    },
  };
}

test('given devices that were there at its posting, then the board stays where it is', async () => {
  const { look } = wall();
  expect(await look(0)).toEqual(['post 1', 'pin 1/pin']);
  expect([await look(1), await look(2)].flat()).toEqual([]);
});

test('given a device that came later, then it stands anew, pinned in the old one’s place, which is taken away', async () => {
  const { look, come } = wall();
  await look(0);
  await look(1);
  come('@tom:example.org PHONE');
  expect(await look(2)).toEqual(['post 2', 'pin 2/pin', 'redact 1/gone']);
  expect([await look(3), await look(4)].flat()).toEqual([]);
});

test('given more devices within the hour, then it stands anew once when the hour is over, a restart between or not', async () => {
  const { look, come, restart } = wall();
  await look(0);
  await look(1);
  come('@tom:example.org PHONE');
  await look(2);
  await look(3);
  come('@tom:example.org TABLET');
  restart();
  expect(
    [await look(4), await look(10), await look(15)].flat().filter((one) => !one.startsWith('edit')),
  ).toEqual([]);
  come('@ana:example.org PHONE');
  const later = [await look(61), await look(62), await look(63)]
    .flat()
    .filter((one) => !one.startsWith('edit'));
  expect(later).toEqual(['post 3', 'pin 3/pin', 'redact 2/gone']);
});
