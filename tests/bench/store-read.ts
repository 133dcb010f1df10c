// Reading a long record beside bare JSON.parse of its lines, in a process of its own: node tests/bench/store-read.ts FOLDER
import { closeSync, openSync, readSync } from 'node:fs';
import { machineFs } from '../../bot/store/fs-port.ts';
import { listMonths } from '../../bot/store/months.ts';
import { openStore } from '../../bot/store/store.ts';

const [folder = ''] = process.argv.slice(2);

function say(what: string, figure: number): void {
  console.log(`${what.padEnd(72)} ${figure.toFixed(2)}`);
}

function time(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/** Reads the month files a block at a time and parses each line: the floor of any refold. */
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

function checked(): number {
  // Opened from the snapshot: what is before it is checked hash by hash as it is read.
  const store = openStore(folder, { readOnly: true });
  const n = count(store.lines());
  store.close();
  return n;
}

say(
  'start from the snapshot, milliseconds',
  time(() => openStore(folder).close()),
);
const store = openStore(folder);
count(store.lines()); // checked once; from now on it is not checked again
const best = [Infinity, Infinity, Infinity];
for (let round = 0; round < 4; round++) {
  const runs = [() => bareParse(), () => count(store.lines()), () => checked()];
  for (const [at, run] of runs.entries()) best[at] = Math.min(best[at] ?? 0, time(run));
}
const [bare = 0, plain = 0, hashed = 0] = best;
say('refold: bare JSON.parse per line / lines()', bare / plain);
say('refold with every hash checked: bare JSON.parse per line / lines()', bare / hashed);
say('refold with every hash checked: thousand entries a second', store.head.n / hashed);
say(
  'all lines about one tip, milliseconds',
  time(() => count(store.linesAbout('tip:4'))),
);
say(
  'one line by number, milliseconds',
  time(() => store.line(store.head.n >> 1)),
);
say('most memory of this process, MiB', process.resourceUsage().maxRSS / 1024);
store.close();
