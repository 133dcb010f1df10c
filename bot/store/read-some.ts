import type { FsLike } from './fs-port.ts';
import { headOf, type JournalLine, parseLine } from './line.ts';
import type { Month } from './months.ts';
import { textsOf } from './read-record.ts';
import type { Place } from './scan.ts';
import { StoreDamage } from './trouble.ts';
import { type Opener, openLine } from './unseal.ts';

/** Where lines are looked up. */
export interface Shelves {
  months: readonly Month[];
  /** Just after the last line that stands. */
  to: Place | null;
  /** A place where a line starts that is at most `n`. */
  near(n: number): Place | null;
  opener: Opener;
}

/** Up to so many lines between two wanted ones it is cheaper to read on than to open the file anew. */
const farApart = 256;

/** The lines of these numbers, which must rise. */
export function* readSome(fs: FsLike, shelves: Shelves, numbers: readonly number[]): Generator<JournalLine> {
  let at = 0;
  while (at < numbers.length) {
    const from = shelves.near(numbers[at] ?? 0);
    const before = at;
    for (const { text } of textsOf(fs, { months: shelves.months, from, to: shelves.to })) {
      const wanted = numbers[at] ?? 0;
      if ((headOf(text)?.n ?? 0) < wanted) continue;
      yield opened(text, wanted, shelves.opener);
      at++;
      if ((numbers[at] ?? Number.POSITIVE_INFINITY) - wanted > farApart) break;
    }
    if (at === before) return;
  }
}

function opened(text: string, n: number, opener: Opener): JournalLine {
  const line = parseLine(text);
  if (line?.n !== n) throw new StoreDamage(`Line ${n} of the record is not as it was written. Run "verify".`);
  openLine(line, opener);
  return line;
}
