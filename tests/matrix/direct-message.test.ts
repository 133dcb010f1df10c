import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { answerTo, marked, replied } from './answered.ts';
import { type House, houseIfPossible } from './house.ts';
import { Person } from './person.ts';

const BOT = '@scanward:example.org';
const PATIENT = { timeout: 20_000, interval: 100 };
const house = await houseIfPossible();

describe.skipIf(house === null)('in a direct message', () => {
  const { server, password } = house ?? ({} as House);
  let dan: Person;
  let tom: Person;
  let room = '';
  let practice = '';
  let direct = '';

  beforeAll(async () => {
    if (house === null) return;
    dan = await Person.signIn(server.url, 'dan', password);
    tom = await Person.signIn(server.url, 'tom', password);
    room = await dan.room(false, [BOT]);
    practice = house.practice([room, '!another:example.org'], 'servers: [example.org]\n');
    await house.startBot(practice);
    await dan.untilJoined(room, BOT);
  }, 120_000);

  afterAll(async () => {
    for (const person of [dan, tom]) person?.stop();
    await house?.close();
  });

  test.each(['encrypted', 'plain'])(
    'a person may ask; what is told is not kept, and that is said, %s',
    async (kind) => {
      const { room_id } = await dan.client.createRoom({
        invite: [BOT],
        is_direct: true,
        preset: 'trusted_private_chat' as never,
        initial_state:
          kind === 'plain'
            ? []
            : [
                {
                  type: 'm.room.encryption',
                  state_key: '',
                  content: { algorithm: 'm.megolm.v1.aes-sha2' },
                },
              ],
      });
      direct = room_id;
      await dan.untilJoined(direct, BOT);
      const answer = await answerTo(dan, direct, "where's green?");
      expect(answer).toContain('Site 0');
      expect(await answerTo(dan, direct, 'moved green to Site 1')).toMatch(/^Not recorded/);
      expect(await answerTo(dan, direct, "where's green?")).toBe(answer);
      // Nor by editing a question into a note.
      const ask = await dan.say(direct, "where's blue?");
      await replied(dan, ask);
      await dan.edit(direct, ask, 'moved green to Site 1');
      await dan.until(
        () => dan.repliesTo(ask).some(({ content }) => /^Not recorded/.test(String(content.body))),
        'that it was not recorded',
      );
      expect(await answerTo(dan, direct, "where's green?")).toBe(answer);
    },
  );

  test('the lead asks there how the program does; to staff it says nothing of that', async () => {
    const priya = await Person.signIn(server.url, 'priya', password);
    const { room_id: hers } = await priya.client.createRoom({ invite: [BOT], is_direct: true });
    await priya.untilJoined(hers, BOT);
    const health = await answerTo(priya, hers, 'health');
    expect(health).toMatch(/^One thing wants a look · Scanward \d/);
    expect(health).toMatch(/Last heard the homeserver \d\d:\d\d/);
    priya.stop();
    const his = await dan.say(direct, 'health');
    await answerTo(dan, direct, "where's green?");
    expect(dan.repliesTo(his)).toEqual([]);
  });

  test('it is known after a restart, and left once somebody else is there', async () => {
    if (house === null) return;
    await house.endBot('SIGKILL');
    await house.startBot(practice);
    expect(await answerTo(dan, direct, "where's green?")).toContain('Site 0');
    await dan.client.invite(direct, tom.id);
    await tom.client.joinRoom(direct);
    await dan.say(direct, 'hello Tom');
    const member = () => dan.client.getRoom(direct)?.getMember(BOT)?.membership;
    await dan.until(() => member() === 'leave', 'leaving');
  });

  test('notes are taken there where the practice file says so', async () => {
    if (house === null) return;
    await house.endBot('SIGTERM');
    await house.startBot(house.practice([room, '!another:example.org'], 'rules: {privateNotes: true}\n'));
    const { room_id } = await dan.client.createRoom({ invite: [BOT], is_direct: true });
    await dan.untilJoined(room_id, BOT);
    await marked(dan, await dan.say(room_id, 'moved green to Site 1'));
    await expect.poll(() => answerTo(dan, room, "where's green?"), PATIENT).toContain('Site 1');
  });
});
