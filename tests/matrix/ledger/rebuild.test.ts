import { spawn } from 'node:child_process';
import { cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { factOf } from '../../../bot/chat/matrix/matrix-db.ts';
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

  beforeAll(async () => {
    if (house === null) return;
    priya = await Person.signIn(server.url, 'priya', password);
    dan = await Person.signIn(server.url, 'dan', password);
    room = await priya.room(true, [BOT, dan.id], [BOT]);
    await dan.client.joinRoom(room);
    practice = house.practice([room]);
    await house.startBot(practice, {}, ['--new-recovery-key']);
    recoveryKey = house.recoveryKey;
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
  const replied = async (note: string) => {
    const [first] = await priya.until(
      () => priya.repliesTo(note).length > 0 && priya.repliesTo(note),
      'a reply',
    );
    if (first === undefined) throw new Error('no reply');
    return first;
  };
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
  /** Events of the ledger room, as the folder has them. */
  const ledgerEvents = (wanted: (row: Record<string, unknown>) => boolean): readonly string[] => {
    const db = new DatabaseSync(join(house?.store ?? '', 'matrix.db'), { readOnly: true });
    const rows = db.prepare('SELECT kind, event FROM ledger_event').all();
    db.close();
    return rows.filter(wanted).map(({ event }) => String(event));
  };
  /** Asks the homeserver, as the bot's account, about the ledger room. */
  const ask = async (path: string): Promise<Record<string, unknown>> => {
    const db = new DatabaseSync(join(house?.store ?? '', 'matrix.db'), { readOnly: true });
    const { room: ledger }: { room?: string } = JSON.parse(factOf(db, 'ledger') ?? '{}');
    db.close();
    const headers = { Authorization: `Bearer ${house?.session().token}` };
    const url = `${server.url}/_matrix/client/v3/rooms/${encodeURIComponent(ledger ?? '')}${path}`;
    return JSON.parse(await (await fetch(url, { headers })).text());
  };
  const eventsInRoom = async (): Promise<readonly unknown[]> => {
    const { chunk } = await ask('/messages?dir=b&limit=500');
    const events: { type: string; event_id: string }[] = Array.isArray(chunk) ? chunk : [];
    return events.filter(({ type }) => type === 'm.room.encrypted').map(({ event_id }) => event_id);
  };
  const redacted = async (events: readonly string[]): Promise<readonly boolean[]> => {
    const read = await Promise.all(events.map((event) => ask(`/event/${encodeURIComponent(event)}`)));
    return read.map(({ unsigned }) => 'redacted_because' in Object(unsigned));
  };
  const store = (name: string) => join(house?.folder ?? '', name);

  test('notes, a choice, a learned word, an edit and an undo are the same after it, by hash', async () => {
    if (house === null) return;
    await marked(await priya.say(room, 'tips 1 to 6 are sterile and on the shelf'));
    const edited = await dan.say(room, 'moved green to Site 0');
    await marked(edited);
    await dan.edit(room, edited, 'wiped down green');
    // Killed in the middle of it, mirroring or not: the copy goes on where it was.
    await house.endBot('SIGKILL');
    await house.startBot(practice);
    // A choice made by tapping.
    const question = await replied(await dan.say(room, 'wiped down the scanner'));
    await dan.react(room, question.id, '1\ufe0f\u20e3');
    // A word that a person explains.
    const word = await dan.say(room, 'calibrated the gun');
    const asked = await replied(word);
    const offered = await replied(await dan.reply(room, asked.id, 'green'));
    expect(String(offered.content.body)).toContain('Shall I remember');
    await marked(await dan.reply(room, offered.id, 'yes'));
    await marked(await priya.say(room, 'used tip 4'));
    await marked(await priya.say(room, 'undo'));
    await mirrored(house.store);
    // Each event once, as this machine knows them.
    const known = ledgerEvents(() => true);
    expect(new Set(await eventsInRoom())).toEqual(new Set(known));
    expect(new Set(known).size).toBe(known.length);
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
    expect(await answerTo("where's green?")).toContain('Site 0, since');
    // What was explained to the machine before is known to this one.
    const word = await dan.say(room, 'wiped the gun down');
    await marked(word);
    expect(priya.reactionsTo(word)).toContain('👍');
    // Nothing that was said before was said again.
    const posts = priya.seen
      .filter(({ type, content }) => type === 'm.room.message' && !('m.new_content' in content))
      .map(({ content }) => content.body);
    expect(posts.filter((body) => /Which scanner/i.test(String(body)))).toHaveLength(2);
    await mirrored(house.store);
  }, 120_000);

  test('the machine of before stops by itself and will not start again', async () => {
    if (house === null) return;
    const before = await command('matrix', '--practice', practice, '--store', store('old'));
    expect(before.printed).toContain('another machine has taken this practice over');
    expect(before.code).toBe(77);
  }, 120_000);

  test('a folder that is older than the room and does not know it is refused, with the way out', async () => {
    if (house === null) return;
    cpSync(store('again'), store('archive'), { recursive: true });
    for (const file of ['matrix.db', 'matrix.db-wal', 'matrix.db-shm'])
      rmSync(join(store('archive'), file), { force: true });
    const older = await command('matrix', '--practice', practice, '--store', store('archive'));
    expect(older.printed).toMatch(/has \d+ lines of the record and the ledger room has \d+.*rebuild --room/);
    expect(older.code).toBe(77);
    // The machine that writes was not disturbed.
    await marked(await priya.say(room, 'wiped down blue'));
  }, 120_000);

  test('a name that was forgotten stays forgotten', async () => {
    if (house === null) return;
    await marked(await dan.say(room, 'wiped down blue'));
    await mirrored(house.store);
    const events = ledgerEvents((row) => row.kind === 'people');
    await house.endBot('SIGTERM');
    const gone = await command('forget', '--person', dan.id, '--yes', '--store', house.store);
    expect(gone.printed).toContain('The record now calls that person');
    writeFileSync(practice, readFileSync(practice, 'utf8').replace(/^.*Dan.*$/m, ''));
    await house.startBot(practice, { SCANWARD_RECOVERY_KEY: recoveryKey });
    // What had the name is taken out of the ledger room: the homeserver gives those events empty.
    await expect.poll(async () => (await redacted(events)).filter(Boolean).length, PATIENT).toBe(1);
    await mirrored(house.store);
    // The bot runs on: it sees that another machine took over, and ends.
    const { bot } = house;
    const again = await command('rebuild', '--room', '--store', store('third'));
    await expect.poll(() => bot?.exitCode, PATIENT).toBe(77);
    const own = await command('rebuild', '--store', house.store);
    expect(hashes(again.printed)).toEqual(hashes(own.printed));
    for (const file of ['people.jsonl', 'texts.jsonl', 'snapshot.json'])
      expect(readFileSync(join(store('third'), file), 'utf8')).not.toContain(dan.id);
  }, 180_000);
});
