import { afterAll, describe, expect, test } from 'vitest';
import { type House, houseIfPossible } from './house.ts';
import { Person } from './person.ts';

const shortly = await houseIfPossible({ sessionSeconds: 15 });

describe.skipIf(shortly === null)('a sign-in that runs out', () => {
  afterAll(async () => shortly?.close());

  test('it ends with 75, and the next start goes on with the same device and keys', async () => {
    if (shortly === null) return;
    const practice = shortly.practice(['!none:example.org']);
    await shortly.startBot(practice);
    const before = shortly.session();
    expect(await new Promise((resolve) => shortly.bot?.once('exit', resolve))).toBe(75);
    await shortly.startBot(practice);
    const after = shortly.session();
    expect(after.device).toBe(before.device);
    expect(after.storageKey).toBe(before.storageKey);
    expect(after.token).not.toBe(before.token);
  });
});

const renewing = await houseIfPossible({ tokenSeconds: 6 });

describe.skipIf(renewing === null)('tokens that run out and are renewed', () => {
  const { server, password } = renewing ?? ({} as House);
  let priya: Person;
  afterAll(async () => {
    priya?.stop();
    await renewing?.close();
  });
  const answered = async (room: string) => {
    const ask = await priya.say(room, "where's blue?");
    await priya.until(() => priya.repliesTo(ask).length > 0, 'an answer', 30_000);
  };
  const tokenNow = () => renewing?.session().token;

  test('it goes on under new tokens while it runs, and after a stop that outlasted its token', async () => {
    if (renewing === null) return;
    priya = await Person.signIn(server.url, 'priya', password);
    const room = await priya.room(true, ['@scanward:example.org']);
    const practice = renewing.practice([room]);
    await renewing.startBot(practice);
    await priya.untilJoined(room, '@scanward:example.org');
    const before = renewing.session();
    for (let life = 0; life < 3; life++) {
      const used = tokenNow();
      await expect.poll(tokenNow, { timeout: 30_000 }).not.toBe(used);
      await answered(room);
    }
    await renewing.endBot('SIGKILL');
    const kept = renewing.session();
    expect(kept.device).toBe(before.device);
    // Until the homeserver itself says that the kept token has run out.
    const headers = { Authorization: `Bearer ${kept.token}` };
    const status = async () =>
      (await fetch(`${server.url}/_matrix/client/v3/account/whoami`, { headers })).status;
    await expect.poll(status, { timeout: 30_000 }).toBe(401);
    await renewing.startBot(practice, { SCANWARD_PASSWORD: '' });
    await answered(room);
    expect(renewing.session().device).toBe(before.device);
    expect(renewing.session().storageKey).toBe(before.storageKey);
  }, 120_000);
});
