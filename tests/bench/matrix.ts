// Note to answer on a real homeserver, beside a bare echo bot on the same one, note by note in turn; then idle memory.
// node tests/bench/matrix.ts [notes in all, 2000] [plain|encrypted]. On a shared machine only the ratios mean anything.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir, totalmem } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { localServer } from '../../bot/chat/matrix/local/server.ts';
import { begin, end, processorMs, residentMib } from '../matrix/bot-process.ts';
import { Person } from '../matrix/person.ts';
import { practiceText } from '../matrix/practice-text.ts';
import { compared } from './matrix/figures.ts';
import { Typist } from './matrix/typist.ts';

const NOTES = Number(process.argv[2] ?? 2000);
const KINDS = process.argv[3] === undefined ? ['plain', 'encrypted'] : [process.argv[3]];
/** Not counted: compiling, first keys. */
const WARM_UP = 20;
const IDLE_MS = 30_000;
const PASSWORD = 'only on this machine';

const folder = mkdtempSync(join(tmpdir(), 'scanward-bench-'));
const server = await localServer({ name: 'example.org', folder: join(folder, 'server') }, console.log);
try {
  for (const user of ['scanward', 'echo', 'priya']) await server.account(user, PASSWORD);
  const gib = (totalmem() / 2 ** 30).toFixed(0);
  console.log(`${cpus().length} x ${cpus()[0]?.model.trim()}, ${gib} GiB, Node ${process.version}`);
  const priya = await Person.signIn(server.url, 'priya', PASSWORD);
  for (const kind of KINDS) await compare(kind, priya);
  priya.stop();
} finally {
  await server.kill();
  rmSync(folder, { recursive: true, force: true });
}
process.exit(0);

async function compare(kind: string, priya: Person): Promise<void> {
  const rooms = {
    ours: await priya.room(kind === 'encrypted', ['@scanward:example.org']),
    theirs: await priya.room(kind === 'encrypted', ['@echo:example.org']),
  };
  const start = { ours: startOurs(kind, rooms.ours), theirs: startEcho(kind) };
  let ours = await start.ours();
  let theirs = await start.theirs();
  await priya.untilJoined(rooms.ours, '@scanward:example.org');
  await priya.untilJoined(rooms.theirs, '@echo:example.org');
  const typist = new Typist(priya, new Set(['@scanward:example.org', '@echo:example.org']));
  const times = { asked: [] as number[], noted: [] as number[], echoed: [] as number[] };
  let used = [0, 0];
  for (let pair = -WARM_UP; pair < NOTES / 2; pair++) {
    if (pair === 0) used = [processorMs(ours), processorMs(theirs)];
    const isNote = pair % 4 === 3;
    const one = async () => {
      const took = await typist.time(rooms.ours, isNote ? 'wiped down blue' : "where's blue?");
      if (pair >= 0) (isNote ? times.noted : times.asked).push(took);
    };
    const other = async () => {
      const took = await typist.time(rooms.theirs, isNote ? 'wiped down blue' : "where's blue?");
      if (pair >= 0) times.echoed.push(took);
    };
    // Neither is always first.
    for (const turn of pair % 2 === 0 ? [one, other] : [other, one]) await turn();
  }
  console.log(compared(`${kind}, all`, [...times.asked, ...times.noted], times.echoed));
  console.log(compared(`${kind}, questions`, times.asked, times.echoed));
  console.log(compared(`${kind}, notes (a thumb)`, times.noted, times.echoed));
  const [a, b] = [ours, theirs].map((bot, index) => (processorMs(bot) - (used[index] ?? 0)) / (NOTES / 2));
  console.log(
    `${kind}, processor a note: ${a?.toFixed(1)} : ${b?.toFixed(1)} ms = ${((a ?? 0) / (b ?? 1)).toFixed(2)}`,
  );
  const busy = [residentMib(ours), residentMib(theirs)];
  await Promise.all([end(ours), end(theirs)]);
  [ours, theirs] = [await start.ours(), await start.theirs()];
  await wait(IDLE_MS);
  const idle = [residentMib(ours), residentMib(theirs)];
  for (const [name, [a = 0, b = 1]] of [['after the notes', busy] as const, ['idle', idle] as const])
    console.log(`${kind}, memory ${name}: ${a.toFixed(0)} : ${b.toFixed(0)} MiB = ${(a / b).toFixed(2)}`);
  await Promise.all([end(ours), end(theirs)]);
}

function account(user: string): Record<string, string> {
  return { SCANWARD_HOMESERVER: server.url, SCANWARD_USER: user, SCANWARD_PASSWORD: PASSWORD };
}

function startOurs(kind: string, room: string) {
  const practice = join(folder, `${kind}.yaml`);
  writeFileSync(practice, practiceText([room]));
  const store = join(folder, `${kind}-store`);
  // As `npm run matrix` and the service file start it: the small young generation saves some 30 MiB.
  const node = ['--max-semi-space-size=2', 'bot/entry.js', 'matrix'];
  const args = [...node, '--practice', practice, '--store', store];
  return () => begin(args, account('scanward'));
}

function startEcho(kind: string) {
  const store = join(folder, `${kind}-echo`);
  mkdirSync(store);
  return () => begin(['tests/bench/matrix/echo.ts', store], account('echo'));
}
