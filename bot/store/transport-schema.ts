import { DatabaseSync } from 'node:sqlite';

// Bodies are cleared once done or sent: what was typed stays only where it can be forgotten. Ids stay for ever,
// so that a homeserver's repeat of an old event changes nothing.
const schema = `
  CREATE TABLE IF NOT EXISTS inbox (
    seq INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE, room TEXT NOT NULL, at TEXT NOT NULL,
    body TEXT, tries INTEGER NOT NULL DEFAULT 0, state TEXT NOT NULL DEFAULT 'open', why TEXT
  ) STRICT;
  CREATE INDEX IF NOT EXISTS inbox_open ON inbox (seq) WHERE state = 'open';
  CREATE TABLE IF NOT EXISTS outbox (
    seq INTEGER PRIMARY KEY, key TEXT NOT NULL UNIQUE, turn INTEGER NOT NULL, room TEXT NOT NULL,
    body TEXT, event TEXT
  ) STRICT;
  CREATE INDEX IF NOT EXISTS outbox_unsent ON outbox (seq) WHERE body IS NOT NULL;
  CREATE INDEX IF NOT EXISTS outbox_event ON outbox (event) WHERE event IS NOT NULL;
  CREATE TABLE IF NOT EXISTS fact (name TEXT PRIMARY KEY, value TEXT) STRICT;
`;

/**
 * Opens the database of what belongs to the chat. Its transactions last over a crash of the program; a power cut may take
 * the newest of them back, all of them from some point on. That is enough, and saves four waits for the disk a note: inbox
 * and position go back together and are read from the homeserver again, a turn in the journal is put into the outbox
 * again, and what was sent is sent again under the same transaction id. The journal alone is waited for.
 */
export function openTransportDb(path: string): DatabaseSync {
  const db = new DatabaseSync(path, { timeout: 1000 });
  try {
    db.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = NORMAL; PRAGMA secure_delete = ON');
    db.exec(schema);
    return db;
  } catch (cause) {
    db.close();
    throw cause;
  }
}
