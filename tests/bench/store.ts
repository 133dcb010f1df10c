// Cost of the record beside bare calls in the same run. Prints ratios; the machine's speed is not in them.
import { closeSync, fdatasyncSync, mkdtempSync, openSync, readFileSync, readSync, rmSync, writeSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { listMonths } from '../../bot/store/months.ts';
import { machineFs } from '../../bot/store/fs-port.ts';
import { openStore, type Store } from '../../bot/store/store.ts';
import { sampleTurn } from '../store/sample-turns.ts';

const entries = Number(process.argv[2] ?? 1_000_000);
const rounds = 3000;
const work = mkdtempSync(join(process.argv[3] ?? tmpdir(), 'scanward-bench-'));
const folder = join(work, 'record');
let next = 0;

/** The journal's newest bytes, as many as were just appended. */
function measureAppends(store: Store, burst: number): { bare: number; ours: number } {
  const fd = openSync(join(work, 'bare'), 'a');
  const pairs: { bare: number; ours: number }[] = [];
  for (let i = 0; i < rounds / burst; i++) {
    const turns = Array.from({ length: burst }, () => sampleTurn(next++));
    const before = performance.now();
    const lines = store.append(turns);
    const middle = performance.now();
    const bytes = Buffer.from(`${lines.map((line) => JSON.stringify(line)).join('\n')}\n`);
    const start = performance.now();
    writeSync(fd, bytes);
    fdatasyncSync(fd);
    pairs.push({ ours: middle - before, bare: performance.now() - start });
  }
  closeSync(fd);
  return { ours: median(pairs.map((pair) => pair.ours)), bare: median(pairs.map((pair) => pair.bare)) };
}

function median(numbers: number[]): number {
  return numbers.sort((a, b) => a - b)[numbers.length >> 1] ?? 0;
}

function time(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/** Reads the journal's files a block at a time and parses each line: the floor of any refold. */
function bareParse(): number {
  let count = 0;
  for (const month of listMonths(machineFs, folder)) {
    const fd = openSync(month.path, 'r');
    const block = Buffer.allocUnsafe(1 << 19);
    let held = 0;
    for (;;) {
      const got = readSync(fd, block, held, block.length - held, null);
      if (got === 0) break;
      const filled = held + got;
      let start = 0;
      for (let end = block.indexOf(10); end !== -1 && end < filled; end = block.indexOf(10, start)) {
        JSON.parse(block.toString('utf8', start, end));
        count++;
        start = end + 1;
      }
      block.copyWithin(0, start, filled);
      held = filled - start;
    }
    closeSync(fd);
  }
  return count;
}

function count(lines: Iterable<unknown>): number {
  let n = 0;
  for (const _ of lines) n++;
  return n;
}

function best(runs: (() => void)[]): number[] {
  const times = runs.map(() => Number.POSITIVE_INFINITY);
  for (let round = 0; round < 3; round++) {
    for (const [at, run] of runs.entries()) times[at] = Math.min(times[at] ?? 0, time(run));
  }
  return times;
}

function say(what: string, figure: number | string): void {
  console.log(`${what.padEnd(66)} ${typeof figure === 'number' ? figure.toFixed(2) : figure}`);
}

let store = openStore(folder);
for (let i = 0; i < 1000; i++) store.append([sampleTurn(next++)]);
const small = measureAppends(store, 1);
const smallTen = measureAppends(store, 10);
while (store.head.n < entries) store.append(Array.from({ length: 2000 }, () => sampleTurn(next++)));
const large = measureAppends(store, 1);
const largeTen = measureAppends(store, 10);
say('machine', `${cpus().length} x ${cpus()[0]?.model.trim()}, Node ${process.version}`);
say('append, bare / ours, from 1,000 entries', small.bare / small.ours);
say(`append, bare / ours, from ${entries} entries`, large.bare / large.ours);
say('append in tens, bare / ours, from 1,000 entries', smallTen.bare / smallTen.ours);
say(`append in tens, bare / ours, from ${entries} entries`, largeTen.bare / largeTen.ours);
say('one append, microseconds, small and large', `${(small.ours * 1000).toFixed(0)} ${(large.ours * 1000).toFixed(0)}`);
say('large / small (each over bare)', large.ours / large.bare / (small.ours / small.bare));
store.saveSnapshot({ state: 'as folded' });
store.close();

say('open with snapshot, milliseconds', time(() => openStore(folder).close()));
rmSync(join(folder, 'snapshot.json'));
let opened = 0;
const openCold = time(() => {
  store = openStore(folder);
  opened = store.head.n;
});
say(`open with no snapshot (${opened} lines, every hash checked), milliseconds`, openCold);
const [parse = 0, lines = 0] = best([() => bareParse(), () => count(store.lines())]);
say('refold, bare JSON.parse / lines()', parse / lines);
say('open with every hash checked and refold, bare JSON.parse / ours', parse / (openCold + lines));
say('entries a second, lines()', Math.round((opened / lines) * 1000).toString());
say('first look for an item (index made), milliseconds', time(() => count(store.linesAbout('load:1'))));
say('lines about one tip', `${count(store.linesAbout('tip:4'))}`);
say('memory at the end, MiB', process.memoryUsage.rss() / 1048576);
say('bytes a line', readFileSync(listMonths(machineFs, folder)[0]?.path ?? '').length / 11520);
store.close();
rmSync(work, { recursive: true });
