import { hash, randomBytes } from 'node:crypto';
import { dirname } from 'node:path';
import type { FsLike } from './fs-port.ts';
import { readAt, replaceFile, syncFolder, writeAll } from './fs-whole.ts';
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
  let fd = -1;
  let known = -1;
  const size = (): number => {
    if (known === -1) known = wholeSize(fs, path);
    return known;
  };
  const handle = (): number => {
    if (fd === -1) fd = fs.open(path, 'a');
    return fd;
  };
  const cutTo = (to: number): void => {
    if (fs.size(handle()) === to) return;
    fs.truncate(fd, to);
    fs.datasync(fd);
    known = to;
  };
  if (!readOnly) {
    const isNew = !fs.exists(path);
    cutTo(size());
    if (isNew) syncFolder(fs, dirname(path));
  }
  return {
    path,
    get size() {
      return size();
    },
    append(lines) {
      const bytes = Buffer.from(lines.map((line) => `${line}\n`).join(''));
      const before = size();
      writeAll(fs, handle(), bytes);
      fs.datasync(fd);
      known = before + bytes.length;
    },
    cutTo,
    rewrite(change) {
      const parts = function* (): Generator<Uint8Array> {
        for (const line of readLines(fs, path, 0, size())) yield Buffer.from(`${change(line.text)}\n`);
      };
      try {
        replaceFile(fs, dirname(path), path, parts());
      } finally {
        // What was open may be the file before: never written to again, even if the new one does not open now.
        if (fd !== -1) fs.close(fd);
        fd = -1;
        known = -1;
      }
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
      const block = readAt(fs, fd, from, size - from);
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
