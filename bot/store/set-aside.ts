import { join } from 'node:path';
import type { FsLike } from './fs-port.ts';
import { readAt, replaceFile } from './fs-whole.ts';
import { hashOfLine } from './line.ts';
import { monthPath } from './months.ts';
import type { Place } from './scan.ts';

/** The folder of what was set aside. */
export function asideFolder(folder: string): string {
  return join(folder, 'set-aside');
}

/**
 * Moves everything of a month's file from `place` on into a file beside the journal, synced there before it is cut
 * here. Repeated after a crash it makes the same file again, not a second one. Gives the file's name.
 */
export function setAside(fs: FsLike, folder: string, place: Place, after: number): string {
  const path = monthPath(folder, place.month);
  const fd = fs.open(path, 'r+');
  try {
    const size = fs.size(fd);
    const rest = readAt(fs, fd, place.offset, size - place.offset);
    const name = `${place.month}-after-line-${after}-${hashOfLine(rest).slice(0, 8)}.txt`;
    fs.makeFolder(asideFolder(folder));
    replaceFile(fs, asideFolder(folder), join(asideFolder(folder), name), [rest]);
    fs.truncate(fd, place.offset);
    fs.sync(fd);
    return join('set-aside', name);
  } finally {
    fs.close(fd);
  }
}
