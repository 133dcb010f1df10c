import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { answerTo, marked, replied } from './answered.ts';
import { type House, houseIfPossible } from './house.ts';
import { Person } from './person.ts';
import { buttonOf } from './seen.ts';

const BOT = '@scanward:example.org';
const house = await houseIfPossible();

describe.skipIf(house === null)('who may do what, and where', () => {
  const { server, password } = house ?? ({} as House);
  let priya: Person;
  let dan: Person;
  let tom: Person;
  const rooms = { encrypted: '', plain: '' };
  let practice = '';

  beforeAll(async () => {
    if (house === null) return;
    priya = await Person.signIn(server.url, 'priya', password);
    dan = await Person.signIn(server.url, 'dan', password);
    tom = await Person.signIn(server.url, 'tom', password);
    // Tom is named by nobody: he may ask the program in because of his homeserver.
    rooms.encrypted = await tom.room(true, [BOT, priya.id, dan.id]);
    rooms.plain = await priya.room(false, [BOT, dan.id]);
    practice = house.practice([rooms.encrypted, rooms.plain], 'servers: [example.org]\n');
    await priya.client.joinRoom(rooms.encrypted);
    for (const room of Object.values(rooms)) await dan.client.joinRoom(room);
    await house.startBot(practice);
  }, 120_000);

  afterAll(async () => {
    for (const person of [priya, dan, tom]) person?.stop();
    await house?.close();
  });

  test('the people of a homeserver that the practice file names may ask it in', async () => {
    await tom.untilJoined(rooms.encrypted, BOT);
    await priya.untilJoined(rooms.plain, BOT);
  });

  describe('what loosens takes a typed word from a device that its owner has signed', () => {
    test('the lead on a device that is not signed is told how; nothing is released', async () => {
      const { encrypted: room } = rooms;
      await marked(dan, await dan.say(room, "don't use tip 4"));
      const said = await answerTo(priya, room, 'tip 4 is fine to use again');
      expect(said).toMatch(/Tip 4 is not released.*not verified/s);
      expect(await answerTo(dan, room, 'can I use tip 4?')).toMatch(/held|don't use|not/i);
    });

    test('a reaction releases nothing, nor does deleting the note that held it', async () => {
      const { encrypted: room } = rooms;
      const held = await dan.say(room, "don't use tip 5");
      await marked(dan, held);
      await dan.react(room, held, '✅');
      await dan.client.redactEvent(room, held);
      await dan.until(
        () => dan.seen.some(({ content }) => /Not changed yet.*tip 5 free/s.test(String(content.body))),
        'a question to the lead',
      );
      const asked = dan.seen.find(({ content }) => /Not changed yet/.test(String(content.body)))?.id ?? '';
      await priya.react(room, asked, '✅');
      await priya.until(
        () => priya.seen.some(({ content }) => /Please type that one/.test(String(content.body))),
        'that it has to be typed',
      );
    });

    test('the same word from the same device once its owner has signed it', async () => {
      const { encrypted: room } = rooms;
      await priya.client.getCrypto()?.bootstrapCrossSigning({
        authUploadDeviceSigningKeys: (upload) => upload(null).then(() => undefined),
      });
      await marked(priya, await priya.say(room, 'tip 4 is fine to use again'));
    });

    test('in a plain room the homeserver’s word is all there is: it is taken', async () => {
      const { plain: room } = rooms;
      await marked(dan, await dan.say(room, "don't use tip 6"));
      await marked(dan, await dan.say(room, 'tip 6 is fine to use again'));
    });

    test('retiring only tightens: anyone may, and no tick or taking back of others undoes it', async () => {
      const { encrypted: room } = rooms;
      const note = await dan.say(room, 'binned tip 9, cracked mirror');
      await marked(dan, note);
      await dan.react(room, note, '✅');
      expect(await answerTo(dan, room, 'can I use tip 9?')).toMatch(/^No\b.*retired/is);
      expect(await answerTo(dan, room, 'tip 9 is fine to use again')).toMatch(/^Nothing to release/);
      expect(await answerTo(dan, room, 'can I use tip 9?')).toMatch(/^No\b.*retired/is);
    });

    test('the record of many days goes to seniors', async () => {
      const { plain: room } = rooms;
      expect(await answerTo(dan, room, 'log for this week please')).toContain('Priya (lead)');
      await priya.say(room, 'log for this week please');
      await priya.until(() => priya.seen.some(({ content }) => content.msgtype === 'm.file'), 'a file');
    });
  });

  test('✅ and ⏰ stand under a reminder and do what they say', async () => {
    const { encrypted: room } = rooms;
    const isWipe = (name: string) => (seen: { readonly content: object; readonly room: string }) =>
      seen.room === room &&
      new RegExp(`${name}[^]*wipe|wipe[^]*${name}`, 'i').test(JSON.stringify(seen.content));
    await marked(dan, await dan.say(room, 'scan done on blue 15 min ago'));
    const post = await dan.until(() => dan.seen.find(isWipe('blue')), 'a reminder to wipe blue');
    const buttons = () => dan.reactionsTo(post.id).map((key) => key.replaceAll('\ufe0f', ''));
    await dan.until(() => buttons().length === 2, 'two buttons');
    expect(buttons()).toEqual(['✅', '⏰']);
    await dan.react(room, post.id, '⏰');
    await dan.react(room, post.id, '✅');
    await dan.until(
      () => dan.editsOf(post.id).some(({ content }) => /Done by Dan/.test(String(content.body))),
      'the reminder struck',
    );
    expect(await answerTo(dan, room, 'when was blue last wiped?')).toContain('Dan');
  });

  test('a tapped choice shows what was taken', async () => {
    const { encrypted: room } = rooms;
    const note = await dan.say(room, 'wiped down the scanner');
    await replied(dan, note);
    const question = dan.repliesTo(note)[0]?.id ?? '';
    await dan.react(room, question, buttonOf(dan.repliesTo(note)[0]?.content ?? {}, 'green scanner'));
    await dan.until(
      () =>
        dan
          .editsOf(question)
          .some(({ content }) => /Taken: green scanner, by Dan/.test(String(content.body))),
      'what was taken',
    );
  });
});
