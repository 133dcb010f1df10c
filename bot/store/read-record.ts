import { Chain, type Head } from './chain.ts';
import type { FsLike } from './fs-port.ts';
import { headOf, type JournalLine, parseLine, prevOf } from './line.ts';
import type { Month } from './months.ts';
import { readLines } from './read-lines.ts';
import type { Place } from './scan.ts';
import { StoreDamage } from './trouble.ts';
import { type Opener, openLine } from './unseal.ts';

/** Where to read from and to, and whether the chain is to be checked on the way. */
export interface Reading {
  months: readonly Month[];
  /** A place where a line starts that is at most `after` + 1. */
  from: Place | null;
  /** Just after the last line that stands. */
  to: Place | null;
  after: number;
  /** Check every hash, and that the chain comes to this place when it passes it. */
  check: Head | null;
  opener: Opener;
}

/** The lines of the journal in order, with people and texts put back. Throws StoreDamage where they do not fit. */
export function* readRecord(fs: FsLike, reading: Reading): Generator<JournalLine> {
  let chain: Chain | null = null;
  let expected = 0;
  for (const { text } of textsOf(fs, reading)) {
    if (reading.check !== null) chain = checked(chain, text, reading.check);
    if (expected <= reading.after) {
      expected = headOf(text)?.n ?? 0;
      if (expected <= reading.after) continue;
    }
    const line = parseLine(text);
    if (line?.n !== expected) {
      throw new StoreDamage(`Line ${expected} of the record is not as it was written. Run "verify".`);
    }
    expected++;
    openLine(line, reading.opener);
    yield line;
  }
}

/** The texts of lines between two places. */
export function* textsOf(
  fs: FsLike,
  { months, from, to }: Pick<Reading, 'months' | 'from' | 'to'>,
): Generator<{ text: string; place: Place }> {
  if (to === null) return;
  for (const month of months) {
    if (month.name > to.month) return;
    if (from !== null && month.name < from.month) continue;
    const start = from?.month === month.name ? from.offset : 0;
    const end = to.month === month.name ? to.offset : undefined;
    for (const line of readLines(fs, month.path, start, end)) {
      yield { text: line.text, place: { month: month.name, offset: line.start } };
    }
  }
}

function checked(chain: Chain | null, text: string, known: Head): Chain {
  const on = chain ?? new Chain({ n: (headOf(text)?.n ?? 1) - 1, hash: prevOf(text) ?? '' });
  const fault = on.step(text);
  const { n, hash } = on.head;
  if (fault !== null || (n === known.n && hash !== known.hash)) {
    throw new StoreDamage(
      `The record is not as it was written at line ${fault === null ? n : n + 1}${fault === null ? '' : `: ${fault.why}`}. Run "verify".`,
    );
  }
  return on;
}
