import { mkdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { parseArgs } from 'node:util';
import { MatrixBot } from '../chat/matrix/bot.ts';
import { Vault } from '../chat/matrix/keys/key-backup.ts';
import { openMatrixDb } from '../chat/matrix/matrix-db.ts';
import { NoServer } from '../chat/matrix/sign-in/ask-server.ts';
import { readCredentials } from '../chat/matrix/sign-in/credentials.ts';
import type { Session } from '../chat/matrix/sign-in/session.ts';
import { signIn } from '../chat/matrix/sign-in/sign-in.ts';
import { Keeper } from '../keeper/keeper.ts';
import { PlainError } from '../plain-error.ts';
import { openStore } from '../store/store.ts';
import { loadPractice } from './practice-file.ts';
import type { CommandIo } from './verify.ts';

/** Exit codes for whoever restarts the program (sysexits.h): try again later, and a sign-in that a person must mend. */
const TRY_AGAIN = 75;
const SIGNED_OUT = 77;

/**
 * `matrix --practice FILE --store FOLDER [--secrets FILE] [--new-device] [--new-recovery-key]`: the chat on a homeserver, until it is told to
 * end (0) or cannot go on (75: start it again; 77: signed out, a person is needed; 1: a mistake that is told).
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const { values } = parseArgs({
    args,
    options: {
      practice: { type: 'string' },
      store: { type: 'string' },
      secrets: { type: 'string' },
      'new-device': { type: 'boolean' },
      'new-recovery-key': { type: 'boolean' },
    },
  });
  if (values.practice === undefined) throw new PlainError('Name your practice file: --practice FILE.');
  const { practice, text } = loadPractice(values.practice);
  const folder = resolve(values.store ?? 'data/practice');
  const credentials = readCredentials(process.env, values.secrets);
  mkdirSync(folder, { recursive: true });
  const store = openStore(folder);
  const say = (line: string) => io.out(`${new Date().toISOString().slice(0, 19)}Z ${line}`);
  for (const notice of [...store.notices, ...(store.readOnly === null ? [] : [store.readOnly])]) say(notice);
  const db = openMatrixDb(folder);
  const session = await untilThere(() => signIn(db, credentials, values['new-device'] === true), say);
  const keeper = new Keeper(store, { count: () => performance.now() });
  for (const notice of keeper.notices) say(notice);
  keeper.settle(text, Date.now());

  const ending = Promise.withResolvers<number>();
  const failed = (error: unknown) => {
    io.err(`Cannot go on: ${error instanceof Error ? error.message : String(error)}`);
    // What failed may be the keys: nothing more may happen in this process.
    process.exit(isSignedOut(error) ? SIGNED_OUT : TRY_AGAIN);
  };
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => ending.resolve(0));
  const { password, recoveryKey } = credentials;
  const vault = new Vault();
  if (recoveryKey !== null) vault.open(recoveryKey);
  const show = (key: string) => {
    for (const line of [
      '',
      'The recovery key. It is shown this once: write it down and keep it away from this machine.',
      `  ${key}`,
      '',
    ])
      io.out(line);
  };
  const showRecoveryKey = values['new-recovery-key'] === true ? show : null;
  const { transport } = store;
  const bot = await MatrixBot.start({
    ...{ db, session, password, vault, showRecoveryKey, practice, keeper, transport, folder, say, failed },
    now: Date.now,
  });
  say(
    `${practice.name}: ${session.user} is listening on ${session.homeserver}. The record is kept in ${folder}.`,
  );
  const code = await ending.promise;
  bot.stop();
  db.close();
  keeper.close();
  store.close();
  // The SDK leaves timers behind for two minutes.
  process.exit(code);
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

/** The device is gone; a token that has only run out is replaced at the next start, where the password is known. */
function isSignedOut(error: unknown): boolean {
  if (typeof error !== 'object' || error === null || !('httpStatus' in error)) return false;
  const soft =
    'data' in error &&
    typeof error.data === 'object' &&
    error.data !== null &&
    'soft_logout' in error.data &&
    error.data.soft_logout === true;
  return error.httpStatus === 401 && !soft;
}
