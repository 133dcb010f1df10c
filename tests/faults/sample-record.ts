import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { openStore } from '../../bot/store/store.ts';
import { sampleTurn } from '../store/sample-turns.ts';

/** Writes a record of `lines` lines over two months into a new folder, some with texts, one forgotten, a snapshot. */
export function writeSampleRecord(folder: string, lines: number): void {
  const store = openStore(folder);
  for (let i = 0; i < lines; i++) {
    const turn = sampleTurn(i, i % 3 === 0 ? { text: `used tip ${i} – é` } : {});
    store.append([i < lines / 3 ? { ...turn, at: turn.at.replace('2026-11', '2026-10') } : turn]);
  }
  store.forget({ line: 1 });
  store.saveSnapshot({ lines });
  store.close();
}

/** The files of a folder and the folders in it, by path. */
export function filesIn(folder: string, found = new Map<string, Buffer>()): Map<string, Buffer> {
  for (const name of readdirSync(folder)) {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) filesIn(path, found);
    else found.set(path, readFileSync(path));
  }
  return found;
}
