import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type BadLine, badLine } from './bad-line.ts';
import { type House, houseIfPossible } from './house.ts';
import { Person } from './person.ts';
import { answerTo } from './seen.ts';

const BOT = '@scanward:example.org';
/** Two messages a second, as a strict homeserver has it. */
const house = await houseIfPossible({ messagesASecond: 2 });

describe.skipIf(house === null)('a homeserver that limits, loses answers and goes away', () => {
  const { server, password } = house ?? ({} as House);
  let priya: Person;
  let dan: Person;
  let line: BadLine;
  let room = '';
  let practice = '';

  beforeAll(async () => {
    if (house === null) return;
    line = await badLine(server.url);
    priya = await Person.signIn(server.url, 'priya', password);
    dan = await Person.signIn(server.url, 'dan', password);
    room = await priya.room(true, [BOT, dan.id], [BOT]);
    await dan.client.joinRoom(room);
    practice = house.practice([room]);
    line.refuseStates(3);
    await house.startBot(practice, { SCANWARD_HOMESERVER: line.url });
    await priya.untilJoined(room, BOT);
  }, 120_000);

  afterAll(async () => {
    priya?.stop();
    dan?.stop();
    line?.close();
    await house?.close();
  });

  test('a pin that the homeserver could not take is tried until it stands', async () => {
    const pinned = (): readonly string[] =>
      priya.client.getRoom(room)?.currentState.getStateEvents('m.room.pinned_events', '')?.getContent()
        .pinned ?? [];
    await priya.until(() => pinned().length > 0, 'a pin', 60_000);
    expect(line.refused()).toBe(3);
    const board = priya.seen.find(({ id }) => id === pinned()[0]);
    expect(String(board?.content.body)).toContain('As of ');
  }, 120_000);

  const ask = async (count: number): Promise<readonly string[]> => {
    const asked: string[] = [];
    for (let index = 0; index < count; index++) {
      asked.push(await (index % 2 === 0 ? priya : dan).say(room, "where's blue?"));
    }
    return asked;
  };
  const expectOnce = async (asked: readonly string[]) => {
    await priya.until(() => asked.every((id) => priya.repliesTo(id).length > 0), 'every answer', 90_000);
    const [last = ''] = await ask(1);
    await priya.until(() => priya.repliesTo(last).length > 0, 'the answer to the last', 60_000);
    expect(asked.filter((id) => priya.repliesTo(id).length !== 1)).toEqual([]);
    const order = priya.seen
      .map(({ content }) => answerTo(content))
      .filter((id) => id !== null && asked.includes(id));
    expect(order).toEqual(asked);
  };

  test('a limit of two messages a second is waited out, in order', async () => {
    await expectOnce(await ask(8));
  }, 120_000);

  test('answers that were lost on the way do not make a post come twice', async () => {
    line.lose(3);
    await expectOnce(await ask(4));
    expect(line.lost()).toBe(3);
  }, 120_000);

  test('a homeserver that is killed and comes back is waited for', async () => {
    const [first = ''] = await ask(1);
    await server.kill();
    await server.start();
    const more = await ask(2);
    await expectOnce([first, ...more]);
  }, 120_000);

  test('a key that comes late: said once what cannot be read, then read by itself', async () => {
    if (house === null) return;
    const slow = await badLine(server.url);
    const tom = await Person.signIn(slow.url, 'tom', password);
    await priya.client.invite(room, tom.id);
    await tom.client.joinRoom(room);
    const configured = () => tom.client.getCrypto()?.isEncryptionEnabledInRoom(room);
    await expect.poll(configured, { timeout: 20_000 }).toBe(true);
    slow.holdKeys();
    const notes = [await tom.say(room, 'wiped down blue'), await tom.say(room, 'wiped down blue')];
    const told = () =>
      priya.seen.filter(({ content }) => String(content.body).includes('could not read a note'));
    await priya.until(() => told().length > 0, 'what it could not read', 40_000);
    expect(notes.map((note) => priya.reactionsTo(note))).toEqual([[], []]);
    // It is not forgotten over a restart.
    await house.endBot('SIGKILL');
    await house.startBot(practice, { SCANWARD_HOMESERVER: line.url });
    await slow.releaseKeys();
    await priya.until(
      () => notes.every((note) => priya.reactionsTo(note).includes('👍')),
      'both marks',
      40_000,
    );
    expect(told()).toHaveLength(1);
    tom.stop();
    slow.close();
  }, 120_000);
});
