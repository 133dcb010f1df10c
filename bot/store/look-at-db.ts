import { existsSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { pathToFileURL } from 'node:url';

/**
 * Opens a database to look only, also while another process writes. In a folder that this account, or anybody, may only read
 * SQLite cannot make the file that it shares with a writer: with no log beside it, it is read as a file that nobody changes.
 */
export function lookAtDb(path: string): DatabaseSync {
  const db = new DatabaseSync(path, { readOnly: true, timeout: 1000 });
  try {
    db.prepare('SELECT count(*) FROM sqlite_schema').get();
    return db;
  } catch (cause) {
    db.close();
    if (existsSync(`${path}-wal`)) throw cause;
    return new DatabaseSync(`${pathToFileURL(path)}?immutable=1`, { readOnly: true });
  }
}
