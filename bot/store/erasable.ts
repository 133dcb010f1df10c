import { hash, randomBytes } from 'node:crypto';
import { dirname } from 'node:path';
import type { FsLike } from './fs-port.ts';
import { replaceFile, writeAll } from './fs-whole.ts';
import { readLines } from './read-lines.ts';

/** What stands for a name, or a text, that was asked to be forgotten. */
export const forgotten = '(forgotten)';
/** What stands for one whose place in the table is lost. */
export const lost = '(lost)';

/** A file of what can be erased: lines appended and synced before the line of the journal that needs them. */
export interface ErasableFile {
  readonly path: string;
  /** Bytes of whole lines. */
  readonly size: number;
  append(lines: readonly string[]): void;
  /** Takes back what was appended since the file had this size. */
  cutTo(size: number): void;
  /** Writes the file anew, each line as `change` gives it. */
  rewrite(change: (line: string) => string): void;
  close(): void;
}

/** Opens one; an unfinished last line is cut off, as its line of the journal was never written. */
export function openErasable(fs: FsLike, path: string, readOnly: boolean): ErasableFile {
  let fd = readOnly ? -1 : fs.open(path, 'a');
  let size = wholeSize(fs, path);
  const cutTo = (to: number): void => {
    if (fs.size(fd) === to) return;
    fs.truncate(fd, to);
    fs.datasync(fd);
    size = to;
  };
  if (!readOnly) cutTo(size);
  return {
    path,
    get size() {
      return size;
    },
    append(lines) {
      const bytes = Buffer.from(lines.map((line) => `${line}\n`).join(''));
      writeAll(fs, fd, bytes);
      fs.datasync(fd);
      size += bytes.length;
    },
    cutTo,
    rewrite(change) {
      const parts = function* (): Generator<Uint8Array> {
        for (const line of readLines(fs, path, 0, size)) yield Buffer.from(`${change(line.text)}\n`);
      };
      replaceFile(fs, dirname(path), path, parts());
      fs.close(fd);
      fd = fs.open(path, 'a');
      size = fs.size(fd);
    },
    close: () => {
      if (fd !== -1) fs.close(fd);
    },
  };
}

/** The size up to the last line end, looked for from the end in growing steps. */
function wholeSize(fs: FsLike, path: string): number {
  if (!fs.exists(path)) return 0;
  const fd = fs.open(path, 'r');
  try {
    const size = fs.size(fd);
    for (let back = 1 << 12; ; back *= 4) {
      const from = Math.max(0, size - back);
      const block = Buffer.alloc(size - from);
      fs.read(fd, block, block.length, from);
      const end = block.lastIndexOf(10);
      if (end !== -1) return from + end + 1;
      if (from === 0) return 0;
    }
  } finally {
    fs.close(fd);
  }
}

/** A new salt: 128 bits of chance, hex. */
export function newSalt(): string {
  return randomBytes(16).toString('hex');
}

/** The commitment to a name or text that a line of the journal carries: SHA-256 of salt and text. */
export function commitment(salt: string, text: string): string {
  return hash('sha256', salt + text, 'hex');
}
