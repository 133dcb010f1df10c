import { existsSync, readdirSync, renameSync, rmdirSync, rmSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { Desk } from '../../core/desk/desk.ts';
import { restoreFromRoom } from '../chat/matrix/ledger/restore-from-room.ts';
import { NoServer } from '../chat/matrix/sign-in/ask-server.ts';
import { readCredentials } from '../chat/matrix/sign-in/credentials.ts';
import { wholeDesk } from '../keeper/open-desk.ts';
import { stateHash } from '../keeper/state-hash.ts';
import { PlainError } from '../plain-error.ts';
import { machineFs } from '../store/fs-port.ts';
import { syncFolder } from '../store/fs-whole.ts';
import { openStore } from '../store/store.ts';
import { verifyRecord } from '../store/verify.ts';
import { makeFolder } from './make-folder.ts';
import type { CommandIo } from './verify.ts';

/** What a rebuild from the room is asked with. */
export interface FromRoom {
  readonly folder: string;
  readonly secrets: string | undefined;
}

/**
 * Makes a practice's folder from its ledger room, on a machine that has nothing but the account and the recovery key. The
 * folder is put in place at one stroke once the record verifies; otherwise nothing is left. Whatever machine wrote before
 * stops by itself. Ends the process: exit code 0, or 1 with what stands in the way.
 */
export async function rebuildFromRoom({ folder, secrets }: FromRoom, io: CommandIo): Promise<never> {
  const credentials = readCredentials(process.env, secrets);
  if (credentials.recoveryKey === null) {
    throw new PlainError(
      'rebuild --room needs the recovery key that was shown once: SCANWARD_RECOVERY_KEY, beside SCANWARD_HOMESERVER, SCANWARD_USER and SCANWARD_PASSWORD.',
    );
  }
  const place = resolve(folder);
  if (existsSync(place) && readdirSync(place).length > 0)
    throw new PlainError(`${folder} is not empty. Give the name of a new folder.`);
  makeFolder(dirname(place));
  const draft = `${place}.rebuilding`;
  rmSync(draft, { recursive: true, force: true });
  makeFolder(draft);
  try {
    const { recoveryKey } = credentials;
    const told = await restoreFromRoom({ draft, credentials, recoveryKey, say: io.out });
    const state = settle(draft);
    if (existsSync(place)) rmdirSync(place);
    renameSync(draft, place);
    syncFolder(machineFs, dirname(place));
    io.out(`${state.n} lines of the record came back from the room. Head hash: ${state.head}`);
    io.out(`State hash: ${state.hash}`);
    for (const line of told) io.out(line);
    io.out(
      'Hold the head hash against one that was written down. Now start: matrix --practice FILE --store FOLDER.',
    );
  } catch (error) {
    rmSync(draft, { recursive: true, force: true });
    if (!(error instanceof PlainError || error instanceof NoServer)) throw error;
    io.err(error.message);
    process.exit(1);
  }
  // Ends the timers that the SDK leaves behind for two minutes.
  process.exit(0);
}

/** Verifies the record and writes its snapshot. Throws PlainError where it is not whole. */
function settle(folder: string): { readonly n: number; readonly head: string; readonly hash: string } {
  const verdict = verifyRecord(folder);
  if (verdict.fault !== null)
    throw new PlainError(`The record in the room is not whole: ${verdict.fault} Nothing was made.`);
  const store = openStore(folder);
  try {
    const desk = wholeDesk(store.lines(), () => new Desk());
    const saved = desk.save();
    if (saved !== null) store.saveSnapshot(saved);
    return { n: store.head.n, head: store.head.hash, hash: stateHash(desk) };
  } finally {
    store.close();
  }
}
