// Loaded before the program (node --import): ends it at a named point, as kill -9 there would. The program itself knows
// nothing of this: disk, database and network are watched from outside. SCANWARD_DIE_AT names the point; it counts from the
// moment that the file SCANWARD_DIE_WHEN is there, and once.
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { DatabaseSync, StatementSync } from 'node:sqlite';
import type { FailPoint } from './fail-point-names.ts';

const { SCANWARD_DIE_AT: wanted, SCANWARD_DIE_WHEN: when = '' } = process.env;

function pass(point: FailPoint): void {
  if (point !== wanted || !fs.existsSync(when)) return;
  fs.unlinkSync(when);
  process.kill(process.pid, 'SIGKILL');
}

/** What a transaction is for, by what it wrote. */
const STATEMENTS = [
  ['INSERT INTO inbox', 'receive'],
  ['INSERT INTO outbox', 'enqueue'],
  ['UPDATE outbox SET body = NULL', 'confirm'],
  ['INTO key_row', 'keys'],
] as const;
const touched = new Set<(typeof STATEMENTS)[number][1]>();

const run = StatementSync.prototype.run;
StatementSync.prototype.run = function (...values) {
  for (const [start, name] of STATEMENTS) if (this.sourceSQL.includes(start)) touched.add(name);
  return Reflect.apply(run, this, values);
};

const exec = DatabaseSync.prototype.exec;
DatabaseSync.prototype.exec = function (sql) {
  if (sql.startsWith('BEGIN')) touched.clear();
  if (sql !== 'COMMIT') {
    exec.call(this, sql);
    return;
  }
  const names = [...touched];
  for (const name of names) pass(`before ${name}`);
  exec.call(this, sql);
  for (const name of names) pass(`after ${name}`);
};

const datasync = fs.fdatasyncSync;
fs.fdatasyncSync = (fd) => {
  pass('before append');
  datasync(fd);
  pass('after append');
};
syncBuiltinESMExports();

const ask = globalThis.fetch;
globalThis.fetch = async (input, init) => {
  const isSend = init?.method === 'PUT' && /\/send\//.test(String(input));
  // The key of what is about to be sent, on its way to people's devices.
  const isShare = init?.method === 'PUT' && /\/sendToDevice\/m\.room\.encrypted\//.test(String(input));
  if (isSend) pass('before send');
  if (isShare) pass('before share');
  const answer = await ask(input, init);
  if (isSend) pass('after send');
  if (isShare) pass('after share');
  return answer;
};
