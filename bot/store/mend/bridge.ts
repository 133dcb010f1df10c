import type { Head } from '../chain.ts';
import type { FsLike } from '../fs-port.ts';
import { headOf, prevOf } from '../line.ts';
import type { Month } from '../months.ts';
import { readLines } from '../read-lines.ts';
import type { Place } from '../scan.ts';
import type { ChainPlaces } from './chain-places.ts';

/** How a damaged stretch is passed: by the backup's lines up to `through`, and then from `rejoin` on, where the own lines follow. */
export interface Bridge {
  /** The backup's last line that is taken; that of the last own line that stands: none is. */
  readonly through: Head;
  /** `null`: no own line follows. */
  readonly rejoin: Place | null;
}

/**
 * A way past damage at `place`, after the line `head`, by the lines of a whole backup whose chain comes to that very line;
 * `null`: there is none.
 */
export function bridge(
  fs: FsLike,
  months: readonly Month[],
  head: Head,
  place: Place,
  backup: ChainPlaces,
): Bridge | null {
  const known = backup.hashOf(head.n) === head.hash;
  const hashBefore = (n: number): string | null =>
    n === head.n + 1 ? head.hash : known && n > head.n ? backup.hashOf(n - 1) : null;
  for (const { text, at } of linesAfter(fs, months, place)) {
    const n = headOf(text)?.n ?? 0;
    if (n <= head.n || prevOf(text) !== hashBefore(n)) continue;
    return { through: { n: n - 1, hash: hashBefore(n) ?? '' }, rejoin: at };
  }
  // With no line of its own on either side, nothing shows that the backup is of this record.
  if (!known || head.n === 0 || backup.head.n <= head.n) return null;
  return { through: backup.head, rejoin: null };
}

function* linesAfter(
  fs: FsLike,
  months: readonly Month[],
  place: Place,
): Generator<{ text: string; at: Place }> {
  for (const month of months) {
    if (month.name < place.month) continue;
    for (const line of readLines(fs, month.path, month.name === place.month ? place.offset : 0)) {
      const isDamaged = month.name === place.month && line.start === place.offset;
      if (line.whole && !isDamaged) yield { text: line.text, at: { month: month.name, offset: line.start } };
    }
  }
}
