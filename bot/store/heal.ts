import { Chain, type Head } from './chain.ts';
import type { FsLike } from './fs-port.ts';
import { readAt } from './fs-whole.ts';
import { parseLine, sumHolds } from './line.ts';
import type { Patch } from './patched-fs.ts';

/** As far as a line can reach that is searched: a note of 100 kB is longer, and is not searched bit by bit. */
const longest = 1 << 16;

/**
 * Looks for the one flipped bit that explains damage at `offset` of a file: with it put back, this line and the next
 * must read, be numbered on, hold their sums and follow `head` in the chain. What fits all of these by chance is one
 * in 2^32 for the sum alone, and one in 2^256 where a line follows. Null where no single bit explains it.
 */
export function findFlippedBit(fs: FsLike, path: string, offset: number, head: Head): Patch | null {
  const region = regionAt(fs, path, offset);
  if (region.length === 0 || region.length > longest) return null;
  for (let at = 0; at < region.length; at++) {
    const kept = region[at] ?? 0;
    for (let bit = 0; bit < 8; bit++) {
      region[at] = kept ^ (1 << bit);
      if (follows(region, head)) return { path, offset: offset + at, byte: kept ^ (1 << bit) };
    }
    region[at] = kept;
  }
  return null;
}

/** The damaged line with the two after it: a flipped line end joins two lines or makes two of one. */
function regionAt(fs: FsLike, path: string, offset: number): Buffer {
  const fd = fs.open(path, 'r');
  try {
    const bytes = readAt(fs, fd, offset, Math.min(longest + 1, fs.size(fd) - offset));
    let end = -1;
    for (let lines = 0; lines < 3; lines++) {
      const next = bytes.indexOf(10, end + 1);
      if (next === -1) break;
      end = next;
    }
    // With no line end to the file, it is the line end that may have been flipped.
    return end === -1 ? bytes : bytes.subarray(0, end + 1);
  } finally {
    fs.close(fd);
  }
}

function follows(region: Buffer, head: Head): boolean {
  const firstEnd = region.indexOf(10);
  // Most tries fail here, on the first line's sum.
  if (firstEnd === -1 || !sumHolds(region.toString('utf8', 0, firstEnd))) return false;
  if (region.at(-1) !== 10) return false;
  const chain = new Chain(head);
  const lines = region.toString('utf8').slice(0, -1).split('\n');
  return lines.every((text) => chain.step(text) === null && sumHolds(text) && parseLine(text) !== null);
}
