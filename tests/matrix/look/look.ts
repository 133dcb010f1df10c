// A real client on a phone-sized screen that nobody sees, in a room where a day is typed, light and dark: pictures to look at.
// node tests/matrix/look/look.ts [FOLDER for the pictures]. Left out, and said so, where the client is not installed.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { localServer } from '../../../bot/chat/matrix/local/server.ts';
import { badLine } from '../bad-line.ts';
import { begin, end } from '../bot-process.ts';
import { Person } from '../person.ts';
import { notesOf, practiceFor, typeAll } from './day.ts';
import { backLate, leadCalled, lockedNote, tickReminder } from './scenes.ts';
import { missingPrograms, Screen } from './screen.ts';

const PASSWORD = 'only on this machine';
const BOT = '@scanward:example.org';
/** Pictures of a room, from its newest post upwards. */
const PAGES = 18;

const missing = missingPrograms();
if (missing.length > 0) {
  console.error(
    `LEFT OUT: no pictures without ${missing.join(', ')}. Debian: apt install nheko xvfb openbox xdotool imagemagick dbus`,
  );
  process.exit(0);
}
const pictures = process.argv[2] ?? '.cache/look';
mkdirSync(pictures, { recursive: true });
const folder = mkdtempSync(join(tmpdir(), 'scanward-look-'));
const server = await localServer({ name: 'example.org', folder: join(folder, 'server') }, console.log);
for (const user of ['scanward', 'priya', 'dan', 'tom']) await server.account(user, PASSWORD);

const priya = await Person.signIn(server.url, 'priya', PASSWORD);
const dan = await Person.signIn(server.url, 'dan', PASSWORD);
const rooms: [string, string] = ['', ''];
for (const [index, encrypted] of [true, false].entries()) {
  const room = await priya.room(encrypted, [BOT, dan.id], [BOT]);
  await priya.client.setRoomName(room, encrypted ? 'Mill Lane' : 'North Clinic');
  await dan.client.joinRoom(room);
  rooms[index] = room;
}
const onlooker = (theme: 'light' | 'dark') => {
  const account = { url: server.url, user: 'priya', password: PASSWORD };
  return { ...account, theme, folder: join(folder, theme), display: 71 };
};
// Their keys have to be known before anything is said that they are to read.
for (const theme of ['dark', 'light'] as const) {
  const screen = await Screen.open(onlooker(theme));
  await wait(15_000);
  await screen.close();
}

const practice = join(folder, 'practice.yaml');
writeFileSync(practice, practiceFor(rooms));
const line = await badLine(server.url);
const beginBot = () =>
  begin(['bot/entry.js', 'matrix', '--practice', practice, '--store', join(folder, 'store')], {
    SCANWARD_HOMESERVER: line.url,
    SCANWARD_USER: 'scanward',
    SCANWARD_PASSWORD: PASSWORD,
  });
let bot = await beginBot();
for (const room of rooms) await priya.untilJoined(room, BOT);
await typeAll(dan, rooms[0], notesOf('green', 'blue', 1));
await typeAll(dan, rooms[1], notesOf('white', 'white', 11));
await priya.say(rooms[0], 'log for this week please');
await priya.say(rooms[0], 'health');
await tickReminder(priya, rooms[0]);
await leadCalled(priya, rooms[0]);
await lockedNote(priya, rooms[0], { url: server.url, password: PASSWORD });
bot = await backLate(dan, rooms, bot, line, beginBot);

// Unread rooms stand first in the client's list, then the newest: by these places each room is opened once.
for (const [theme, rows] of [
  ['light', ['90', '90']],
  ['dark', ['90', '145']],
] as const) {
  for (const [index, row] of rows.entries()) {
    const screen = await Screen.open(onlooker(theme));
    await wait(20_000);
    await lookThrough(screen, row, join(pictures, `${theme}-${index + 1}`));
    await screen.close();
  }
}
console.log(`Look at the pictures in ${pictures}.`);
await end(bot);
line.close();
for (const person of [priya, dan]) person.stop();
await server.kill();
rmSync(folder, { recursive: true, force: true });
process.exit(0);

async function lookThrough(screen: Screen, row: string, name: string): Promise<void> {
  // The client's own welcome, and its bar about encryption, whose places these are.
  for (const place of [
    ['325', '804'],
    ['377', '72'],
  ] as const) {
    screen.hand('mousemove', ...place, 'click', '1');
    await wait(2000);
  }
  await screen.picture(`${name}-rooms.png`);
  screen.hand('mousemove', '200', row, 'click', '1');
  await wait(5000);
  for (let page = 1; page <= PAGES; page++) {
    await screen.picture(`${name}-${page}.png`);
    screen.hand('mousemove', '200', '500', 'click', '--repeat', '8', '--delay', '60', '4');
  }
}
