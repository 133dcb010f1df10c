import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { openStore, type Store } from '../../bot/store/store.ts';
import { verifyRecord } from '../../bot/store/verify.ts';
import { sampleTurn } from '../store/sample-turns.ts';
import { FailingFs, type Failure } from './failing-fs.ts';

/** What a run through the store kept, and what it was told. */
interface Run {
  /** Numbers of sample turns whose append came back. */
  kept: number[];
  messages: string[];
  forgot: boolean;
}

const failures: readonly Failure[] = [
  ...['ENOSPC', 'EIO', 'EACCES'].flatMap((code) => [
    { code, forGood: false },
    { code, forGood: true },
  ]),
  'short write',
  'half a write, then full',
];

/** Everything that the store does with files: open, append, next month, snapshot, forget, tail set aside. */
function useStore(folder: string, fs: FailingFs): Run {
  const run: Run = { kept: [], messages: [], forgot: false };
  const attempt = (work: () => void): void => {
    try {
      work();
    } catch (cause) {
      if (!(cause instanceof Error)) throw cause;
      run.messages.push(`${cause.name}: ${cause.message}`);
    }
  };
  let store: Store | null = null;
  attempt(() => {
    store = openStore(folder, { fs: fs.fs });
  });
  const open = (): Store => {
    if (store === null) throw Object.assign(new Error('Not open.'), { name: 'StoreTrouble' });
    return store;
  };
  const append = (numbers: number[], month = '2026-11'): void =>
    attempt(() => {
      open().append(numbers.map((i) => turnOf(i, month)));
      run.kept.push(...numbers);
    });
  append([10]);
  append([11, 12]);
  append([13], '2026-12');
  attempt(() => open().saveSnapshot({ n: open().head.n }));
  attempt(() => {
    open().forget({ line: 1 });
    run.forgot = true;
  });
  append([14], '2026-12');
  attempt(() => void [...open().lines()]);
  attempt(() => open().close());
  return run;
}

function turnOf(i: number, month: string) {
  const turn = sampleTurn(i, { text: `tip ${i}`, by: `Person ${i}` });
  return { ...turn, at: turn.at.replace('2026-11', month) };
}

/** A folder with one line kept and an unfinished one after it. */
function beforeRun(folder: string): void {
  mkdirSync(folder, { recursive: true });
  const store = openStore(folder);
  store.append([turnOf(0, '2026-11')]);
  store.close();
  const fs = new FailingFs(Number.POSITIVE_INFINITY, 'short write').fs;
  const fd = fs.open(join(folder, 'journal', '2026-11.jsonl'), 'a');
  fs.write(fd, Buffer.from('{"at":"2026-11-23T0'));
  fs.close(fd);
}

/**
 * Lets each file system call of a whole run fail in turn, in each way. After each, with the disk well again: the
 * record verifies, everything whose append came back is in it, nothing is there twice or half, and every message was
 * plain. `stride` skips calls. Gives how many runs there were.
 */
export function failEveryCall(folder: string, stride = 1): number {
  let runs = 0;
  for (const [number, failure] of failures.entries()) {
    // Writes are few: each of them fails. Of all calls, each way to fail starts at another one.
    const step = typeof failure === 'string' ? 1 : stride;
    for (let at = step === 1 ? 0 : number % step; ; at += step) {
      rmSync(folder, { recursive: true, force: true });
      beforeRun(folder);
      const fs = new FailingFs(at, failure);
      const run = useStore(folder, fs);
      if (at >= fs.calls) break;
      runs++;
      checkAfter(folder, run, `${JSON.stringify(failure)} at call ${at} (${fs.failed})`);
    }
  }
  return runs;
}

function checkAfter(folder: string, run: Run, where: string): void {
  for (const message of run.messages) {
    if (!/^Store(Trouble|Busy): [A-Z/].*[.]$/s.test(message))
      throw new Error(`${where}: not plain: ${message}`);
  }
  const store = openStore(folder);
  const found: number[] = [];
  for (const line of store.lines())
    found.push(Number(/tip (\d+)/.exec(JSON.stringify(line.turn))?.[1] ?? Number.NaN));
  store.append([turnOf(99, '2026-12')]);
  store.close();
  const { fault } = verifyRecord(folder);
  if (fault !== null) throw new Error(`${where}: ${fault}`);
  const wanted = run.kept.filter((i) => !found.includes(i));
  if (wanted.length > 0) throw new Error(`${where}: lost ${wanted.join()} of ${found.join()}`);
  const numbers = found.filter((i) => !Number.isNaN(i));
  if (new Set(numbers).size !== numbers.length) throw new Error(`${where}: twice: ${found.join()}`);
}
