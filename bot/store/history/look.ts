import { existsSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { pathToFileURL } from 'node:url';
import { checkAll } from './check.ts';
import { sumOfHead } from './sums.ts';

/** A history.db as it is at one moment, also while the program writes on. */
export interface HistoryLook {
  readonly db: DatabaseSync;
  /** What belongs together with the snapshot of that stamp; `null`: nothing. */
  readonly stamp: string | null;
  close(): void;
}

/** Looks at a history.db, changing nothing; `null` where there is none that reads. */
export function lookAtHistory(path: string): HistoryLook | null {
  if (!existsSync(path)) return null;
  let db: DatabaseSync | null = null;
  try {
    db = openToLook(path);
    db.exec('BEGIN');
    const head = db.prepare('SELECT base, stamp, sum FROM head').get();
    const stamp = head?.stamp == null ? null : String(head.stamp);
    const stands = head?.sum === sumOfHead(Number(head?.base), stamp);
    const open = db;
    return { db, stamp: stands ? stamp : null, close: () => open.close() };
  } catch {
    db?.close();
    return null;
  }
}

/** In a folder that this account may only read SQLite cannot make what it shares with a writer: then nobody may write. */
function openToLook(path: string): DatabaseSync {
  const db = new DatabaseSync(path, { readOnly: true, timeout: 1000 });
  try {
    db.prepare('SELECT 1 FROM head').get();
    return db;
  } catch (cause) {
    db.close();
    if (existsSync(`${path}-wal`)) throw cause;
    return new DatabaseSync(`${pathToFileURL(path)}?immutable=1`, { readOnly: true });
  }
}

/** Why rows, trees or indexes are not as they were written; `null`: they are. */
export function damageIn({ db }: HistoryLook): string | null {
  try {
    checkAll(db);
    return null;
  } catch (cause) {
    return cause instanceof Error ? cause.message : String(cause);
  }
}
