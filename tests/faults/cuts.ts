import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { openStore } from '../../bot/store/store.ts';
import { verifyRecord } from '../../bot/store/verify.ts';
import { sampleTurn } from '../store/sample-turns.ts';

/**
 * Cuts the journal at each of its last `bytes` bytes in turn and starts on what is left: whole lines must stand,
 * the unfinished one be said and set aside, and the next line follow. Throws where not; gives how many cuts.
 */
export function cutEverywhere(folder: string, bytes: number, stride = 1): number {
  const store = openStore(folder);
  store.append(Array.from({ length: 12 }, (_, i) => sampleTurn(i, i % 2 === 0 ? { text: `tip ${i}` } : {})));
  store.close();
  const files = ['people.jsonl', 'texts.jsonl', join('journal', '2026-11.jsonl')].map((name) =>
    join(folder, name),
  );
  const whole = files.map((path) => readFileSync(path));
  const journal = whole[2] ?? Buffer.alloc(0);
  let cuts = 0;
  for (let cut = journal.length - 1; cut >= Math.max(0, journal.length - bytes); cut -= stride) {
    for (const [at, path] of files.entries()) writeFileSync(path, whole[at] ?? '');
    writeFileSync(files[2] ?? '', journal.subarray(0, cut));
    startAfterCut(folder, journal.subarray(0, cut));
    cuts++;
  }
  return cuts;
}

function startAfterCut(folder: string, left: Buffer): void {
  const lines = left.toString('latin1').split('\n').length - 1;
  const unfinished = left.length > 0 && left.at(-1) !== 10;
  const store = openStore(folder);
  try {
    expectSame('lines that stand', store.head.n, lines);
    expectSame(
      'said',
      store.notices.some((notice) => notice.includes('unfinished line')),
      unfinished,
    );
    expectSame('read-only', store.readOnly, null);
    store.append([sampleTurn(100, { text: 'after the cut' })]);
  } finally {
    store.close();
  }
  const verdict = verifyRecord(folder);
  expectSame('fault', verdict.fault, null);
  expectSame('lines at the end', verdict.head.n, lines + 1);
}

function expectSame(what: string, found: unknown, wanted: unknown): void {
  if (found !== wanted) throw new Error(`${what}: ${String(found)}, wanted ${String(wanted)}`);
}
