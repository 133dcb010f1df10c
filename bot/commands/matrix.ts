import { resolve } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { parseArgs } from 'node:util';
import { MatrixBot } from '../chat/matrix/bot.ts';
import { openHealthPage } from '../chat/matrix/health/health-page.ts';
import { Vault } from '../chat/matrix/keys/key-backup.ts';
import { openMatrixDb } from '../chat/matrix/matrix-db.ts';
import { NoServer } from '../chat/matrix/sign-in/ask-server.ts';
import { readCredentials } from '../chat/matrix/sign-in/credentials.ts';
import type { Session } from '../chat/matrix/sign-in/session.ts';
import { signIn } from '../chat/matrix/sign-in/sign-in.ts';
import { isOnlyTheLine, wantsPerson } from '../chat/matrix/trouble.ts';
import { Keeper } from '../keeper/keeper.ts';
import { PlainError } from '../plain-error.ts';
import { openStore } from '../store/store.ts';
import { makeFolder } from './make-folder.ts';
import { loadPractice } from './practice-file.ts';
import type { CommandIo } from './verify.ts';

/** Exit codes for whoever restarts the program (sysexits.h): try again later, and what a person must mend. */
const TRY_AGAIN = 75;
const WANTS_PERSON = 77;

/**
 * `matrix --practice FILE --store FOLDER [--secrets FILE] [--new-device] [--new-recovery-key] [--health-port N]`: the chat
 * on a homeserver, until it is told to end (0) or cannot go on (75: start it again; 77: signed out or taken over, a person is needed; 1: a mistake that
 * is told).
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const options = optionsIn(args);
  const { practice, text } = loadPractice(options.practice);
  const credentials = readCredentials(process.env, options.secrets);
  const vault = new Vault();
  if (credentials.recoveryKey !== null) vault.open(credentials.recoveryKey);
  const { folder } = options;
  makeFolder(folder);
  const store = openStore(folder);
  const say = (line: string) => io.out(`${new Date().toISOString().slice(0, 19)}Z ${line}`);
  for (const notice of [...store.notices, ...(store.readOnly === null ? [] : [store.readOnly])]) say(notice);
  const db = openMatrixDb(folder);
  const session = await untilThere(() => signIn(db, credentials, options.newDevice), say);
  const keeper = new Keeper(store, { count: () => performance.now(), say });
  for (const notice of keeper.notices) say(notice);
  keeper.settle(text, Date.now());

  const failed = endOnFailure(io);
  const ending = Promise.withResolvers<number>();
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => ending.resolve(0));
  const { password } = credentials;
  const showRecoveryKey = options.newRecoveryKey ? (key: string) => showOnce(key, io) : null;
  const starting = MatrixBot.start({
    ...{ db, session, password, vault, showRecoveryKey, practice, keeper, store, say, failed },
    now: Date.now,
  });
  starting
    .then(async (bot) => {
      if (options.healthPort !== null) await openHealthPage(options.healthPort, () => bot.findings());
      say(`${practice.name}: ${session.user} is listening on ${session.homeserver}.`);
    })
    .catch(failed);
  say(`The record is kept in ${folder}.`);
  const code = await ending.promise;
  // What is unsent goes out at the next start; the journal has everything already.
  keeper.close();
  db.close();
  store.close();
  // Ends what listens and sends, and the timers that the SDK leaves behind for two minutes.
  process.exit(code);
}

function optionsIn(args: string[]) {
  const { values } = parseArgs({
    args,
    options: {
      practice: { type: 'string' },
      store: { type: 'string' },
      secrets: { type: 'string' },
      'new-device': { type: 'boolean' },
      'new-recovery-key': { type: 'boolean' },
      'health-port': { type: 'string' },
    },
  });
  if (values.practice === undefined) throw new PlainError('Name your practice file: --practice FILE.');
  return {
    practice: values.practice,
    folder: resolve(values.store ?? 'data/practice'),
    secrets: values.secrets,
    newDevice: values['new-device'] === true,
    newRecoveryKey: values['new-recovery-key'] === true,
    healthPort: portIn(values['health-port']),
  };
}

function portIn(text: string | undefined): number | null {
  if (text === undefined) return null;
  const port = Number(text);
  if (!Number.isInteger(port) || port < 1 || port > 65_535)
    throw new PlainError('A port is a number from 1 to 65535: --health-port 8099.');
  return port;
}

/**
 * Ends the process at once: what failed may be the keys, and nothing more may happen then. What the SDK leaves unwaited
 * for counts too, but for a lost line, which is nothing.
 */
function endOnFailure(io: CommandIo): (error: unknown) => never {
  const failed = (error: unknown): never => {
    io.err(`Cannot go on: ${error instanceof Error ? error.message : String(error)}`);
    process.exit(wantsPerson(error) ? WANTS_PERSON : TRY_AGAIN);
  };
  for (const event of ['unhandledRejection', 'uncaughtException'] as const) {
    process.on(event, (error: unknown) => {
      if (!isOnlyTheLine(error)) failed(error);
    });
  }
  return failed;
}

function showOnce(key: string, io: CommandIo): void {
  const told = 'The recovery key. It is shown this once: write it down and keep it away from this machine.';
  for (const line of ['', told, `  ${key}`, '']) io.out(line);
}

/** A homeserver that is away at the start is waited for; a wrong password is not. */
async function untilThere(work: () => Promise<Session>, say: (line: string) => void): Promise<Session> {
  for (let tries = 0; ; tries++) {
    try {
      return await work();
    } catch (error) {
      if (!(error instanceof NoServer)) throw error;
      if (tries === 0) say(`${error.message} Trying on.`);
      await wait(Math.min(1000 * 2 ** tries, 30_000));
    }
  }
}
