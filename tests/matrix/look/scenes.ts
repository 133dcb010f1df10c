import type { ChildProcess } from 'node:child_process';
import { setTimeout as wait } from 'node:timers/promises';
import { type BadLine, badLine } from '../bad-line.ts';
import { end } from '../bot-process.ts';
import { Person } from '../person.ts';

const QUARTER_HOUR = 15 * 60_000;

/** Something that the bot said in a room, once it has. */
async function said(who: Person, room: string, words: RegExp, patience: number) {
  const found = () => who.seen.find((one) => one.room === room && words.test(String(one.content.body)));
  return who.until(found, String(words), patience);
}

/** The reminder to wipe down is ticked by a tap, so that it can be looked at struck through. */
export async function tickReminder(who: Person, room: string): Promise<void> {
  const wipe = await said(who, room, /^(?:•\s*)?Wipe/, 90_000);
  await who.react(room, wipe.id, '✅');
  await who.until(() => who.editsOf(wipe.id).length > 0, 'the reminder struck', 30_000);
}

/** A question that nobody answers calls the lead. */
export async function leadCalled(who: Person, room: string): Promise<void> {
  await said(who, room, /did (?:it|tip \w+) reach a patient/i, 120_000);
}

/** A colleague whose keys never come. */
export async function lockedNote(
  who: Person,
  room: string,
  at: { readonly url: string; readonly password: string },
): Promise<void> {
  const slow = await badLine(at.url);
  const tom = await Person.signIn(slow.url, 'tom', at.password);
  await who.client.invite(room, tom.id);
  await tom.client.joinRoom(room);
  while ((await tom.client.getCrypto()?.isEncryptionEnabledInRoom(room)) !== true) await wait(100);
  slow.holdKeys();
  await tom.say(room, 'wiped down blue');
  await said(who, room, /could not read a note/, 60_000);
  tom.stop();
  slow.close();
}

/** The bot is away for a quarter of an hour by the homeserver's clock. Gives the bot that came back. */
export async function backLate(
  who: Person,
  rooms: readonly string[],
  bot: ChildProcess,
  line: BadLine,
  begin: () => Promise<ChildProcess>,
): Promise<ChildProcess> {
  await end(bot);
  for (const room of rooms) {
    for (const text of ['tip 3 on green', 'wiped down blue, cover back on', "where's green?"])
      await who.say(room, text);
  }
  line.age(QUARTER_HOUR);
  const back = await begin();
  for (const room of rooms) await said(who, room, /I was away/, 60_000);
  line.age(0);
  return back;
}
