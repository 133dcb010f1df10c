import { existsSync } from 'node:fs';
import type { DatabaseSync } from 'node:sqlite';
import { lookAtDb } from '../look-at-db.ts';
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
    db = lookAtDb(path);
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

/** Why rows, trees or indexes are not as they were written; `null`: they are. */
export function damageIn({ db }: HistoryLook): string | null {
  try {
    checkAll(db);
    return null;
  } catch (cause) {
    return cause instanceof Error ? cause.message : String(cause);
  }
}
