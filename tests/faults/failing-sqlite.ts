import { DatabaseSync, StatementSync } from 'node:sqlite';

/** How a call of SQLite's fails: with its number (sqlite.org/rescode.html), once or from then on. */
export interface SqliteFailure {
  readonly errcode: number;
  readonly forGood: boolean;
  /** What was written since the last commit is gone with it, as SQLite may do when the disk is full. */
  readonly rollsBack: boolean;
}

/**
 * Runs a piece of work with the call of number `failAt` (from 0) failing, counting every call of SQLite on files whose name
 * ends so. Gives how many calls there were.
 */
export async function withFailingSqlite(
  ending: string,
  failAt: number,
  { errcode, forGood, rollsBack }: SqliteFailure,
  work: () => Promise<void>,
): Promise<number> {
  let calls = 0;
  const owners = new WeakMap<StatementSync, DatabaseSync>();
  const { exec, prepare } = DatabaseSync.prototype;
  const count = (db: DatabaseSync | undefined): void => {
    if (db?.location()?.endsWith(ending) !== true) return;
    const number = calls++;
    if (number !== failAt && !(forGood && number > failAt)) return;
    if (rollsBack && db.isTransaction) exec.call(db, 'ROLLBACK');
    throw Object.assign(new Error('made to fail'), { code: 'ERR_SQLITE_ERROR', errcode });
  };
  DatabaseSync.prototype.exec = function (sql) {
    count(this);
    exec.call(this, sql);
  };
  DatabaseSync.prototype.prepare = function (sql) {
    const statement = prepare.call(this, sql);
    owners.set(statement, this);
    return statement;
  };
  const { run, get, all, iterate } = StatementSync.prototype;
  const counted = <A extends unknown[], R>(call: (...values: A) => R) =>
    function (this: StatementSync, ...values: A): R {
      count(owners.get(this));
      return call.apply(this, values);
    };
  Object.assign(StatementSync.prototype, {
    run: counted(run),
    get: counted(get),
    all: counted(all),
    iterate: counted(iterate),
  });
  try {
    await work();
  } finally {
    Object.assign(DatabaseSync.prototype, { exec, prepare });
    Object.assign(StatementSync.prototype, { run, get, all, iterate });
  }
  return calls;
}
