import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type BadLine, badLine } from './bad-line.ts';
import { type House, houseIfPossible } from './house.ts';
import { Person } from './person.ts';
import { mentionsOf } from './seen.ts';

const BOT = '@scanward:example.org';
const QUARTER_HOUR = 15 * 60_000;
const house = await houseIfPossible();

describe.skipIf(house === null)('back after a quarter of an hour', () => {
  const { server, password } = house ?? ({} as House);
  let priya: Person;
  let line: BadLine;
  let practice = '';
  const rooms: string[] = [];

  beforeAll(async () => {
    if (house === null) return;
    line = await badLine(server.url);
    priya = await Person.signIn(server.url, 'priya', password);
    for (const encrypted of [true, false]) rooms.push(await priya.room(encrypted, [BOT]));
    practice = house.practice(rooms);
    await house.startBot(practice, { SCANWARD_HOMESERVER: line.url });
    for (const room of rooms) await priya.untilJoined(room, BOT);
    for (const text of ['tips 1 to 6 are sterile and on the shelf', 'used tips 3 and 4']) {
      const note = await priya.say(rooms[0] ?? '', text);
      await priya.until(() => priya.reactionsTo(note).length > 0, 'a mark');
    }
    await house.endBot('SIGTERM');
  }, 120_000);

  afterAll(async () => {
    priya?.stop();
    line?.close();
    await house?.close();
  });

  test('missed notes are recorded, and one post a chat room sums them and the missed questions up', async () => {
    if (house === null) return;
    const [encrypted = ''] = rooms;
    const asks: string[] = [];
    const unsafe = await priya.say(encrypted, 'tip 4 on green');
    const slip = await priya.say(encrypted, 'tip 3 on blue');
    await priya.say(encrypted, 'sorry, tip 5 not 3');
    for (const room of rooms) {
      await priya.say(room, 'moved green to Site 1');
      await priya.say(room, 'wiped down blue');
      asks.push(await priya.say(room, "where's blue?"), await priya.say(room, "where's green?"));
    }
    line.age(QUARTER_HOUR);
    await house.startBot(practice, { SCANWARD_HOMESERVER: line.url });
    const summaries = (room: string) =>
      priya.seen.filter(
        ({ room: where, content }) => where === room && /I was away/.test(String(content.body)),
      );
    await priya.until(() => rooms.every((room) => summaries(room).length > 0), 'a summary in each room');
    line.age(0);
    for (const [index, room] of rooms.entries()) {
      // What would come a second time comes before the answer to one more question.
      const ask = await priya.say(room, "where's green?");
      await priya.until(() => priya.repliesTo(ask).length > 0, 'an answer');
      expect(String(priya.repliesTo(ask)[0]?.content.body)).toContain('Site 1');
      expect(summaries(room)).toHaveLength(1);
      const body = String(summaries(room)[0]?.content.body);
      expect(body).toMatch(/moved|Site 1/);
      expect(body).toMatch(/wiped/i);
      expect(body).toMatch(/Not answered:.*Priya.*Priya/s);
      for (const old of asks.slice(index * 2, index * 2 + 2)) expect(priya.repliesTo(old)).toEqual([]);
    }
    // What is unsafe still is: it is said at once, to who typed it, however long ago that was.
    expect(String(priya.repliesTo(unsafe)[0]?.content.body)).toMatch(/Stop.*tip 4/is);
    expect(mentionsOf(priya.repliesTo(unsafe)[0]?.content ?? {})).toEqual([priya.id]);
    // What was put right before anybody could be warned rings nobody.
    const [taken] = priya.repliesTo(slip);
    expect(String(taken?.content.body)).toMatch(/^Taken back by Priya/);
    expect(mentionsOf(taken?.content ?? {})).toEqual([]);
  }, 90_000);

  test('a homeserver whose clock runs five minutes ahead: notes count from now, questions are answered', async () => {
    line.age(-5 * 60_000);
    const [room = ''] = rooms;
    const note = await priya.say(room, 'wiped down blue');
    const minutes = [clockAt(Date.now()), clockAt(Date.now() + 60_000)];
    await priya.until(() => priya.reactionsTo(note).length > 0, 'a mark');
    const ask = await priya.say(room, 'when was blue last wiped?');
    await priya.until(() => priya.repliesTo(ask).length > 0, 'an answer');
    line.age(0);
    const [, time] = /(\d\d:\d\d)/.exec(String(priya.repliesTo(ask)[0]?.content.body)) ?? [];
    expect(minutes).toContain(time);
  }, 60_000);
});

/** The practice's wall clock, HH:MM. */
function clockAt(at: number): string {
  return new Date(at).toLocaleTimeString('en-GB', {
    timeZone: 'Europe/London',
    hour: '2-digit',
    minute: '2-digit',
  });
}
