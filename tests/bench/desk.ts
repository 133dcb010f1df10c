// What a long record costs the whole program: node tests/bench/desk.ts [entries]. Each start is a process of its own.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { cpus, tmpdir, totalmem } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { openStore } from '../../bot/store/store.ts';
import { Desk } from '../../core/desk/desk.ts';
import { PRACTICE } from '../rehearse/play.ts';
import { longRecord } from './long-record.ts';

const entries = Number(process.argv[2] ?? 1_000_000);
const folder = mkdtempSync(join(tmpdir(), 'scanward-bench-'));
/** As `config/service/scanward.service` runs it. */
const FLAGS = ['--max-semi-space-size=2', '--heap-growing-percent=50'];
const start = fileURLToPath(new URL('desk-start.ts', import.meta.url));

const gib = (totalmem() / 2 ** 30).toFixed(0);
console.log(
  `${cpus().length} x ${cpus()[0]?.model.trim()}, ${gib} GiB, Node ${process.version}, ${entries} entries`,
);
const store = openStore(folder);
const practice = new Desk().settings(
  PRACTICE.replaceAll(', cycles: 100', ''),
  Date.parse('2006-01-02T07:00:00Z'),
);
store.append([{ at: '2006-01-02T07:00:00Z', turn: practice }]);
const burst: { at: string; turn: unknown }[] = [];
for (const turn of longRecord(2, entries)) {
  burst.push(turn);
  if (burst.length === 1000) store.append(burst.splice(0));
}
store.append(burst);
const through = store.head.n;
store.transport.enqueue(through, []);
store.close();
for (const what of ['from the first line', 'from the snapshot', 'from the snapshot, once more']) {
  const { status } = spawnSync(process.execPath, [...FLAGS, start, folder, what], { stdio: 'inherit' });
  if (status !== 0) process.exit(1);
}
for (const file of ['snapshot.json', 'history.db', 'index.db'])
  console.log(`${file}, MiB ${(statSync(join(folder, file)).size / 2 ** 20).toFixed(1)}`);
rmSync(folder, { recursive: true });
