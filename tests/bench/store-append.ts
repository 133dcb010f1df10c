import { closeSync, fdatasyncSync, openSync, writeSync } from 'node:fs';
import type { Store } from '../../bot/store/store.ts';
import { sampleTurn } from '../store/sample-turns.ts';

/** Milliseconds, medians. */
export interface Appends {
  ours: number;
  /** write and fdatasync of as many bytes, made beforehand. */
  bare: number;
  /** The same, the bytes made from the turns by JSON.stringify. */
  stringified: number;
}

const rounds = 1500;

/** Appends turns in bursts of `burst`, in turn with bare appends to another file, the order changing each time. */
export function measureAppends(store: Store, barePath: string, burst: number): Appends {
  const fd = openSync(barePath, 'a');
  const times: Record<keyof Appends, number[]> = { ours: [], bare: [], stringified: [] };
  let bytes: Uint8Array = Buffer.alloc(600 * burst, 'x');
  const runs: Record<keyof Appends, (turns: ReturnType<typeof sampleTurn>[]) => void> = {
    ours: (turns) => void store.append(turns),
    bare: () => {
      writeSync(fd, bytes);
      fdatasyncSync(fd);
    },
    stringified: (turns) => {
      writeSync(fd, Buffer.from(`${turns.map((turn) => JSON.stringify(turn)).join('\n')}\n`));
      fdatasyncSync(fd);
    },
  };
  const orders: (keyof Appends)[][] = [
    ['ours', 'bare', 'stringified'],
    ['bare', 'stringified', 'ours'],
    ['stringified', 'ours', 'bare'],
  ];
  for (let round = 0; round < rounds; round++) {
    const turns = Array.from({ length: burst }, (_, i) => sampleTurn(store.head.n + i));
    for (const name of orders[round % 3] ?? []) {
      const start = performance.now();
      runs[name](turns);
      times[name].push(performance.now() - start);
    }
    if (round === 0) bytes = Buffer.alloc(lengthOfLast(store, burst), 'x');
  }
  closeSync(fd);
  return { ours: median(times.ours), bare: median(times.bare), stringified: median(times.stringified) };
}

/** Bytes that the last `burst` lines take in the journal, near enough: names are put back in these. */
function lengthOfLast(store: Store, burst: number): number {
  let length = 0;
  for (const line of store.lines(store.head.n - burst)) length += JSON.stringify(line).length + 1;
  return length;
}

function median(numbers: number[]): number {
  return numbers.sort((a, b) => a - b)[numbers.length >> 1] ?? 0;
}
