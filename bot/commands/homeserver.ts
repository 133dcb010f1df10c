import { spawn } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import type { Practice } from '../../core/practice/practice.ts';
import { type LocalServer, localServer } from '../chat/matrix/local/server.ts';
import { tryRooms } from '../chat/matrix/local/try-rooms.ts';
import { loadPractice } from './practice-file.ts';
import type { CommandIo } from './verify.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const FOLDER = join(ROOT, '.cache', 'synapse', 'try');
const EXAMPLE = join(ROOT, 'config', 'practices', 'example.yaml');

/** Guards nothing: the homeserver listens to this machine alone and holds an invented practice. */
const PASSWORD = 'scanward-try';
const BOT = 'scanward';

/**
 * `homeserver [--port N]`: a real homeserver on 127.0.0.1 with the example practice's people, an encrypted chat room and a
 * plain one, and the bot in them; prints how to sign in with any Matrix client. Ends with Ctrl-C. Everything is kept in
 * `.cache/synapse/try`; deleting that folder begins anew.
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const { values } = parseArgs({ args, options: { port: { type: 'string', default: '8008' } } });
  mkdirSync(FOLDER, { recursive: true });
  const { practice, text } = loadPractice(EXAMPLE);
  const name = 'example.org';
  const people = practice.people.flatMap(({ id }) => (id === null ? [] : [id.slice(1, id.indexOf(':'))]));
  const server = await localServer(
    { name, folder: join(FOLDER, 'server'), port: Number(values.port) },
    io.out,
  );
  try {
    return await inside(server, people, practice, text, io);
  } finally {
    await server.stop();
  }
}

async function inside(
  server: LocalServer,
  people: readonly string[],
  practice: Practice,
  text: string,
  io: CommandIo,
): Promise<number> {
  for (const user of [BOT, ...people]) await server.account(user, PASSWORD);
  const wanted = practice.chat.map(({ sites }, index) => {
    const site = practice.sites.find(({ id }) => id === sites[0]);
    return { name: site?.name ?? 'Scanners', encrypted: index === 0 };
  });
  const rooms = await tryRooms(
    server.url,
    join(FOLDER, 'rooms.json'),
    people,
    PASSWORD,
    `@${BOT}:${server.name}`,
    wanted,
  );
  const file = join(FOLDER, 'practice.yaml');
  writeFileSync(
    file,
    practice.chat.reduce((yaml, { room }, index) => yaml.replaceAll(room, rooms[index] ?? room), text),
  );
  const bot = spawn(
    process.execPath,
    [join(ROOT, 'bot', 'entry.js'), 'matrix', '--practice', file, '--store', join(FOLDER, 'store')],
    {
      stdio: ['ignore', 'inherit', 'inherit'],
      env: {
        ...process.env,
        SCANWARD_HOMESERVER: server.url,
        SCANWARD_USER: BOT,
        SCANWARD_PASSWORD: PASSWORD,
      },
    },
  );
  for (const line of howToSignIn(server.url, people, wanted)) io.out(line);
  return new Promise<number>((resolve) => {
    bot.once('exit', (ended) => resolve(ended ?? 0));
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => bot.kill('SIGTERM'));
  });
}

function howToSignIn(
  url: string,
  people: readonly string[],
  rooms: readonly { readonly name: string; readonly encrypted: boolean }[],
): readonly string[] {
  const named = rooms.map((room) => `"${room.name}" (${room.encrypted ? 'encrypted' : 'plain'})`);
  return [
    '',
    `The homeserver is ${url}, for this machine alone. Sign in with any Matrix client:`,
    `  homeserver  ${url}`,
    `  account     ${people.join(', ')}`,
    `  password    ${PASSWORD}`,
    `Chat rooms: ${named.join(', ')}. Type "help" in one of them. Ctrl-C ends both.`,
    '',
  ];
}
