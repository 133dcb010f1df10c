import { spawn } from 'node:child_process';
import { cpSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run as health } from '../../../bot/commands/health.ts';
import { type House, houseIfPossible } from '../house.ts';
import { Person } from '../person.ts';

const BOT = '@scanward:example.org';
const ROOT = fileURLToPath(new URL('../../..', import.meta.url));
const PATIENT = { timeout: 40_000, interval: 200 };
const house = await houseIfPossible();

describe.skipIf(house === null)('a machine lost: the record comes back from the room', () => {
  const { server, password } = house ?? ({} as House);
  let priya: Person;
  let dan: Person;
  let room = '';
  let practice = '';
  let recoveryKey = '';
  let known = '';

  beforeAll(async () => {
    if (house === null) return;
    priya = await Person.signIn(server.url, 'priya', password);
    dan = await Person.signIn(server.url, 'dan', password);
    room = await priya.room(true, [BOT, dan.id], [BOT]);
    await dan.client.joinRoom(room);
    practice = house.practice([room]);
    await house.startBot(practice, {}, ['--new-recovery-key']);
    recoveryKey = /^ {2}(\w{4}(?: \w{2,4})+)$/m.exec(house.printed)?.[1] ?? '';
    await priya.untilJoined(room, BOT);
  }, 120_000);

  afterAll(async () => {
    priya?.stop();
    dan?.stop();
    await house?.close();
  });

  /** A command of the program's, as whoever runs the machine types it. */
  const command = async (...args: string[]): Promise<{ code: number | null; printed: string }> => {
    const child = spawn(process.execPath, ['bot/entry.js', ...args], {
      cwd: ROOT,
      env: {
        ...process.env,
        SCANWARD_HOMESERVER: server.url,
        SCANWARD_USER: 'scanward',
        SCANWARD_PASSWORD: password,
        SCANWARD_RECOVERY_KEY: recoveryKey,
      },
    });
    let printed = '';
    for (const stream of [child.stdout, child.stderr])
      stream.on('data', (chunk: Buffer) => {
        printed += chunk.toString('utf8');
      });
    const code = await new Promise<number | null>((resolve) => child.once('exit', resolve));
    return { code, printed };
  };
  const hashes = (printed: string) => ({
    head: /Head hash: (\w{64})/.exec(printed)?.[1],
    state: /State hash: (\w{64})/.exec(printed)?.[1],
  });
  const marked = (note: string) =>
    priya.until(() => priya.reactionsTo(note).length > 0 || priya.repliesTo(note).length > 0, 'a mark');
  const answerTo = async (text: string): Promise<string> => {
    const ask = await priya.say(room, text);
    await priya.until(() => priya.repliesTo(ask).length > 0, text);
    return String(priya.repliesTo(ask)[0]?.content.body);
  };
  /** Waits until everything that was kept is in the ledger room and a new machine could read it. */
  const mirrored = async (store: string) => {
    const reach = async () => {
      const lines: string[] = [];
      const print = (line: string) => lines.push(line);
      await health(['--store', store], { out: print, err: print });
      const found = lines.join('\n').match(/Ledger room: (\d+) of (\d+) lines, (\d+)/) ?? [];
      return found[1] === found[2] && found[2] === found[3] && found[1] !== undefined;
    };
    await expect.poll(reach, PATIENT).toBe(true);
  };
  const store = (name: string) => join(house?.folder ?? '', name);

  test('notes, a choice, a learned word, an edit and an undo are the same after it, by hash', async () => {
    if (house === null) return;
    await marked(await priya.say(room, 'tips 1 to 6 are sterile and on the shelf'));
    const edited = await dan.say(room, 'moved green to Site 0');
    await marked(edited);
    await dan.edit(room, edited, 'wiped down green');
    // A choice made by tapping.
    const unclear = await dan.say(room, 'wiped down the scanner');
    await priya.until(() => priya.repliesTo(unclear).length > 0, 'a question');
    await priya.react(room, priya.repliesTo(unclear)[0]?.id ?? '', '1\ufe0f\u20e3');
    // A word that a person explains.
    const word = await dan.say(room, 'wiped down bluey');
    await marked(word);
    const asked = priya.repliesTo(word)[0]?.id ?? '';
    if (asked !== '') await marked(await priya.reply(room, asked, '1'));
    await marked(await priya.say(room, 'used tip 4'));
    await marked(await priya.say(room, 'undo'));
    known = await answerTo("where's green?");
    await mirrored(house.store);
    await house.endBot('SIGTERM');
    const own = await command('rebuild', '--store', house.store);
    const again = await command('rebuild', '--room', '--store', store('again'));
    expect(again.printed).toContain('lines of the record came back from the room');
    expect(again.code).toBe(0);
    expect(hashes(again.printed)).toEqual(hashes(own.printed));
    expect(hashes(own.printed).state).toMatch(/^\w{64}$/);
    for (const file of ['people.jsonl', 'texts.jsonl'])
      expect(readFileSync(join(store('again'), file), 'utf8')).toBe(
        readFileSync(join(house.store, file), 'utf8'),
      );
    expect(again.printed).not.toContain(recoveryKey);
  }, 180_000);

  test('the new machine goes on, reads what was typed meanwhile, and says so', async () => {
    if (house === null) return;
    const missed = await dan.say(room, 'moved green to Site 0, cover back on green');
    cpSync(house.store, store('old'), { recursive: true });
    rmSync(house.store, { recursive: true });
    cpSync(store('again'), house.store, { recursive: true });
    await house.startBot(practice, { SCANWARD_RECOVERY_KEY: recoveryKey });
    await priya.until(
      () => priya.seen.some(({ content }) => /new machine.*One message/.test(String(content.body))),
      'that it is a new machine',
    );
    await marked(missed);
    expect(await answerTo("where's green?")).toBe(known);
    // Nothing that was said before was said again.
    const posts = priya.seen
      .filter(({ type }) => type === 'm.room.message')
      .map(({ content }) => content.body);
    expect(posts.filter((body) => /Which scanner/i.test(String(body)))).toHaveLength(1);
    await mirrored(house.store);
  }, 120_000);

  test('the machine of before stops by itself and will not start again', async () => {
    if (house === null) return;
    const before = await command('matrix', '--practice', practice, '--store', store('old'));
    expect(before.printed).toContain('another machine has taken this practice over');
    expect(before.code).toBe(77);
  }, 120_000);

  test('a name that was forgotten stays forgotten', async () => {
    if (house === null) return;
    await marked(await dan.say(room, 'wiped down blue'));
    await mirrored(house.store);
    await house.endBot('SIGTERM');
    const gone = await command('forget', '--person', dan.id, '--yes', '--store', house.store);
    expect(gone.printed).toContain('The record now calls that person');
    await house.startBot(practice, { SCANWARD_RECOVERY_KEY: recoveryKey });
    // What had the name is taken out of the ledger room; the homeserver is asked for each event.
    const emptied = async () => {
      const db = new DatabaseSync(join(house.store, 'matrix.db'), { readOnly: true });
      const rows = db
        .prepare("SELECT count(*) AS n FROM ledger_event WHERE txn LIKE 'found/%' AND kind = 'people'")
        .get();
      db.close();
      return Number(rows?.n ?? 0);
    };
    await expect.poll(emptied, PATIENT).toBeGreaterThan(0);
    await mirrored(house.store);
    await house.endBot('SIGTERM');
    const own = await command('rebuild', '--store', house.store);
    const again = await command('rebuild', '--room', '--store', store('third'));
    expect(hashes(again.printed)).toEqual(hashes(own.printed));
    for (const file of ['people.jsonl', 'texts.jsonl', 'snapshot.json'])
      expect(readFileSync(join(store('third'), file), 'utf8')).not.toContain(dan.id);
  }, 180_000);
});
