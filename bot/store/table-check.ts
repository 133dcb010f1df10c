import { basename } from 'node:path';
import type { FsLike } from './fs-port.ts';
import { readLines } from './read-lines.ts';

/**
 * What is wrong with a table beside the chain, in plain words, or null: every line must be as it is written. What
 * belongs to a line that was never written (after a crash, or being written now) is no fault: a start drops it.
 */
export function tableFault(
  fs: FsLike,
  path: string,
  read: (line: string) => { n: number } | null,
): string | null {
  if (!fs.exists(path)) return null;
  let number = 0;
  for (const { text, whole } of readLines(fs, path)) {
    number++;
    const entry = read(text);
    if (!whole || entry === null || JSON.stringify(entry) !== text) {
      return `${basename(path)}, line ${number}: it is not as it was written.`;
    }
  }
  return null;
}
