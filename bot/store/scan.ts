import { basename } from 'node:path';
import { Chain, type ChainFault, type Head, notAsWritten } from './chain.ts';
import type { FsLike } from './fs-port.ts';
import { readAt } from './fs-whole.ts';
import { noHash, prevOf, sumHolds } from './line.ts';
import type { Month } from './months.ts';
import { type RawLine, readLines } from './read-lines.ts';

/** A place in the journal's files. */
export interface Place {
  month: string;
  offset: number;
}

/** Where and why the journal stops reading as it was written. */
export interface Fault {
  /** The number of the line that should stand there. */
  n: number;
  /** The month file's name and the line in it, as an editor counts. */
  file: string;
  fileLine: number;
  place: Place;
  why: string;
}

/** How far the journal reads, and what is after that. */
export interface Scan {
  head: Head;
  /** Just after the last good line; null when there is none. */
  end: Place | null;
  /** Where the last line read starts; null where none was. */
  lastStart: Place | null;
  /** An unfinished last line: it was never answered. */
  tail: { place: Place; bytes: number } | null;
  fault: Fault | null;
}

interface Passed {
  month: Month;
  line: RawLine;
}

/** Follows the chain through the month files, from a place that `head` is known to be just before. */
export function scanJournal(fs: FsLike, months: readonly Month[], head: Head, from: Place | null): Scan {
  const chain = new Chain(head);
  let end = from;
  let last: Passed | null = null;
  let tail: Scan['tail'] = null;
  for (const passed of linesFrom(fs, months, from)) {
    const { month, line } = passed;
    if (month === months.at(-1) && unfinished(fs, month, line)) {
      tail = { place: { month: month.name, offset: line.start }, bytes: month.size - line.start };
      break;
    }
    const fault = line.whole ? chain.step(line.text) : { why: 'it is cut off', before: false };
    if (fault !== null) return stopAtFault(fs, passed, last, chain.head, fault);
    last = passed;
    end = { month: month.name, offset: line.end };
  }
  return checkLast(fs, { head: chain.head, end, lastStart: startOf(last), tail, fault: null }, last);
}

/** A fault may show only at the line after: where that one holds its own sum, it is the line before that does not. */
function stopAtFault(fs: FsLike, at: Passed, last: Passed | null, head: Head, fault: ChainFault): Scan {
  if (last !== null && !sumHolds(last.line.text)) return stopAt(fs, last, stepBack(head, last), notAsWritten);
  if (last !== null && fault.before) return stopAt(fs, last, stepBack(head, last), notAsWritten);
  return stopAt(fs, at, head, fault.why);
}

function* linesFrom(fs: FsLike, months: readonly Month[], from: Place | null): Generator<Passed> {
  for (const month of months) {
    if (from !== null && month.name < from.month) continue;
    const start = from?.month === month.name ? from.offset : 0;
    for (const line of readLines(fs, month.path, start)) yield { month, line };
  }
}

function startOf(last: Passed | null): Place | null {
  return last === null ? null : { month: last.month.name, offset: last.line.start };
}

/** What nothing follows, no chain proves: the last line is held against its own sum. */
function checkLast(fs: FsLike, scan: Scan, last: Passed | null): Scan {
  if (last === null || sumHolds(last.line.text)) return scan;
  return stopAt(fs, last, stepBack(scan.head, last), notAsWritten);
}

function stepBack(head: Head, last: Passed): Head {
  return { n: head.n - 1, hash: prevOf(last.line.text) ?? noHash };
}

function stopAt(fs: FsLike, at: Passed, head: Head, why: string): Scan {
  let fileLine = 1;
  for (const before of readLines(fs, at.month.path, 0, at.line.start)) if (before.whole) fileLine++;
  const place = { month: at.month.name, offset: at.line.start };
  const fault = { n: head.n + 1, file: basename(at.month.path), fileLine, place, why };
  return { head, end: head.n === 0 ? null : place, lastStart: null, tail: null, fault };
}

/** A last line with no line end; what a power cut never wrote may read as NUL bytes. */
function unfinished(fs: FsLike, month: Month, line: RawLine): boolean {
  if (!line.whole) return true;
  if (!line.text.includes('\0')) return false;
  const fd = fs.open(month.path, 'r');
  try {
    const rest = readAt(fs, fd, line.start, month.size - line.start);
    let end = rest.length;
    while (end > 0 && rest[end - 1] === 0) end--;
    return rest.subarray(0, end).indexOf(10) === -1;
  } finally {
    fs.close(fd);
  }
}
