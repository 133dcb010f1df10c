// What the record costs beside bare calls in the same run: node tests/bench/store.ts [entries]. Prints ratios.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { cpus, tmpdir, totalmem } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { openStore } from '../../bot/store/store.ts';
import { sampleTurn } from '../store/sample-turns.ts';
import { measureAppends } from './store-append.ts';

const entries = Number(process.argv[2] ?? 1_000_000);
const work = mkdtempSync(join(tmpdir(), 'scanward-bench-'));
const folder = join(work, 'record');
const reader = fileURLToPath(new URL('store-read.ts', import.meta.url));

function say(what: string, figure: number): void {
  console.log(`${what.padEnd(72)} ${figure.toFixed(2)}`);
}

const gib = (totalmem() / 2 ** 30).toFixed(0);
console.log(
  `${cpus().length} x ${cpus()[0]?.model.trim()}, ${gib} GiB, Node ${process.version}, ${entries} entries`,
);
const store = openStore(folder);
// Warm: the first thousands run uncompiled.
while (store.head.n < 5000) store.append(Array.from({ length: 50 }, (_, i) => sampleTurn(store.head.n + i)));
const small = [1, 10].map((burst) => measureAppends(store, join(work, 'bare'), burst));
while (store.head.n < entries)
  store.append(Array.from({ length: 1000 }, (_, i) => sampleTurn(store.head.n + i)));
const large = [1, 10].map((burst) => measureAppends(store, join(work, 'bare'), burst));
for (const [at, burst] of [1, 10].entries()) {
  const [few, many] = [small[at], large[at]];
  if (few === undefined || many === undefined) continue;
  say(`append ${burst} a sync: bare write and fdatasync of the same bytes / ours`, many.bare / many.ours);
  say(
    `append ${burst} a sync: the same with the bytes made by JSON.stringify / ours`,
    many.stringified / many.ours,
  );
  say(`append ${burst} a sync: ours, microseconds`, many.ours * 1000);
  say(
    `append ${burst} a sync: cost over bare with many entries / with few`,
    many.ours / many.bare / (few.ours / few.bare),
  );
}
store.saveSnapshot({ state: 'as folded' });
store.close();
spawnSync(process.execPath, [reader, folder], { stdio: 'inherit' });
rmSync(work, { recursive: true });
