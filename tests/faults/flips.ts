import { openStore } from '../../bot/store/store.ts';
import { verifyRecord } from '../../bot/store/verify.ts';
import { sampleTurn } from '../store/sample-turns.ts';
import { memoryFs } from './memory-fs.ts';
import { filesIn, writeSampleRecord } from './sample-record.ts';

/**
 * Flips one bit at a time of the journal, the tables beside it and the snapshot, and asks `verify`. `stride` is how
 * many bits to go on each time (1: every bit). Gives how many were flipped, and those that were not found.
 */
export function flipBits(folder: string, lines: number, stride: number): { flips: number; missed: string[] } {
  writeSampleRecord(folder, lines);
  // One line after the snapshot, which nothing but its own sum vouches for.
  const store = openStore(folder);
  store.append([sampleTurn(lines)]);
  store.close();
  const files = filesIn(folder);
  const fs = memoryFs(files);
  const clean = verifyRecord(folder, { fs });
  if (clean.fault !== null) throw new Error(`The record is not whole before any flip: ${clean.fault}`);
  let flips = 0;
  let bit = 0;
  const missed: string[] = [];
  for (const [path, bytes] of files) {
    if (!/\.jsonl$|snapshot\.json$/.test(path)) continue;
    for (; bit < bytes.length * 8; bit += stride) {
      const flipped = Buffer.from(bytes);
      flipped[bit >> 3] = (flipped[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      files.set(path, flipped);
      flips++;
      if (found(folder, fs) === false) missed.push(`${path} bit ${bit}`);
    }
    bit -= bytes.length * 8;
    files.set(path, bytes);
  }
  return { flips, missed };
}

function found(folder: string, fs: ReturnType<typeof memoryFs>): boolean {
  try {
    return verifyRecord(folder, { fs }).fault !== null;
  } catch {
    return true; // a version that is none of ours is refused before anything is checked
  }
}
