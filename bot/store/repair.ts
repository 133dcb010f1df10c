import { basename, join } from 'node:path';
import { filesOf } from './folder.ts';
import type { FsLike } from './fs-port.ts';
import { readAt, replaceFile, syncFolder } from './fs-whole.ts';
import { findFlippedBit } from './heal.ts';
import { journalFolder, listMonths, type Month } from './months.ts';
import { start } from './open-journal.ts';
import { type Patch, patchedFs } from './patched-fs.ts';
import { readPerson } from './people.ts';
import { readLines } from './read-lines.ts';
import { type Place, type Scan, scanJournal } from './scan.ts';
import { asideFolder, setAside } from './set-aside.ts';
import { readText } from './texts.ts';

/** What a repair would do, or did. */
export interface Repair {
  /** Single bits that are put back: the lines then are as they were written, to the hash. */
  patches: readonly Patch[];
  /** Where everything after is set aside, and how many bytes; null where all stands. */
  aside: { place: Place; bytes: number; why: string } | null;
  /** The last line that stands afterwards. */
  head: Scan['head'];
  /** In plain words, one a line. */
  words: readonly string[];
}

/** Works out what would make the journal whole again, changing nothing. */
export function planRepair(fs: FsLike, folder: string): Repair {
  const months = listMonths(fs, folder);
  const patches: Patch[] = [];
  const words: string[] = [];
  for (;;) {
    const patched = patchedFs(fs, patches);
    const scan = scanJournal(patched, months, start, null);
    if (scan.fault === null) return planned(months, patches, scan, scan.tail, 'it is unfinished', words);
    const { place, n, file, fileLine, why } = scan.fault;
    const path = join(journalFolder(folder), file);
    const patch = findFlippedBit(patched, path, place.offset, scan.head);
    if (patch === null) {
      return planned(
        months,
        patches,
        scan,
        { place },
        `line ${n} (${file}, line ${fileLine}): ${why}`,
        words,
      );
    }
    patches.push(patch);
    words.push(
      `Line ${n} (${file}, line ${fileLine}): one bit is wrong. Put back, the line is as it was written.`,
    );
  }
}

function planned(
  months: readonly Month[],
  patches: readonly Patch[],
  scan: Scan,
  after: { place: Place } | null,
  why: string,
  words: string[],
): Repair {
  const { head } = scan;
  if (after === null) return { patches, aside: null, head, words };
  let bytes = 0;
  for (const month of months) if (month.name > after.place.month) bytes += month.size;
  bytes += (months.find((month) => month.name === after.place.month)?.size ?? 0) - after.place.offset;
  words.push(
    `After line ${head.n}, ${why}.`,
    `Lines 1 to ${head.n} stand. The ${bytes} bytes after them are set aside, in the folder set-aside, and count no more.`,
  );
  return { patches, aside: { place: after.place, bytes, why }, head, words };
}

/**
 * Does what was planned. Each step lasts before the next; after a crash between two, planning again gives the rest.
 * The folder must be held.
 */
export function doRepair(fs: FsLike, folder: string, plan: Repair): void {
  for (const path of new Set(plan.patches.map((patch) => patch.path))) {
    replaceFile(fs, journalFolder(folder), path, patchedParts(fs, path, plan.patches));
  }
  if (plan.aside === null) return;
  const { place } = plan.aside;
  dropSnapshot(fs, folder);
  keepBeside(fs, folder, plan.head.n);
  const later = listMonths(fs, folder).filter((month) => month.name > place.month);
  for (const month of later.reverse()) {
    fs.makeFolder(asideFolder(folder));
    fs.rename(month.path, join(asideFolder(folder), `${month.name}-after-line-${plan.head.n}-whole.txt`));
    syncFolder(fs, asideFolder(folder));
    syncFolder(fs, journalFolder(folder));
  }
  setAside(fs, folder, place, plan.head.n);
}

/** It may be of lines that count no more: the next start works it out again. */
export function dropSnapshot(fs: FsLike, folder: string): void {
  const { snapshot } = filesOf(folder);
  if (!fs.exists(snapshot)) return;
  fs.remove(snapshot);
  syncFolder(fs, folder);
}

function* patchedParts(fs: FsLike, path: string, patches: readonly Patch[]): Generator<Uint8Array> {
  const patched = patchedFs(fs, patches);
  const fd = patched.open(path, 'r');
  try {
    const size = patched.size(fd);
    for (let at = 0; at < size; at += 1 << 20) yield readAt(patched, fd, at, Math.min(1 << 20, size - at));
  } finally {
    patched.close(fd);
  }
}

/** Names and texts of the lines that are set aside go with them; the tables lose them at the next start. */
export function keepBeside(fs: FsLike, folder: string, after: number): void {
  const { people, texts } = filesOf(folder);
  for (const [path, read] of [[people, readPerson] as const, [texts, readText] as const]) {
    if (!fs.exists(path)) continue;
    const kept: Uint8Array[] = [];
    for (const { text } of readLines(fs, path)) {
      if ((read(text)?.n ?? 0) > after) kept.push(Buffer.from(`${text}\n`));
    }
    if (kept.length === 0) continue;
    fs.makeFolder(asideFolder(folder));
    const name = `${basename(path, '.jsonl')}-after-line-${after}.jsonl`;
    replaceFile(fs, asideFolder(folder), join(asideFolder(folder), name), kept);
  }
}
