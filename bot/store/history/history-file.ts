import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FsLike } from '../fs-port.ts';
import { sizeOf } from '../fs-whole.ts';
import { History } from './history.ts';

/** The history of a folder; `null`: in memory, of nobody's. */
export function openHistory(fs: FsLike, path: string | null): History {
  if (path === null)
    return new History({ path: ':memory:', make: () => undefined, size: () => 0, discard: () => undefined });
  return new History({
    path,
    make: () => {
      if (!fs.exists(path)) fs.close(fs.open(path, 'a'));
    },
    size: () => sizeOf(fs, path),
    discard: () => {
      // The names in it are not forgotten while it is there: a failure is told.
      for (const end of ['', '-wal', '-shm']) if (fs.exists(`${path}${end}`)) fs.remove(`${path}${end}`);
    },
  });
}

/** Works with a history that is gone afterwards: what is worked out only to compare need not fit into memory. */
export function withScratchHistory<T>(work: (history: History, path: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'scanward-'));
  const path = join(folder, 'history.db');
  const history = new History({ path, make: () => undefined, size: () => 0, discard: () => undefined });
  try {
    return work(history, path);
  } finally {
    history.close();
    rmSync(folder, { recursive: true });
  }
}
