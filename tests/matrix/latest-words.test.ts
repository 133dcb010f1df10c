import { describe, expect, test } from 'vitest';
import { withLatestWords } from '../../bot/chat/matrix/out/latest-words.ts';
import { type Delivers, Outbox } from '../../bot/chat/matrix/out/outbox.ts';
import { transactionOf } from '../../bot/chat/matrix/out/transaction.ts';
import { toText } from '../../bot/show/text.ts';
import { transportOn } from '../../bot/store/transport.ts';
import { openTransportDb } from '../../bot/store/transport-schema.ts';
import type { Effect, Post } from '../../core/desk/effect.ts';
import { lines, type Message, struck } from '../../core/words/message.ts';

const ROOM = '!quay:example.org';
const WARNING: Post = {
  does: 'post',
  key: '7/0',
  room: ROOM,
  message: [{ line: [{ strong: 'Stop: ' }, 'tip 4'] }, { points: [['used 09:01'], ['no load since']] }],
  about: 'warning',
  items: ['tip:4'],
  mentions: ['@tom:example.org'],
  buttons: ['✅', '❌'],
};
const edit = (message: Message, post = WARNING.key) =>
  ({ does: 'edit', key: '8/0', room: ROOM, post, message }) satisfies Effect;
const takenBack = edit([{ line: [{ strong: 'Taken back' }, ' by Tom'] }, ...struck(WARNING.message)]);
const dueAgain = edit([...lines('Due again:'), ...WARNING.message]);

describe('a post that was edited before it went out', () => {
  test('says at once what it says by now; struck through, it rings nobody and asks nothing', () => {
    const said = withLatestWords(WARNING, [dueAgain, takenBack]);
    expect(said).toEqual({ ...WARNING, message: takenBack.message, mentions: [], buttons: [] });
  });

  test('that still holds rings as before', () => {
    const said = withLatestWords(WARNING, [takenBack, dueAgain]);
    expect(said).toEqual({ ...WARNING, message: dueAgain.message });
  });

  test.each([
    ['edits of another post', [edit(takenBack.message, '7/1')]],
    ['none', []],
  ])('%s: as it was', (_, unsent) => {
    expect(withLatestWords(WARNING, unsent)).toBe(WARNING);
  });

  test.each([
    ['a line alone', lines('Taken back')],
    ['a word that stands', [...lines('Done'), { points: [[{ struck: 'green' }], ['blue']] }]],
  ] satisfies [string, Message][])('%s is not struck through', (_, message) => {
    expect(withLatestWords(WARNING, [edit(message)])).toMatchObject({ mentions: WARNING.mentions });
  });
});

test('the outbox says it under the transaction of what was decided, then the edit, so that a repeat after a kill is one event', async () => {
  const transport = transportOn(openTransportDb(':memory:'));
  for (const effect of [WARNING, takenBack])
    transport.enqueue(8, [{ key: effect.key, room: ROOM, body: effect }]);
  const out: string[] = [];
  const chat: Delivers = {
    deliver: async (effect, _, cause) => {
      const words = 'message' in effect ? toText(effect.message).slice(0, 17) : '';
      out.push(`${effect.does} ${words} ${cause === undefined ? '' : transactionOf(cause)}`);
      return effect.does === 'post' ? '$1' : null;
    },
  };
  const failed = (error: unknown) => {
    throw error;
  };
  new Outbox(transport, chat, { gaveUp: () => undefined, failed }).kick();
  await expect.poll(() => transport.unsent()).toEqual([]);
  expect(out).toEqual([
    `post Taken back by Tom ${transactionOf(WARNING)}`,
    `edit Taken back by Tom ${transactionOf(takenBack)}`,
  ]);
});
