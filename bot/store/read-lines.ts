import type { FsLike } from './fs-port.ts';

/** A line of a file as it stands, and where: `end` is just after its line end. */
export interface RawLine {
  text: string;
  start: number;
  end: number;
  /** False for the rest of a file after its last line end. */
  whole: boolean;
}

/** Half a MiB at a time: larger gains nothing measured, smaller costs calls. */
const chunkSize = 1 << 19;
const lineEnd = 10;

/**
 * The lines of a file from byte `from` to byte `to` (its end when left out), in order, one block of
 * `chunk` bytes in memory (more only where a line is longer).
 */
export function* readLines(
  fs: FsLike,
  path: string,
  from = 0,
  to?: number,
  chunk = chunkSize,
): Generator<RawLine> {
  const fd = fs.open(path, 'r');
  try {
    const last = Math.min(to ?? fs.size(fd), fs.size(fd));
    let block = Buffer.allocUnsafe(Math.max(1, Math.min(chunk, last - from)));
    let held = 0; // bytes of an unfinished line at the start of the block
    let at = from; // file position of the start of the block
    while (at + held < last) {
      if (held === block.length) block = Buffer.concat([block], block.length * 2);
      const want = Math.min(block.length - held, last - at - held);
      const got = fs.read(fd, block.subarray(held), want, at + held);
      if (got === 0) break;
      const filled = held + got;
      let start = 0;
      let end = block.indexOf(lineEnd, held);
      while (end !== -1 && end < filled) {
        yield { text: block.toString('utf8', start, end), start: at + start, end: at + end + 1, whole: true };
        start = end + 1;
        end = block.indexOf(lineEnd, start);
      }
      block.copyWithin(0, start, filled);
      at += start;
      held = filled - start;
    }
    if (held > 0) yield { text: block.toString('utf8', 0, held), start: at, end: at + held, whole: false };
  } finally {
    fs.close(fd);
  }
}
