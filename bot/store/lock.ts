import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { plainCause, StoreBusy, StoreTrouble } from './trouble.ts';

/** A folder held by this process. */
export interface Lock {
  release(): void;
}

const busy = 5; // SQLITE_BUSY

/**
 * Holds a folder for this process alone, by SQLite's lock on `lock.db` in it: the system gives it back when the
 * process ends, however it ends. Throws StoreBusy, naming the folder, when another has it.
 */
export function lockFolder(folder: string): Lock {
  let db: DatabaseSync | null = null;
  try {
    db = new DatabaseSync(join(folder, 'lock.db'), { timeout: 0 });
    // In memory, so that no second file is left behind.
    db.exec('PRAGMA journal_mode = MEMORY; PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE');
  } catch (cause) {
    db?.close();
    if (isBusy(cause)) {
      throw new StoreBusy(
        `Another Scanward is running on the folder ${folder}. Stop that one first, or name another folder.`,
        { cause },
      );
    }
    throw new StoreTrouble(`The folder ${folder} could not be held: ${plainCause(cause)}.`, { cause });
  }
  const held = db;
  return { release: () => held.close() };
}

function isBusy(cause: unknown): boolean {
  return typeof cause === 'object' && cause !== null && 'errcode' in cause && cause.errcode === busy;
}
