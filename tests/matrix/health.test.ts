import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { Health } from '../../bot/chat/matrix/health/health.ts';
import { openHealthPage } from '../../bot/chat/matrix/health/health-page.ts';
import { openMatrixDb, setFact } from '../../bot/chat/matrix/matrix-db.ts';
import { loadPractice } from '../../bot/commands/practice-file.ts';
import { toText } from '../../bot/show/text.ts';
import { openStore, type Store } from '../../bot/store/store.ts';
import type { Effect } from '../../core/desk/effect.ts';

const MINUTE = 60_000;
const { practice } = loadPractice(new URL('../../config/practices/example.yaml', import.meta.url).pathname);
const lead = practice.people.find(({ part }) => part === 'lead')?.id ?? '';
const manager = practice.people.find(({ part }) => part === 'manager')?.id ?? '';
const staff = practice.people.find(({ part, id }) => part === 'staff' && id !== null)?.id ?? '';
const room = practice.chat[0]?.room ?? '';

/** A homeserver whose clock can be put wrong, and a folder that was on it. */
let folder = '';
let store: Store;
let db: ReturnType<typeof openMatrixDb>;
let server: Server;
let url = '';
let aheadSeconds = 0;
let now = 0;
let direct: Readonly<Record<string, string>> = {};

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'scanward-health-'));
  store = openStore(folder);
  db = openMatrixDb(folder);
  now = Date.now();
  aheadSeconds = 0;
  direct = {};
  setFact(db, 'synced', new Date(now).toISOString());
  setFact(db, 'backup', 'version 1');
  setFact(db, 'ledger', '{}');
  server = createServer((_, answer) => {
    answer.setHeader('date', new Date(Date.now() + aheadSeconds * 1000).toUTCString()).end('{}');
  }).listen(0, '127.0.0.1');
  await new Promise((resolve) => server.once('listening', resolve));
  url = urlOf(server);
});
afterEach(() => {
  server.close();
  db.close();
  store.close();
  rmSync(folder, { recursive: true, force: true });
});

const urlOf = (of: Server) => {
  const address = of.address();
  return `http://127.0.0.1:${typeof address === 'object' && address !== null ? address.port : 0}`;
};
const begin = () =>
  new Health({
    ...{ db, store, practice, homeserver: url, now: () => now },
    privateRoomOf: (person) => direct[person] ?? null,
  });
const note = (from: string, text: string, id = '$1', at = now) =>
  ({ sort: 'note', id, room, from, at, text }) as const;
const posts = () =>
  store.transport.unsent().map(({ body }) => {
    const effect = body as Effect;
    return effect.does === 'post' ? { ...effect, text: toText(effect.message) } : null;
  });
const later = async (health: Health, minutes: number) => {
  now += minutes * MINUTE;
  setFact(db, 'synced', new Date(now).toISOString());
  await health.look();
};

describe('asked in a chat room', () => {
  test.each(['health', 'Health?', 'Scanward, health check'])('“%s” of the lead’s is answered', (text) => {
    begin().answer([note(lead, text)]);
    const [post] = posts();
    expect(post).toMatchObject({ room, replyTo: '$1', mentions: [] });
    expect(post?.text).toMatch(/^All is well/);
    expect(post?.text).toMatch(/Last heard the homeserver \d\d:\d\d/);
    expect(post?.text).toContain('Everything was sent');
    expect(post?.text).toContain('Every note could be read');
    expect(post?.text).toMatch(/The record has 0 lines; head \w{16}$/m);
    expect(post?.text).toContain('Keys backed up');
  });

  test.each([
    ['staff', () => note(staff, 'health')],
    ['talk', () => note(lead, 'health and safety training is at 3')],
    ['typed long ago', () => note(lead, 'health', '$1', now - 11 * MINUTE)],
  ])('%s: nothing is said', (_, heard) => {
    begin().answer([heard()]);
    expect(posts()).toEqual([]);
  });

  test('the same question over a restart is answered once', () => {
    begin().answer([note(lead, 'health')]);
    begin().answer([note(lead, 'health')]);
    expect(posts()).toHaveLength(1);
  });

  test('what wants a person stands first, with what to do', () => {
    db.exec("DELETE FROM fact WHERE name IN ('backup', 'ledger')");
    begin().answer([note(manager, 'health')]);
    expect(posts()[0]?.text).toMatch(
      /^One thing wants a look.*\n.*keys are not backed up.*--new-recovery-key.*\n.*Well:/,
    );
  });
});

describe('by itself', () => {
  test('a clock that is wrong at two looks is told once, in the manager’s direct message', async () => {
    direct = { [lead]: '!lead', [manager]: '!manager' };
    const health = begin();
    aheadSeconds = 300;
    await later(health, 0);
    expect(posts()).toEqual([]);
    await later(health, 10);
    expect(posts().map((post) => post?.room)).toEqual(['!manager']);
    expect(posts()[0]?.text).toMatch(/clock is (299|300|301) s from ours\. .*set the machine's clock/);
    await later(health, 10);
    // A restart forgets nothing.
    const again = begin();
    await later(again, 10);
    await later(again, 10);
    expect(posts()).toHaveLength(1);
  });

  test('a homeserver that does not answer is nothing to be told through it', async () => {
    const health = begin();
    server.close();
    server.closeAllConnections();
    for (const minutes of [0, 10, 10]) await later(health, minutes);
    expect(health.findings().some(({ line, good }) => !good && line.includes('does not answer'))).toBe(true);
    expect(posts()).toEqual([]);
  });

  test('gone within ten minutes: nothing; gone and back: told again', async () => {
    const health = begin();
    aheadSeconds = 300;
    await later(health, 0);
    aheadSeconds = 0;
    await later(health, 10);
    expect(posts()).toEqual([]);
    for (const ahead of [300, 300, 0, 300, 300]) {
      aheadSeconds = ahead;
      await later(health, 10);
    }
    expect(posts().map((post) => post?.room)).toEqual([room, room]);
  });
});

test('the page for a watcher: 200 while it hears, 503 when deaf, and nothing else there', async () => {
  const health = begin();
  const page = await openHealthPage(0, () => health.findings());
  const at = `${urlOf(page)}/health`;
  const well = await fetch(at);
  expect(well.status).toBe(200);
  expect(await well.text()).toMatch(/^well {2}Last heard the homeserver/);
  now += 3 * MINUTE;
  expect((await fetch(at)).status).toBe(503);
  expect((await fetch(urlOf(page))).status).toBe(404);
  expect((await fetch(at, { method: 'POST' })).status).toBe(404);
  const taken = Number(new URL(at).port);
  await expect(openHealthPage(taken, () => [])).rejects.toThrow(/is taken/);
  page.closeAllConnections();
  page.close();
});
