import { VerificationPhase, VerifierEvent } from 'matrix-js-sdk/lib/crypto-api/index.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type House, houseIfPossible } from '../house.ts';
import { Person } from '../person.ts';

const BOT = '@scanward:example.org';
const house = await houseIfPossible();

describe.skipIf(house === null)('keys beyond the folder', () => {
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
    room = await priya.room(true, [BOT, dan.id]);
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

  const answered = async (who: Person) => {
    const ask = await who.say(room, "where's blue?");
    await who.until(() => who.repliesTo(ask).length > 0, 'an answer');
  };
  /** How people's phones see the bot's devices: signed by its account or not. */
  const signedDevices = async (): Promise<readonly boolean[]> => {
    const crypto = priya.client.getCrypto();
    const devices = (await crypto?.getUserDeviceInfo([BOT], true))?.get(BOT) ?? new Map<string, unknown>();
    const all = await Promise.all(
      [...devices.keys()].map((id) => crypto?.getDeviceVerificationStatus(BOT, id)),
    );
    return all.map((status) => status?.signedByOwner === true);
  };

  test('the device is signed by its account, so that phones show no warning', async () => {
    expect(recoveryKey.split(' ').length).toBeGreaterThan(8);
    await answered(priya);
    expect(await signedDevices()).toEqual([true]);
  });

  test('the lead may compare emoji; others are refused', async () => {
    if (house === null) return;
    const bot = async (who: Person) => {
      const devices = await who.client.getCrypto()?.getUserDeviceInfo([BOT], true);
      const [device = ''] = devices?.get(BOT)?.keys() ?? [];
      return who.client.getCrypto()?.requestDeviceVerification(BOT, device);
    };
    const asked = await bot(priya);
    await priya.until(() => asked?.phase === VerificationPhase.Ready, 'the bot to accept');
    const verifier = await asked?.startVerification('m.sas.v1');
    let shown = '';
    verifier?.on(VerifierEvent.ShowSas, ({ sas, confirm }) => {
      shown = (sas.emoji ?? []).map(([picture, name]) => `${picture} ${name}`).join('  ');
      void confirm();
    });
    await verifier?.verify();
    await priya.until(() => house.printed.includes('has verified this device'), 'the bot to say so');
    expect(house.printed).toContain(shown);
    const refused = await bot(dan);
    await dan.until(() => refused?.phase === VerificationPhase.Cancelled, 'a refusal');
  });

  test('a folder lost: with the recovery key a new device is signed and has its old keys', async () => {
    if (house === null) return;
    await answered(dan);
    // The backup lags some seconds behind the notes.
    const headers = { Authorization: `Bearer ${house.session().token}` };
    const backedUp = async () => {
      const answer = await fetch(`${server.url}/_matrix/client/v3/room_keys/version`, { headers });
      const { count }: { count?: number } = JSON.parse(await answer.text());
      return count ?? 0;
    };
    await expect.poll(backedUp, { timeout: 30_000 }).toBeGreaterThan(0);
    await house.endBot('SIGTERM');
    await house.startBot(practice, { SCANWARD_RECOVERY_KEY: recoveryKey }, ['--new-device']);
    expect(house.printed).toMatch(/\d+ keys of what was said before came back/);
    expect(house.printed).not.toContain(recoveryKey);
    await answered(priya);
    await priya.until(() => priya.seen.length > 0, 'something');
    await expect.poll(signedDevices, { timeout: 20_000 }).toEqual([true, true]);
  });
});
