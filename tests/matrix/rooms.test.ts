import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run as health } from '../../bot/commands/health.ts';
import { type House, houseIfPossible } from './house.ts';
import { Person } from './person.ts';
import { answerTo, type Seen } from './seen.ts';

const BOT = '@scanward:example.org';
const house = await houseIfPossible();

describe.skipIf(house === null)('which rooms it goes into', () => {
  const { server, password } = house ?? ({} as House);
  let priya: Person;
  let tom: Person;
  let room = '';
  let other = '';

  beforeAll(async () => {
    if (house === null) return;
    priya = await Person.signIn(server.url, 'priya', password);
    tom = await Person.signIn(server.url, 'tom', password);
    room = await priya.room(true, [BOT, tom.id], [BOT]);
    other = await priya.room(false, [BOT]);
    await tom.client.joinRoom(room);
    await priya.say(room, "where's blue?");
    await house.startBot(house.practice([room, other]));
    await priya.untilJoined(room, BOT);
    await priya.untilJoined(other, BOT);
  }, 120_000);

  afterAll(async () => {
    priya?.stop();
    tom?.stop();
    await house?.close();
  });

  const membership = (who: Person, of: string) => who.client.getRoom(of)?.getMember(BOT)?.membership;

  test('what was said before it came is history and is not answered', async () => {
    const ask = await priya.say(room, "where's green?");
    await priya.until(() => priya.repliesTo(ask).length > 0, 'an answer');
    expect(priya.seen.filter(({ content }) => answerTo(content) !== null)).toHaveLength(1);
  });

  test('one pinned board shows how things stand and is edited in place', async () => {
    const isBoard = (seen: Seen) => seen.room === room && String(seen.content.body).includes('As of ');
    await priya.until(() => priya.seen.some((seen) => isBoard(seen)), 'a board');
    const first = priya.seen.find(isBoard)?.id ?? '';
    const pins = () => priya.client.getRoom(room)?.currentState.getStateEvents('m.room.pinned_events', '');
    await priya.until(() => pins()?.getContent().pinned?.includes(first), 'the board pinned');
    const note = await priya.say(room, 'calibrated green, all good');
    await priya.until(() => priya.reactionsTo(note).length > 0, 'a mark');
    await priya.until(
      () => priya.editsOf(first).some(({ content }) => /green.*calibrated \d/.test(String(content.body))),
      'the board put right',
      40_000,
    );
    expect(priya.seen.filter((seen) => isBoard(seen) && !('m.new_content' in seen.content))).toHaveLength(1);
    // In the other room it may not pin, and says once what it needs.
    const asks = priya.seen.filter(
      (seen) => seen.room === other && String(seen.content.body).includes('may not pin'),
    );
    expect(asks).toHaveLength(1);
  }, 60_000);

  test('a phone that signs in later can read the pinned board: it stands anew, and the old one is gone', async () => {
    if (house === null) return;
    // Who could read the board when it was posted is known at the look after.
    const readers = () => house.fact(`board/${room}`).includes('"readers":');
    await priya.until(readers, 'who can read it', 60_000);
    const old = priya.seen.find((seen) => seen.room === room && String(seen.content.body).includes('As of '));
    const later = await Person.signIn(server.url, 'tom', house.password);
    const pinned = (): readonly string[] =>
      later.client.getRoom(room)?.currentState.getStateEvents('m.room.pinned_events', '')?.getContent()
        .pinned ?? [];
    await later.until(() => pinned().length > 0 && !pinned().includes(old?.id ?? ''), 'another pin', 60_000);
    expect(pinned()).toHaveLength(1);
    const shown = () => later.seen.find(({ id }) => id === pinned()[0]);
    await later.until(() => String(shown()?.content.body).includes('As of '), 'the board in words');
    const oldOne = () => later.client.getRoom(room)?.findEventById(old?.id ?? '');
    await later.until(() => oldOne()?.isRedacted(), 'the old one taken away');
    later.stop();
  }, 120_000);

  test('health says from outside, while it runs, that it hears and what wants a person', async () => {
    if (house === null) return;
    const lines: string[] = [];
    const print = (line: string) => lines.push(line);
    const code = await health(['--store', house.store], { out: print, err: print });
    expect(
      lines.filter((line) => /last heard the homeserver 20/i.test(line) && line.startsWith('well')),
    ).toHaveLength(1);
    expect(lines.find((line) => line.includes('clock is'))).toMatch(/^well/);
    expect(lines.find((line) => line.includes('head'))).toMatch(/[0-9a-f]{64}/);
    // Nobody has made a recovery key here: that is what wants a person.
    expect(lines.find((line) => line.includes('backed up'))).toMatch(/^LOOK/);
    expect(code).toBe(1);
    expect(existsSync(join(house.store, 'heartbeat'))).toBe(true);
    expect(lines.join()).not.toContain(house.session().token);
  });

  test('somebody whom the practice file does not name is refused', async () => {
    const strange = await tom.room(false, [BOT]);
    await tom.until(() => membership(tom, strange) === 'leave', 'a refusal');
  });

  test('a room that the practice file does not list gets one polite line and is left', async () => {
    const unknown = await priya.room(true, [BOT]);
    await priya.until(() => membership(priya, unknown) === 'leave', 'leaving');
    await priya.until(
      () => priya.seen.some((seen) => seen.room === unknown && seen.type === 'm.room.message'),
      'a line',
    );
    const said = priya.seen.filter((seen) => seen.room === unknown && seen.type === 'm.room.message');
    expect(said).toHaveLength(1);
    expect(said[0]?.encrypted).toBe(true);
    expect(String(said[0]?.content.body)).toContain(unknown);
  });

  test('a room from which it was removed holds back no other', async () => {
    await priya.client.kick(other, BOT);
    await priya.until(() => membership(priya, other) === 'leave', 'the removal');
    const ask = await priya.say(room, "where's green?");
    await priya.until(() => priya.repliesTo(ask).length > 0, 'an answer');
  });

  test('an upgraded room is followed, and the record goes on', async () => {
    const note = await priya.say(room, 'moved green to Site 1');
    await priya.until(() => priya.reactionsTo(note).length > 0, 'a mark');
    const { replacement_room: next } = await priya.client.upgradeRoom(room, '11');
    await priya.client.invite(next, BOT);
    await priya.until(() => membership(priya, next) === 'join', 'following');
    const ask = await priya.say(next, "where's green?");
    await priya.until(() => priya.repliesTo(ask).length > 0, 'an answer in the new room');
    expect(String(priya.repliesTo(ask)[0]?.content.body)).toContain('Site 1');
    expect(priya.repliesTo(ask)[0]?.encrypted).toBe(true);
  });
});
