import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type House, houseIfPossible } from './house.ts';
import { openFile } from './open-file.ts';
import { Person } from './person.ts';
import { buttonOf, mentionsOf, relationOf, type Seen } from './seen.ts';

/** Polling of a real server on a busy machine. */
const PATIENT = { timeout: 20_000, interval: 100 };

const house = await houseIfPossible();

describe.skipIf(house === null)('notes in real chat rooms', () => {
  const { server, password } = house ?? ({} as House);
  let priya: Person;
  let dan: Person;
  const rooms = { encrypted: '', plain: '' };

  beforeAll(async () => {
    if (house === null) return;
    priya = await Person.signIn(server.url, 'priya', password);
    dan = await Person.signIn(server.url, 'dan', password);
    for (const [name, encrypted] of [
      ['encrypted', true],
      ['plain', false],
    ] as const) {
      rooms[name] = await priya.room(encrypted, ['@scanward:example.org', dan.id]);
      await dan.client.joinRoom(rooms[name]);
    }
    const practice = house.practice([rooms.encrypted, rooms.plain]);
    await house.startBot(practice);
    for (const room of Object.values(rooms)) await priya.untilJoined(room, '@scanward:example.org');
  }, 120_000);

  afterAll(async () => {
    priya?.stop();
    dan?.stop();
    await house?.close();
  });

  test.each(['encrypted', 'plain'] as const)(
    'a note gets its mark and a question its answer, %s',
    async (kind) => {
      const room = rooms[kind];
      const note = await priya.say(room, 'wiped down blue');
      await priya.until(() => priya.reactionsTo(note).includes('👍'), 'a mark');
      const ask = await dan.say(room, "where's blue?");
      const [answer] = await priya.until(
        () => priya.repliesTo(ask).length > 0 && priya.repliesTo(ask),
        'an answer',
      );
      expect(answer?.content.msgtype).toBe('m.notice');
      expect(answer?.content['m.mentions']).toEqual({});
      expect(String(answer?.content.body)).toMatch(/blue/i);
      expect(answer?.encrypted).toBe(kind === 'encrypted');
    },
  );

  const answerTo = async (room: string, text: string): Promise<string> => {
    const ask = await priya.say(room, text);
    await priya.until(() => priya.repliesTo(ask).length > 0, text);
    return String(priya.repliesTo(ask)[0]?.content.body);
  };
  const whereIs = (room: string, scanner: string) => answerTo(room, `where's ${scanner}?`);
  const marked = async (note: string) => priya.until(() => priya.reactionsTo(note).includes('👍'), 'a mark');

  test.each(['encrypted', 'plain'] as const)('edits and deletions correct the record, %s', async (kind) => {
    const room = rooms[kind];
    const note = await priya.say(room, 'moved green to Site 0');
    await marked(note);
    await priya.edit(room, note, 'moved green to Site 1');
    await expect.poll(() => whereIs(room, 'green'), PATIENT).toContain('Site 1');
    const second = await priya.edit(room, note, 'moved blue to Site 1');
    await expect.poll(() => whereIs(room, 'green'), PATIENT).toContain('Site 0');
    expect(await whereIs(room, 'blue')).toContain('Site 1');
    // Deleting the newest edit brings the one before back (standards: Redactions of edited events).
    await priya.client.redactEvent(room, second);
    await expect.poll(() => whereIs(room, 'green'), PATIENT).toContain('Site 1');
    await priya.client.redactEvent(room, note);
    await expect.poll(() => whereIs(room, 'green'), PATIENT).toContain('Site 0');
  });

  test("an edit of somebody else's note is ignored", async () => {
    const room = rooms.encrypted;
    const note = await priya.say(room, 'moved green to Site 1');
    await marked(note);
    await dan.edit(room, note, 'moved green to Site 0');
    // Dan's next note is answered, so the forged edit was read before it.
    const after = await dan.say(room, 'wiped down blue');
    await marked(after);
    expect(await whereIs(room, 'green')).toContain('Site 1');
  });

  test('machines, quotes and pictures without words are not read; captions are', async () => {
    const room = rooms.plain;
    const notice = await dan.say(room, 'moved green to Site 0', { msgtype: 'm.notice' });
    const quoted = await dan.say(room, '> <@priya:example.org> moved green to Site 0\n\nwiped down blue');
    await marked(quoted);
    expect(priya.reactionsTo(notice)).toEqual([]);
    expect(await whereIs(room, 'green')).toContain('Site 1');
    const picture = { msgtype: 'm.image', url: 'mxc://example.org/none', filename: 'IMG_1.jpg' };
    const caption = await dan.say(room, 'moved green to Site 0', picture);
    await marked(caption);
    expect(await whereIs(room, 'green')).toContain('Site 0');
  });

  test.each([
    ['encrypted', 'wiped down the scanner', 'when was green last wiped?', /wiped down \d/i],
    ['plain', 'cover back on the scanner', "what's happened with the green scanner?", /cover/i],
  ] as const)('a question offers its choices as reactions to tap, %s', async (kind, text, ask, done) => {
    const room = rooms[kind];
    const note = await priya.say(room, text);
    await priya.until(() => priya.repliesTo(note).length > 0, 'a question');
    const question = priya.repliesTo(note)[0]?.id ?? '';
    await priya.until(() => priya.reactionsTo(question).length === 2, 'two buttons');
    expect(priya.reactionsTo(question).map((key) => key.replaceAll('\ufe0f', ''))).toEqual([
      '1\u20e3',
      '2\u20e3',
    ]);
    expect(await answerTo(room, ask)).not.toMatch(done);
    // Which number it has depends on who spoke of what last.
    await priya.react(room, question, buttonOf(priya.repliesTo(note)[0]?.content ?? {}, 'green scanner'));
    await expect.poll(() => answerTo(room, ask), PATIENT).toMatch(done);
  });

  test.each(['encrypted', 'plain'] as const)(
    'what is asked in a thread is answered there, %s',
    async (kind) => {
      const room = rooms[kind];
      const root = await dan.say(room, 'wiped down blue');
      await marked(root);
      const ask = await dan.say(room, "where's blue?", {
        'm.relates_to': {
          rel_type: 'm.thread',
          event_id: root,
          is_falling_back: true,
          'm.in_reply_to': { event_id: root },
        },
      });
      await priya.until(() => priya.repliesTo(ask).length > 0, 'an answer');
      const content = priya.repliesTo(ask)[0]?.content ?? {};
      expect(relationOf(content)).toMatchObject({ rel_type: 'm.thread', event_id: root });
      expect(String(content.body)).toMatch(/blue/i);
    },
  );

  test('a typed number in reply does the same', async () => {
    const note = await priya.say(rooms.plain, 'wiped down the scanner');
    await priya.until(() => priya.repliesTo(note).length > 0, 'a question');
    const typed = await priya.reply(rooms.plain, priya.repliesTo(note)[0]?.id ?? '', '1');
    await priya.until(() => priya.reactionsTo(note).length + priya.reactionsTo(typed).length > 0, 'a mark');
  });

  test.each(['encrypted', 'plain'] as const)(
    'a record comes as a file that can be opened, %s',
    async (kind) => {
      const room = rooms[kind];
      await priya.say(room, 'log for this week please');
      const isFile = (one: Seen) => one.room === room && one.content.msgtype === 'm.file';
      await priya.until(() => priya.seen.some(isFile), 'a file');
      const content = priya.seen.find(isFile)?.content ?? {};
      expect('url' in content).toBe(kind === 'plain');
      expect(await openFile(priya.client, content)).toContain('wiped');
    },
  );

  test('what must ring goes as a text that mentions, what need not as a notice', async () => {
    const room = rooms.encrypted;
    await marked(await priya.say(room, 'tips 1 to 6 are sterile and on the shelf'));
    await marked(await dan.say(room, 'used tip 4'));
    const note = await dan.say(room, 'tip 4 on green');
    await priya.until(() => priya.repliesTo(note).length > 0, 'a warning');
    const slip = await dan.say(room, 'wiped down blue after patient John Smith, dob 12/03/1984');
    await priya.until(() => priya.repliesTo(slip).length > 0, 'a request to take it out');
    expect(mentionsOf(priya.repliesTo(slip)[0]?.content ?? {})).toEqual([dan.id]);
    const mentioned = priya.seen.filter(({ content }) => mentionsOf(content).length > 0);
    for (const { content } of mentioned) expect(content.msgtype).toBe('m.text');
    const others = priya.seen.filter(
      ({ type, content }) => type === 'm.room.message' && mentionsOf(content).length === 0,
    );
    for (const { content } of others) expect(content.msgtype).toMatch(/^m\.(notice|file)$/);
    for (const { content } of [...mentioned, ...others]) expect(content).toHaveProperty(['m.mentions']);
  });

  test('nothing of the encrypted room went out in clear but reactions', () => {
    const inClear = priya.seen.filter(({ room, encrypted }) => room === rooms.encrypted && !encrypted);
    expect(
      new Set(
        inClear
          .map(({ type }) => type)
          .filter((type) => type.startsWith('m.reaction') || type === 'm.room.message'),
      ),
    ).toEqual(new Set(['m.reaction']));
  });
});
