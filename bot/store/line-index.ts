import { DatabaseSync } from 'node:sqlite';
import type { Head } from './chain.ts';
import type { Place } from './scan.ts';

/** What the index needs to know of a line. */
export interface Indexed {
  n: number;
  place: Place;
  items: readonly string[];
}

/** Which lines speak of an item, and where lines are. Kept in `index.db`; worked out again when it is lost. */
export interface LineIndex {
  /** The last line taken in, with its hash. */
  through(): Head;
  /** Takes in more lines in one go; `head` is the last of them. */
  take(lines: Iterable<Indexed>, head: () => Head): void;
  /** Numbers of the lines about an item, rising. */
  about(item: string): number[];
  /** A place where a line starts that is at most `n`, as near as the index knows; null before any. */
  near(n: number): Place | null;
  /** Forgets everything. */
  clear(): void;
  close(): void;
}

/** One place is kept for so many lines: the rest of the way is read. */
const stride = 64;

const schema = `
  CREATE TABLE IF NOT EXISTS about (item TEXT NOT NULL, n INTEGER NOT NULL, PRIMARY KEY (item, n)) WITHOUT ROWID, STRICT;
  CREATE TABLE IF NOT EXISTS place (n INTEGER PRIMARY KEY, month TEXT NOT NULL, start INTEGER NOT NULL) STRICT;
  CREATE TABLE IF NOT EXISTS head (only INTEGER PRIMARY KEY CHECK (only = 1), n INTEGER NOT NULL, hash TEXT NOT NULL) STRICT;
`;

/** Opens the index at `path`, or one in memory with `:memory:`. */
export function openLineIndex(path: string, noneYet: Head): LineIndex {
  const db = new DatabaseSync(path, { timeout: 1000 });
  // NORMAL: a power cut may lose the newest entries, which are then taken in again; it cannot spoil the file.
  db.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = NORMAL');
  db.exec(schema);
  const addAbout = db.prepare('INSERT OR IGNORE INTO about (item, n) VALUES (?, ?)');
  const addPlace = db.prepare('INSERT OR IGNORE INTO place (n, month, start) VALUES (?, ?, ?)');
  const setHead = db.prepare('INSERT OR REPLACE INTO head (only, n, hash) VALUES (1, ?, ?)');
  const getHead = db.prepare('SELECT n, hash FROM head');
  const getAbout = db.prepare('SELECT n FROM about WHERE item = ? ORDER BY n');
  const getNear = db.prepare('SELECT month, start FROM place WHERE n <= ? ORDER BY n DESC LIMIT 1');
  const whole = (work: () => void): void => {
    db.exec('BEGIN IMMEDIATE');
    try {
      work();
      db.exec('COMMIT');
    } catch (cause) {
      if (db.isTransaction) db.exec('ROLLBACK');
      throw cause;
    }
  };
  return {
    through: () => {
      const row = getHead.get();
      return row === undefined ? noneYet : { n: Number(row.n), hash: String(row.hash) };
    },
    take: (lines, head) =>
      whole(() => {
        let seen = 0;
        for (const line of lines) {
          for (const item of line.items) addAbout.run(item, line.n);
          if (seen++ % stride === 0) addPlace.run(line.n, line.place.month, line.place.offset);
        }
        const { n, hash } = head();
        setHead.run(n, hash);
      }),
    about: (item) => getAbout.all(item).map((row) => Number(row.n)),
    near: (n) => {
      const row = getNear.get(n);
      return row === undefined ? null : { month: String(row.month), offset: Number(row.start) };
    },
    clear: () => whole(() => db.exec('DELETE FROM about; DELETE FROM place; DELETE FROM head')),
    close: () => db.close(),
  };
}
