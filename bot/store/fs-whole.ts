import type { FsLike } from './fs-port.ts';

/** Writes all of `bytes`, going on after a short write. Throws when a write takes nothing. */
export function writeAll(fs: FsLike, fd: number, bytes: Uint8Array): void {
  let rest = bytes;
  while (rest.length > 0) {
    const taken = fs.write(fd, rest);
    if (taken <= 0) throw Object.assign(new Error('write took no bytes'), { code: 'EIO' });
    rest = rest.subarray(taken);
  }
}

/** Reads exactly `length` bytes at `position`, or fewer where the file ends. */
export function readAt(fs: FsLike, fd: number, position: number, length: number): Buffer {
  const into = Buffer.allocUnsafe(length);
  let got = 0;
  while (got < length) {
    const n = fs.read(fd, into.subarray(got), length - got, position + got);
    if (n === 0) break;
    got += n;
  }
  return into.subarray(0, got);
}

/** Bytes of a file. */
export function sizeOf(fs: FsLike, path: string): number {
  const fd = fs.open(path, 'r');
  try {
    return fs.size(fd);
  } finally {
    fs.close(fd);
  }
}

/** Reads a whole file. */
export function readFile(fs: FsLike, path: string): Buffer {
  const fd = fs.open(path, 'r');
  try {
    return readAt(fs, fd, 0, fs.size(fd));
  } finally {
    fs.close(fd);
  }
}

/** Makes names in a folder (new, renamed, removed files) last over a power cut. Windows cannot and need not. */
export function syncFolder(fs: FsLike, folder: string): void {
  if (process.platform === 'win32') return;
  const fd = fs.open(folder, 'r');
  try {
    fs.sync(fd);
  } finally {
    fs.close(fd);
  }
}

/** Puts `parts` into the file at `path` at one stroke: after a crash there is the old file or the new one, never half. */
export function replaceFile(fs: FsLike, folder: string, path: string, parts: Iterable<Uint8Array>): void {
  const draft = `${path}.new`;
  const fd = fs.open(draft, 'w');
  try {
    try {
      for (const part of parts) writeAll(fs, fd, part);
      fs.sync(fd);
    } finally {
      fs.close(fd);
    }
    fs.rename(draft, path);
  } catch (cause) {
    removeIfThere(fs, draft);
    throw cause;
  }
  syncFolder(fs, folder);
}

/** Removes a file that may not be there; a failure to remove is left for later. */
export function removeIfThere(fs: FsLike, path: string): void {
  try {
    if (fs.exists(path)) fs.remove(path);
  } catch {
    // A draft left behind is overwritten by the next one.
  }
}
