import type { Head } from './chain.ts';
import type { FsLike } from './fs-port.ts';
import { readAt } from './fs-whole.ts';
import { hashOfLine, headOf, noHash } from './line.ts';
import { listMonths, type Month } from './months.ts';
import { type Fault, type Place, type Scan, scanJournal } from './scan.ts';
import { setAside } from './set-aside.ts';
import type { Snapshot } from './snapshot.ts';

/** The journal as found at opening. */
export interface OpenedJournal {
  months: Month[];
  head: Head;
  /** Just after the last line that stands, and where that line starts. */
  end: Place | null;
  lastStart: Place | null;
  /** What is wrong with it, in plain words; then nothing is written. */
  damage: string | null;
  notices: string[];
  /** The snapshot, where it fits. */
  snapshot: Snapshot | null;
  /** Lines after this place were checked now; those before are checked when they are read. */
  checkedAfter: Head;
}

/**
 * A journal of up to so many bytes before its snapshot is checked in full at every start (some 60,000 lines, 0.15 s);
 * of a longer one, only what came after: the rest is checked when it is read, and by `verify`.
 */
const checkedAtStart = 32 << 20;

/** Nothing yet. */
export const start: Head = { n: 0, hash: noHash };

/**
 * Reads the journal from the snapshot on, or from its start where no snapshot fits. An unfinished last line is set
 * aside (unless only looking); damage before the end is said and nothing is touched.
 */
export function openJournal(
  fs: FsLike,
  folder: string,
  kept: Snapshot | null,
  thrownAway: boolean,
  looking: boolean,
): OpenedJournal {
  const months = listMonths(fs, folder);
  const snapshot = kept !== null && fits(fs, months, kept) ? kept : null;
  const notices: string[] = [];
  if (thrownAway || snapshot !== kept) {
    notices.push('The snapshot does not fit the record. It was thrown away and is worked out again.');
  }
  const skip = snapshot !== null && sizeBefore(months, snapshot.end) > checkedAtStart ? snapshot : null;
  const from = skip === null ? start : { n: skip.n, hash: skip.hash };
  const scan = scanJournal(fs, months, from, skip?.end ?? null);
  const damage = scan.fault === null ? null : damageOf(months, scan, scan.fault);
  if (scan.tail !== null) notices.push(tailNotice(fs, folder, scan.tail, scan.head, looking));
  return {
    months,
    head: scan.head,
    end: scan.end,
    lastStart: scan.lastStart ?? snapshot?.start ?? null,
    damage,
    notices,
    snapshot: snapshot !== null && snapshot.n <= scan.head.n ? snapshot : null,
    checkedAfter: from,
  };
}

/** Whether the line that a snapshot was made at stands where it stood, and no closed month changed its size. */
function fits(fs: FsLike, months: readonly Month[], snapshot: Snapshot): boolean {
  if (snapshot.n === 0) return months.length === 0 && snapshot.hash === noHash;
  const before = months.filter((month) => month.name < snapshot.end.month);
  const closed = Object.keys(snapshot.closed);
  if (before.length !== closed.length) return false;
  if (!before.every((month) => snapshot.closed[month.name] === month.size)) return false;
  if (!months.some((month) => month.name === snapshot.end.month)) return false;
  const fd = fs.open(monthPathOf(months, snapshot.start.month), 'r');
  try {
    const { start: from, end } = snapshot;
    if (from.month !== end.month || end.offset <= from.offset) return false;
    const line = readAt(fs, fd, from.offset, end.offset - from.offset);
    const text = line.subarray(0, -1);
    const number = headOf(text.toString('utf8', 0, 80))?.n;
    return line.at(-1) === 10 && number === snapshot.n && hashOfLine(text) === snapshot.hash;
  } finally {
    fs.close(fd);
  }
}

function sizeBefore(months: readonly Month[], place: Place): number {
  let bytes = place.offset;
  for (const month of months) if (month.name < place.month) bytes += month.size;
  return bytes;
}

function monthPathOf(months: readonly Month[], name: string): string {
  return months.find((month) => month.name === name)?.path ?? '';
}

function tailNotice(
  fs: FsLike,
  folder: string,
  tail: { place: Place; bytes: number },
  head: Head,
  looking: boolean,
): string {
  const where = `${tail.place.month}.jsonl ends in an unfinished line (${tail.bytes} bytes after line ${head.n})`;
  if (looking) return `${where}. It was never answered.`;
  const name = setAside(fs, folder, tail.place, head.n);
  return `${where}. It was never answered; it is now in ${name}.`;
}

/** What stands, what does not, and what to do. */
function damageOf(months: readonly Month[], scan: Scan, fault: Fault): string {
  const at = `line ${fault.n} of the record (${fault.file}, line ${fault.fileLine})`;
  const stands = scan.head.n === 0 ? 'No line stands' : `Lines 1 to ${scan.head.n} stand`;
  const after = bytesAfter(months, fault.place);
  return `The record is damaged at ${at}: ${fault.why}. ${stands}; ${after} bytes after that do not count. Nothing is recorded until someone runs "repair".`;
}

function bytesAfter(months: readonly Month[], place: Place): number {
  let bytes = 0;
  for (const month of months) {
    if (month.name === place.month) bytes += month.size - place.offset;
    if (month.name > place.month) bytes += month.size;
  }
  return bytes;
}
