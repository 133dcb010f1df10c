import { join } from 'node:path';
import type { FsLike } from './fs-port.ts';
import { headOf } from './line.ts';
import { readLines } from './read-lines.ts';

/** One month's file of the journal. */
export interface Month {
  /** As in 2026-11. */
  name: string;
  path: string;
  /** Bytes. */
  size: number;
  /** Number of its first line; null where that line cannot be read. */
  first: number | null;
}

const monthFile = /^(\d{4}-\d\d)\.jsonl$/;

/** The folder of the month files. */
export function journalFolder(folder: string): string {
  return join(folder, 'journal');
}

/** The path of one month's file. */
export function monthPath(folder: string, name: string): string {
  return join(journalFolder(folder), `${name}.jsonl`);
}

/** The month files that hold anything, oldest first. */
export function listMonths(fs: FsLike, folder: string): Month[] {
  const inside = journalFolder(folder);
  if (!fs.exists(inside)) return [];
  const months: Month[] = [];
  for (const file of fs.list(inside).sort()) {
    const name = monthFile.exec(file)?.[1];
    if (name === undefined) continue;
    const path = join(inside, file);
    const size = sizeOf(fs, path);
    if (size > 0) months.push({ name, path, size, first: firstOf(fs, path) });
  }
  return months;
}

function sizeOf(fs: FsLike, path: string): number {
  const fd = fs.open(path, 'r');
  try {
    return fs.size(fd);
  } finally {
    fs.close(fd);
  }
}

/** A first line is short of this but for a note of 100 kB; then the rest of its block is read. */
function firstOf(fs: FsLike, path: string): number | null {
  for (const line of readLines(fs, path, 0, 256)) return headOf(line.text)?.n ?? null;
  return null;
}
