import canonicalize from 'canonicalize';
import { Chain, type Head } from './chain.ts';
import { openErasable } from './erasable.ts';
import { type Expected, type Found, Lookout } from './expected-hash.ts';
import { checkVersion, filesOf } from './folder.ts';
import { type FsLike, machineFs } from './fs-port.ts';
import type { HistoryLook } from './history/look.ts';
import { parseLine, sumHolds } from './line.ts';
import { listMonths, type Month } from './months.ts';
import { start } from './open-journal.ts';
import { People, readPerson } from './people.ts';
import { readLines } from './read-lines.ts';
import { lookAtBoth, type Refold, refoldFault } from './refold-check.ts';
import { SealCheck } from './seal-check.ts';
import type { Snapshot } from './snapshot.ts';
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
  /** Whether the rows of history.db were held against that refold too. */
  history: boolean;
  /** What became of the hash that was expected; null where none was. */
  expected: Found | null;
}

/** What is to be looked for. */
export interface VerifyOptions {
  fs?: FsLike;
  refold?: Refold | undefined;
  /** A hash that was written down: whether the record still has it. */
  expected?: Expected | undefined;
}

/**
 * Reads the whole record as it lies on the disk and checks numbering, schema, canonical form, sums, chain, what is
 * kept beside the chain, and the snapshot and history.db (against `refold` where given). Takes no lock and changes nothing.
 */
export function verifyRecord(folder: string, options: VerifyOptions = {}): Verdict {
  const fs = options.fs ?? machineFs;
  const files = filesOf(folder);
  checkVersion(fs, folder, true);
  // In this order, so that a bot writing meanwhile is never seen half way: the snapshot is of lines already
  // written, and names and texts are beside a line before it is.
  const hasSnapshot = fs.exists(files.snapshot);
  const { snapshot, history } = lookAtBoth(fs, files, options.refold !== undefined);
  try {
    const lookout = options.expected === undefined ? null : new Lookout(options.expected);
    return verified(fs, folder, { hasSnapshot, snapshot, history, refold: options.refold, lookout });
  } finally {
    history?.close();
  }
}

interface Beside {
  hasSnapshot: boolean;
  snapshot: Snapshot | null;
  history: HistoryLook | null;
  refold: Refold | undefined;
  lookout: Lookout | null;
}

function verified(
  fs: FsLike,
  folder: string,
  { hasSnapshot, snapshot, history, refold, lookout }: Beside,
): Verdict {
  const files = filesOf(folder);
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
    history: false,
    expected: null,
  };
  let passed = snapshot === null || snapshot.n === 0;
  for (const { month, text, whole, number } of numbered(fs, months)) {
    const fault = whole ? lineFault(chain, text, seals) : 'it is cut off';
    if (fault !== null) {
      return { ...verdict, head: chain.head, fault: `${month.name}.jsonl, line ${number}: ${fault}.` };
    }
    lookout?.pass(chain.head);
    if (snapshot !== null && chain.head.n === snapshot.n) passed = chain.head.hash === snapshot.hash;
  }
  verdict.head = chain.head;
  verdict.expected = lookout?.found() ?? null;
  verdict.forgotten = seals.forgotten;
  verdict.fault = tableFault(fs, files.people, readPerson) ?? tableFault(fs, files.texts, readText);
  if (!hasSnapshot) return verdict;
  if (snapshot === null || !passed || chain.head.n < snapshot.n) {
    verdict.fault ??= 'snapshot.json does not fit the record. It is worked out again at the next start.';
    return verdict;
  }
  verdict.snapshot = 'its place in the journal';
  if (refold === undefined) return verdict;
  const again = refoldFault(fs, folder, { snapshot, history, refold });
  verdict.fault ??= again.fault;
  verdict.snapshot = 'a full refold';
  verdict.history = again.history;
  return verdict;
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
