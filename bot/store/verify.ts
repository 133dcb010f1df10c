import canonicalize from 'canonicalize';
import { Chain, type Head } from './chain.ts';
import { openErasable } from './erasable.ts';
import { checkVersion, filesOf } from './folder.ts';
import { type FsLike, machineFs } from './fs-port.ts';
import { type JournalLine, parseLine, sumHolds } from './line.ts';
import { listMonths, type Month } from './months.ts';
import { start } from './open-journal.ts';
import { People, readPerson } from './people.ts';
import { readLines } from './read-lines.ts';
import { SealCheck } from './seal-check.ts';
import { openSnapshot, type Snapshot } from './snapshot.ts';
import { openStore } from './store.ts';
import { tableFault } from './table-check.ts';
import { readText, Texts } from './texts.ts';

/** What a check of the whole record found. */
export interface Verdict {
  /** The last line that stands; its hash can be written down or posted, so that later tampering shows. */
  head: Head;
  months: number;
  /** The first fault, in plain words with file and line; null when there is none. */
  fault: string | null;
  /** Names and texts that were asked to be forgotten. */
  forgotten: number;
  /** What the snapshot was held against. */
  snapshot: 'none' | 'its place in the journal' | 'a full refold';
}

/** Works out the state from lines 1 to `through`, as the snapshot's value is. */
export type Refold = (lines: Iterable<JournalLine>) => unknown;

/**
 * Reads the whole record as it lies on the disk and checks numbering, schema, canonical form, sums, chain, what is
 * kept beside the chain, and the snapshot (against `refold` where given). Takes no lock and changes nothing.
 */
export function verifyRecord(folder: string, options: { fs?: FsLike; refold?: Refold } = {}): Verdict {
  const fs = options.fs ?? machineFs;
  const files = filesOf(folder);
  checkVersion(fs, folder, true);
  // In this order, so that a bot writing meanwhile is never seen half way: the snapshot is of lines already
  // written, and names and texts are beside a line before it is.
  const hasSnapshot = fs.exists(files.snapshot);
  const snapshot = openSnapshot(fs, files.snapshot).data;
  const months = listMonths(fs, folder);
  const people = new People(fs, openErasable(fs, files.people, true));
  const texts = new Texts(fs, openErasable(fs, files.texts, true));
  const seals = new SealCheck(people, texts);
  const chain = new Chain(start);
  const verdict: Verdict = {
    head: start,
    months: months.length,
    fault: null,
    forgotten: 0,
    snapshot: 'none',
  };
  let passed = snapshot === null || snapshot.n === 0;
  for (const { month, text, whole, number } of numbered(fs, months)) {
    const fault = whole ? lineFault(chain, text, seals) : 'it is cut off';
    if (fault !== null) {
      return { ...verdict, head: chain.head, fault: `${month.name}.jsonl, line ${number}: ${fault}.` };
    }
    if (snapshot !== null && chain.head.n === snapshot.n) passed = chain.head.hash === snapshot.hash;
  }
  verdict.head = chain.head;
  verdict.forgotten = seals.forgotten;
  verdict.fault = tableFault(fs, files.people, readPerson) ?? tableFault(fs, files.texts, readText);
  if (!hasSnapshot) return verdict;
  if (snapshot === null || !passed || chain.head.n < snapshot.n) {
    verdict.fault ??= 'snapshot.json does not fit the record. It is worked out again at the next start.';
    return verdict;
  }
  verdict.snapshot = 'its place in the journal';
  if (options.refold !== undefined) refoldAgainst(verdict, snapshot, folder, fs, options.refold);
  return verdict;
}

function refoldAgainst(
  verdict: Verdict,
  snapshot: Snapshot,
  folder: string,
  fs: FsLike,
  refold: Refold,
): void {
  const store = openStore(folder, { fs, readOnly: true });
  try {
    verdict.snapshot = 'a full refold';
    const again = refold(upTo(store.lines(), snapshot.n));
    if (canonicalize(again) === canonicalize(snapshot.value)) return;
    verdict.fault ??= `snapshot.json is not what lines 1 to ${snapshot.n} of the record give.`;
  } finally {
    store.close();
  }
}

function* upTo(lines: Iterable<JournalLine>, n: number): Generator<JournalLine> {
  for (const line of lines) {
    if (line.n > n) return;
    yield line;
  }
}

function* numbered(
  fs: FsLike,
  months: readonly Month[],
): Generator<{ month: Month; text: string; whole: boolean; number: number }> {
  for (const month of months) {
    let number = 0;
    for (const { text, whole } of readLines(fs, month.path, 0, month.size)) {
      yield { month, text, whole, number: ++number };
    }
  }
}

/** What is wrong with a line, or null. */
function lineFault(chain: Chain, text: string, seals: SealCheck): string | null {
  const before = chain.head.n;
  const fault = chain.step(text);
  if (fault !== null)
    return fault.before
      ? `line ${before} of the record, just before it, is not as it was written`
      : fault.why;
  if (!sumHolds(text)) return 'it is not as it was written';
  const line = parseLine(text);
  if (line === null) return 'it does not read as a line of the record';
  if (canonicalize(line) !== text) return 'it is not in the form that lines are written in';
  return seals.fault(line);
}
