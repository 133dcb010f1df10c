import { DatabaseSync } from 'node:sqlite';
import { sumOfHead } from './sums.ts';

// `at`, `turn`, `place`: an entry's place in the record (when it happened, its note, where in it). `base`: the stop after
// which a row came, so that going back takes it off. Bodies are JSON. `sum`: see sums.ts.
const schema = `
  CREATE TABLE IF NOT EXISTS row (
    list TEXT NOT NULL, at INTEGER NOT NULL, key TEXT, body TEXT NOT NULL, base INTEGER NOT NULL, sum INTEGER NOT NULL,
    PRIMARY KEY (list, at)
  ) WITHOUT ROWID, STRICT;
  CREATE INDEX IF NOT EXISTS row_key ON row (list, key) WHERE key IS NOT NULL;
  CREATE TABLE IF NOT EXISTS value (
    map TEXT NOT NULL, key TEXT NOT NULL, base INTEGER NOT NULL, body TEXT NOT NULL, sum INTEGER NOT NULL,
    PRIMARY KEY (map, key, base)
  ) WITHOUT ROWID, STRICT;
  CREATE TABLE IF NOT EXISTS entry (
    at INTEGER NOT NULL, turn INTEGER NOT NULL, place INTEGER NOT NULL, about TEXT, body TEXT NOT NULL,
    sum INTEGER NOT NULL, PRIMARY KEY (at, turn, place)
  ) WITHOUT ROWID, STRICT;
  CREATE UNIQUE INDEX IF NOT EXISTS entry_turn ON entry (turn, place);
  CREATE INDEX IF NOT EXISTS entry_about ON entry (about) WHERE about IS NOT NULL;
  CREATE TABLE IF NOT EXISTS item (
    item TEXT NOT NULL, at INTEGER NOT NULL, turn INTEGER NOT NULL, place INTEGER NOT NULL, sum INTEGER NOT NULL,
    PRIMARY KEY (item, at, turn, place)
  ) WITHOUT ROWID, STRICT;
  CREATE TABLE IF NOT EXISTS base (
    number INTEGER PRIMARY KEY, at INTEGER NOT NULL, turn INTEGER NOT NULL, place INTEGER NOT NULL, body TEXT NOT NULL,
    sum INTEGER NOT NULL
  ) STRICT;
  CREATE TABLE IF NOT EXISTS head (
    only INTEGER PRIMARY KEY CHECK (only = 1), base INTEGER NOT NULL, stamp TEXT, sum INTEGER NOT NULL
  ) STRICT;
  INSERT OR IGNORE INTO head (only, base, stamp, sum) VALUES (1, 0, NULL, ${sumOfHead(0, null)});
`;

/** Opens the database of what is only history, at `path` or in memory with `:memory:`. */
export function openHistoryDb(path: string): DatabaseSync {
  const db = new DatabaseSync(path, { timeout: 1000 });
  try {
    // FULL: what a snapshot says is here must be here after a power cut.
    db.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA journal_size_limit = 8388608');
    db.exec(schema);
    return db;
  } catch (cause) {
    db.close();
    throw cause;
  }
}

export type Statements = ReturnType<typeof statementsOn>;

/** Every statement, made once. */
export function statementsOn(db: DatabaseSync) {
  return {
    rows: db.prepare('SELECT * FROM row WHERE list = ? AND at >= ? AND at < ? ORDER BY at'),
    keyed: db.prepare('SELECT * FROM row WHERE list = ? AND key >= ? AND key < ? ORDER BY at'),
    addRow: db.prepare('INSERT INTO row (list, at, key, body, base, sum) VALUES (?, ?, ?, ?, ?, ?)'),
    value: db.prepare('SELECT * FROM value WHERE map = ? AND key = ? ORDER BY base DESC LIMIT 1'),
    values: db.prepare('SELECT map, key, max(base) AS base, body, sum FROM value WHERE map = ? GROUP BY key'),
    setValue: db.prepare('INSERT OR REPLACE INTO value (map, key, base, body, sum) VALUES (?, ?, ?, ?, ?)'),
    dropValue: db.prepare('DELETE FROM value WHERE map = ? AND key = ?'),
    ofTurn: db.prepare('SELECT * FROM entry WHERE turn = ? ORDER BY place'),
    ofId: db.prepare('SELECT * FROM entry WHERE turn = ? AND place = ?'),
    about: db.prepare('SELECT * FROM entry WHERE about = ? ORDER BY at, turn, place'),
    after: db.prepare(
      'SELECT * FROM entry WHERE (at, turn, place) > (?, ?, ?) ORDER BY at, turn, place LIMIT ?',
    ),
    before: db.prepare(
      'SELECT * FROM entry WHERE (at, turn, place) < (?, ?, ?) ORDER BY at DESC, turn DESC, place DESC LIMIT ?',
    ),
    putEntry: db.prepare(
      'INSERT OR IGNORE INTO entry (at, turn, place, about, body, sum) VALUES (?, ?, ?, ?, ?, ?)',
    ),
    dropEntry: db.prepare('DELETE FROM entry WHERE at = ? AND turn = ? AND place = ?'),
    placesAbout: db.prepare('SELECT * FROM item WHERE item = ? ORDER BY at, turn, place'),
    putItem: db.prepare('INSERT OR IGNORE INTO item (item, at, turn, place, sum) VALUES (?, ?, ?, ?, ?)'),
    dropItem: db.prepare('DELETE FROM item WHERE item = ? AND at = ? AND turn = ? AND place = ?'),
    putBase: db.prepare(
      'INSERT OR REPLACE INTO base (number, at, turn, place, body, sum) VALUES (?, ?, ?, ?, ?, ?)',
    ),
    dropBase: db.prepare('DELETE FROM base WHERE number = ?'),
    baseNumbers: db.prepare('SELECT number FROM base ORDER BY number'),
    baseBefore: db.prepare(
      'SELECT * FROM base WHERE (at, turn, place) < (?, ?, ?) ORDER BY number DESC LIMIT 1',
    ),
    head: db.prepare('SELECT base, stamp, sum FROM head'),
    setHead: db.prepare('UPDATE head SET base = ?, stamp = ?, sum = ?'),
    dropRows: db.prepare('DELETE FROM row WHERE base > ?'),
    dropValues: db.prepare('DELETE FROM value WHERE base > ?'),
    dropBases: db.prepare('DELETE FROM base WHERE number > ?'),
  };
}
