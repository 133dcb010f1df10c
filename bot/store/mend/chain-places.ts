import type { Head } from '../chain.ts';
import type { FsLike } from '../fs-port.ts';
import { hashOfLine, noHash } from '../line.ts';
import { listMonths, type Month } from '../months.ts';
import { readLines } from '../read-lines.ts';
import type { Place } from '../scan.ts';

/** A whole journal by line number: hash of each line, and where it starts. 48 bytes a line in memory. */
export interface ChainPlaces {
  readonly months: readonly Month[];
  readonly head: Head;
  /** Of line `n`; of number 0 the hash before the first. */
  hashOf(n: number): string | null;
  /** Where line `n` starts; the end of the journal for the number after the last. */
  placeOf(n: number): Place | null;
}

/** Reads a journal that is known to be whole. */
export function chainPlaces(fs: FsLike, folder: string): ChainPlaces {
  const months = listMonths(fs, folder);
  const hashes: Buffer[] = [];
  const places: Place[] = [];
  let end: Place | null = null;
  for (const month of months)
    for (const line of readLines(fs, month.path)) {
      if (!line.whole) break;
      hashes.push(Buffer.from(hashOfLine(line.text), 'hex'));
      places.push({ month: month.name, offset: line.start });
      end = { month: month.name, offset: line.end };
    }
  const hashOf = (n: number): string | null => (n === 0 ? noHash : (hashes[n - 1]?.toString('hex') ?? null));
  const n = hashes.length;
  return {
    months,
    head: { n, hash: hashOf(n) ?? noHash },
    hashOf,
    placeOf: (at) => (at === n + 1 ? end : (places[at - 1] ?? null)),
  };
}
