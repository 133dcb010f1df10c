import { spawn } from 'node:child_process';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMatrixDb, setFact } from '../../bot/chat/matrix/matrix-db.ts';
import { House, houseIfPossible } from './house.ts';
import { passwordLogin } from './password-login.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const house = await houseIfPossible();

describe.skipIf(house === null)('signing in', () => {
  const { server, password } = house ?? ({} as House);
  let practice = '';

  beforeAll(() => {
    practice = house?.practice(['!none:example.org']) ?? '';
  });
  afterAll(async () => house?.close());

  /** Runs the bot until it ends by itself. */
  const failing = (environment: Record<string, string>, store: string, more: readonly string[] = []) =>
    new Promise<{ code: number | null; printed: string }>((resolve) => {
      const args = ['bot/entry.js', 'matrix', '--practice', practice, '--store', store, ...more];
      const bot = spawn(process.execPath, args, {
        cwd: ROOT,
        env: { ...process.env, SCANWARD_HOMESERVER: server.url, SCANWARD_USER: 'scanward', ...environment },
      });
      let printed = '';
      for (const stream of [bot.stdout, bot.stderr]) {
        stream.on('data', (chunk: Buffer) => {
          printed += chunk.toString('utf8');
        });
      }
      bot.once('exit', (code) => resolve({ code, printed }));
    });
  const fresh = (name: string) => join(house?.folder ?? '', name);
  const session = () => house?.session() ?? {};
  const revoke = async () => {
    const headers = { Authorization: `Bearer ${session().token}` };
    await fetch(`${server.url}/_matrix/client/v3/logout`, { method: 'POST', headers, body: '{}' });
  };

  test('a wrong password is told plainly, without the password', async () => {
    const { code, printed } = await failing({ SCANWARD_PASSWORD: 'hunter-two' }, fresh('a'));
    expect(code).toBe(1);
    expect(printed).toMatch(/refuses that account and password/);
    expect(printed).not.toContain('hunter-two');
    expect(printed).not.toContain('at file:');
  });

  test('no account said', async () => {
    const { code, printed } = await failing({}, fresh('b'));
    expect(code).toBe(1);
    expect(printed).toMatch(/SCANWARD_PASSWORD/);
  });

  test('an address that is no homeserver', async () => {
    const other = createServer((_, answer) => answer.end('<html>Welcome</html>')).listen(0, '127.0.0.1');
    await new Promise((resolve) => other.once('listening', resolve));
    const address = other.address();
    const port = typeof address === 'object' && address !== null ? address.port : 0;
    const environment = { SCANWARD_HOMESERVER: `http://127.0.0.1:${port}`, SCANWARD_PASSWORD: 'x' };
    const { code, printed } = await failing(environment, fresh('c'));
    other.close();
    expect(code).toBe(1);
    expect(printed).toMatch(/not as a Matrix homeserver/);
  });

  test('a token made by hand is taken as it is, kept with its device, and needs no password ever after', async () => {
    if (house === null) return;
    const hand = House.inside(house);
    const { access_token, device_id } = await passwordLogin(server.url, 'scanward', password, 'by hand');
    const none = { SCANWARD_USER: '', SCANWARD_PASSWORD: '' };
    await hand.startBot(hand.practice(['!none:example.org']), {
      ...none,
      SCANWARD_TOKEN: access_token,
    });
    expect(hand.session()).toMatchObject({ user: '@scanward:example.org', device: device_id });
    expect(hand.printed).not.toContain(access_token);
    await hand.endBot('SIGTERM');
    await hand.startBot(hand.practice(['!none:example.org']), none);
    expect(hand.session().device).toBe(device_id);
    await hand.endBot('SIGTERM');
  });

  test('a token that the homeserver does not know is told plainly, without it', async () => {
    if (house === null) return;
    const hand = House.inside(house);
    const started = hand.startBot(hand.practice(['!none:example.org']), { SCANWARD_TOKEN: 'syt_made_up' });
    await expect(started).rejects.toThrow(/does not know that token/);
    expect(hand.printed).not.toContain('syt_made_up');
  });

  test('the device is kept over starts, and another account is refused its folder', async () => {
    if (house === null) return;
    await house.startBot(practice);
    const first = session();
    await house.endBot('SIGTERM');
    await house.startBot(practice, { SCANWARD_PASSWORD: '' });
    expect(session()).toEqual(first);
    await house.endBot('SIGTERM');
    const { code, printed } = await failing(
      { SCANWARD_USER: 'tom', SCANWARD_PASSWORD: password },
      house.store,
    );
    expect(code).toBe(1);
    expect(printed).toMatch(/belongs to @scanward:example.org/);
  });

  test('a folder whose keys are those of another device is told so, and nothing is sent', async () => {
    if (house === null) return;
    const other = await passwordLogin(server.url, 'scanward', password, 'another');
    const before = house.session();
    const db = openMatrixDb(house.store);
    setFact(db, 'session', JSON.stringify({ ...before, token: other.access_token, renewal: null }));
    const { code, printed } = await failing({ SCANWARD_PASSWORD: password }, house.store);
    expect(code).toBe(1);
    expect(printed).toMatch(new RegExp(`device ${before.device}.*device ${other.device_id}.*--new-device`));
    expect(printed).not.toContain(other.access_token);
    setFact(db, 'session', JSON.stringify(before));
    db.close();
  });

  test('signed out while it runs: it ends with 77; then it says what to do, and a new device goes on', async () => {
    if (house === null) return;
    await house.startBot(practice);
    const gone = new Promise<number | null>((resolve) => house.bot?.once('exit', resolve));
    const before = session();
    await revoke();
    expect(await gone).toBe(77);
    const again = await failing({ SCANWARD_PASSWORD: password }, house.store);
    expect(again.code).toBe(1);
    expect(again.printed).toMatch(/--new-device/);
    expect(again.printed).not.toContain(before.token);
    await house.startBot(practice, {}, ['--new-device']);
    expect(session().device).not.toBe(before.device);
    expect(house.printed).not.toContain(session().token);
  });
});
