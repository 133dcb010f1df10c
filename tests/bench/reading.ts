// Reading beside general libraries that find entities, dates or intents in text: npm run bench:reading
import { spawnSync } from 'node:child_process';
import { corpusNotes, largeReader } from './reading-notes.ts';
import { peers } from './reading-peers.ts';

type Read = (note: string) => unknown;

const ROUNDS = 5;
/** The peers are slow: each sees every n-th note, ours both all of them and these alone. */
const EVERY = 8;

const notes = corpusNotes();
const some = notes.filter((_, i) => i % EVERY === 0);
const ours = largeReader();

function median(figures: readonly number[]): number {
  return figures.toSorted((a, b) => a - b)[Math.floor(figures.length / 2)] ?? Number.NaN;
}

/** Processor time of this process, ms: what other processes take is not in it, but garbage collection on other threads is. */
function cpu(work: () => unknown): number {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

function throughput(read: Read, all: readonly string[]): number {
  for (const note of all) read(note); // warm
  const rounds = Array.from({ length: ROUNDS }, () =>
    cpu(() => {
      for (const note of all) read(note);
    }),
  );
  return (1000 * all.length) / median(rounds);
}

async function throughputLater(
  read: (note: string) => Promise<unknown>,
  all: readonly string[],
): Promise<number> {
  for (const note of all) await read(note);
  const rounds: number[] = [];
  for (let i = 0; i < ROUNDS; i++) {
    const start = process.cpuUsage();
    for (const note of all) await read(note);
    const { user, system } = process.cpuUsage(start);
    rounds.push((user + system) / 1000);
  }
  return (1000 * all.length) / median(rounds);
}

/** Milliseconds of each note: the least of several rounds, since what a note costs cannot be more than its best. */
function perNote(read: Read, all: readonly string[]): readonly number[] {
  const best = all.map(() => Number.POSITIVE_INFINITY);
  for (let round = 0; round < ROUNDS; round++) {
    for (const [i, note] of all.entries()) {
      const start = performance.now();
      read(note);
      best[i] = Math.min(best[i] ?? 0, performance.now() - start);
    }
  }
  return best.toSorted((a, b) => a - b);
}

function say(what: string, figure: string): void {
  console.log(`${what.padEnd(58)} ${figure.padStart(12)}`);
}

const own = throughput(ours, notes);
say(`notes a second on one core (${notes.length} notes)`, own.toFixed(0));
const each = perNote(ours, notes);
for (const part of [0.5, 0.99, 0.999]) {
  say(`p${part * 100} a note, ms`, (each[Math.floor(part * each.length)] ?? Number.NaN).toFixed(3));
}
say('slowest note, ms', (each.at(-1) ?? Number.NaN).toFixed(3));

const text = notes.join('. ');
for (const kb of [1, 4, 16, 64]) {
  const long = text.slice(0, kb * 1024);
  ours(long);
  const ms = median(Array.from({ length: ROUNDS }, () => cpu(() => ours(long))));
  say(`a text of ${kb} kB: ms, and µs a kB`, `${ms.toFixed(1)} ${((1000 * ms) / kb).toFixed(0)}`);
}

const root = new URL('../../', import.meta.url).pathname;
const practice = `${root}config/practices/large.yaml`;
const starts = Array.from({ length: ROUNDS }, () => {
  const start = performance.now();
  const command = ['bot/entry.js', 'read', '--practice', practice];
  const { status, stderr } = spawnSync(process.execPath, command, {
    cwd: root,
    encoding: 'utf8',
    input: 'tip 4 sent',
  });
  if (status !== 0) throw new Error(`read ended with ${status}: ${stderr}`);
  return performance.now() - start;
});
say('start of `read` to its end, one note, ms (median)', median(starts).toFixed(0));

const same = throughput(ours, some);
console.log(`\nBeside others, every ${EVERY}th note (${some.length}):`);
say('ours', `${same.toFixed(0)} /s`);
for (const { name, read } of await peers()) {
  const theirs = await throughputLater(async (note) => read(note), some);
  say(name, `${theirs.toFixed(0)} /s   ours is ${(same / theirs).toFixed(1)} times as fast`);
}
