import { chmodSync, closeSync, openSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { plainly } from '../../store/trouble.ts';

// Account, device, keys and what the homeserver said of the rooms are one unit: losing one spoils the rest, so they are
// one file, readable by its owner alone.
const schema = `
  CREATE TABLE IF NOT EXISTS fact (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT;
  CREATE TABLE IF NOT EXISTS key_base (name TEXT PRIMARY KEY, version INTEGER NOT NULL, shape TEXT NOT NULL) STRICT;
  CREATE TABLE IF NOT EXISTS key_row (
    base TEXT NOT NULL, store TEXT NOT NULL, id TEXT NOT NULL, body BLOB NOT NULL, PRIMARY KEY (base, store, id)
  ) STRICT, WITHOUT ROWID;
  CREATE TABLE IF NOT EXISTS unread (
    seq INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE, room TEXT NOT NULL, seen INTEGER NOT NULL, event TEXT NOT NULL
  ) STRICT;
  CREATE TABLE IF NOT EXISTS edit (id TEXT PRIMARY KEY, original TEXT NOT NULL) STRICT;
  CREATE TABLE IF NOT EXISTS thread (id TEXT PRIMARY KEY, root TEXT NOT NULL) STRICT;
  CREATE TABLE IF NOT EXISTS locked_room (room TEXT PRIMARY KEY) STRICT;
  CREATE TABLE IF NOT EXISTS moved_room (now TEXT PRIMARY KEY, home TEXT NOT NULL) STRICT;
  CREATE TABLE IF NOT EXISTS private_room (room TEXT PRIMARY KEY, person TEXT NOT NULL) STRICT;
  CREATE TABLE IF NOT EXISTS ledger_event (
    txn TEXT PRIMARY KEY, kind TEXT NOT NULL, first INTEGER NOT NULL, last INTEGER NOT NULL, part INTEGER NOT NULL,
    hash TEXT NOT NULL, event TEXT, session TEXT, backed INTEGER NOT NULL DEFAULT 0
  ) STRICT;
  CREATE INDEX IF NOT EXISTS ledger_reach ON ledger_event (kind, last);
`;

/** Opens `matrix.db` in a practice's folder; every transaction is on the disk when it returns. Throws StoreTrouble. */
export function openMatrixDb(folder: string): DatabaseSync {
  const path = join(folder, 'matrix.db');
  return plainly(`${path} could not be opened`, () => {
    closeSync(openSync(path, 'a', 0o600));
    chmodSync(path, 0o600);
    const db = new DatabaseSync(path, { timeout: 1000 });
    db.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA secure_delete = ON');
    db.exec(schema);
    return db;
  });
}

/** One remembered thing by name, or null. */
export function factOf(db: DatabaseSync, name: string): string | null {
  const value = db.prepare('SELECT value FROM fact WHERE name = ?').get(name)?.value;
  return typeof value === 'string' ? value : null;
}

export function setFact(db: DatabaseSync, name: string, value: string): void {
  db.prepare(
    'INSERT INTO fact (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value',
  ).run(name, value);
}

/** Runs several writes as one transaction. */
export function together<T>(db: DatabaseSync, work: () => T): T {
  db.exec('BEGIN IMMEDIATE');
  try {
    const result = work();
    db.exec('COMMIT');
    return result;
  } catch (cause) {
    if (db.isTransaction) db.exec('ROLLBACK');
    throw cause;
  }
}
