import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type House, houseIfPossible } from './house.ts';
import { Person } from './person.ts';

const house = await houseIfPossible();

/** Kills in the middle of a burst; more by the environment: SCANWARD_KILLS=50. */
const KILLS = Number(process.env.SCANWARD_KILLS ?? 3);
const NOTES_A_KILL = 12;

/** The bot gives the last 50 of a room at a sync: what is more has to be fetched by it. */
const MISSED = 80;

describe.skipIf(house === null)('nothing is missed and nothing said twice', () => {
  const { server, password } = house ?? ({} as House);
  let priya: Person;
  let dan: Person;
  let practice = '';
  const rooms: string[] = [];

  beforeAll(async () => {
    if (house === null) return;
    priya = await Person.signIn(server.url, 'priya', password);
    dan = await Person.signIn(server.url, 'dan', password);
    for (const encrypted of [true, false]) {
      const room = await priya.room(encrypted, ['@scanward:example.org', dan.id]);
      await dan.client.joinRoom(room);
      rooms.push(room);
    }
    practice = house.practice(rooms);
    await house.startBot(practice);
    await Promise.all(rooms.map((room) => priya.untilJoined(room, '@scanward:example.org')));
  }, 120_000);

  afterAll(async () => {
    priya?.stop();
    dan?.stop();
    await house?.close();
  });

  /** Every note answered once, in the order in which they stand in the room. */
  const expectAnswered = async (notes: readonly { readonly room: string; readonly id: string }[]) => {
    const open = () => notes.filter(({ id }) => priya.repliesTo(id).length === 0);
    await priya.until(
      () => open().length === 0,
      `answers to all ${notes.length}, open: ${open().length}`,
      90_000,
    );
    // What would come a second time comes before the answer to one more note.
    for (const room of rooms) {
      const last = await priya.say(room, "where's green?");
      await priya.until(() => priya.repliesTo(last).length > 0, 'the answer to the last');
    }
    expect(notes.filter(({ id }) => priya.repliesTo(id).length !== 1)).toEqual([]);
    for (const room of rooms) {
      const asked = notes.filter((note) => note.room === room).map(({ id }) => id);
      const answers = priya.seen.filter((seen) => seen.room === room).map((seen) => priya.answers(seen));
      expect(answers.filter((id) => id !== null && asked.includes(id))).toEqual(asked);
    }
  };

  test(`${KILLS} times kill -9 in the middle of a burst`, async () => {
    if (house === null) return;
    const notes: { room: string; id: string }[] = [];
    for (let kill = 0; kill < KILLS; kill++) {
      const before = notes.length;
      const typing = (async () => {
        for (let index = 0; index < NOTES_A_KILL; index++) {
          const room = rooms[index % 2] ?? '';
          notes.push({ room, id: await priya.say(room, `where's blue?`) });
        }
      })();
      // Another moment of the burst each time: between receiving, appending, sending and confirming.
      const some = 1 + ((kill * 5) % (NOTES_A_KILL - 2));
      await priya.until(
        () => notes.slice(before).filter(({ id }) => priya.repliesTo(id).length > 0).length >= some,
        `${some} answers`,
      );
      await house.endBot('SIGKILL');
      await typing;
      await house.startBot(practice);
    }
    await expectAnswered(notes);
  }, 200_000);

  test(`${MISSED} notes of a room typed while it was away`, async () => {
    if (house === null) return;
    await house.endBot('SIGTERM');
    const notes: { room: string; id: string }[] = [];
    for (let index = 0; index < MISSED; index++) {
      const room = rooms[index % 10 === 0 ? 1 : 0] ?? '';
      const person = index % 3 === 0 ? dan : priya;
      notes.push({ room, id: await person.say(room, "where's blue?") });
    }
    await house.startBot(practice);
    await expectAnswered(notes);
  }, 120_000);

  test('it was told to end and ended well; history of before its first start was never answered', async () => {
    if (house === null) return;
    const code = await house.endBot('SIGTERM');
    expect(code).toBe(0);
  });
});
