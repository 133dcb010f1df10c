import { join } from 'node:path';
import type { Head } from '../chain.ts';
import type { FsLike } from '../fs-port.ts';
import { findFlippedBit } from '../heal.ts';
import { journalFolder, listMonths, type Month } from '../months.ts';
import { start } from '../open-journal.ts';
import { type Patch, patchedFs } from '../patched-fs.ts';
import { type Place, scanJournal } from '../scan.ts';
import { bridge } from './bridge.ts';
import { type ChainPlaces, chainPlaces } from './chain-places.ts';
import { endOf, type Piece, startOf } from './pieces.ts';
import { planTables, type TablePlan } from './tables.ts';

/** What a repair with a backup would do. */
export interface MendPlan {
  /** The journal as it will be. */
  readonly pieces: readonly Piece[];
  readonly patches: readonly Patch[];
  readonly tables: TablePlan;
  /** The last line that stands afterwards. */
  readonly head: Head;
  /** The last own line before the rest is set aside; null where nothing is. */
  readonly cutAfter: number | null;
  /** Single bits are put back, or lines come from the backup or are set aside: files of the journal change. */
  readonly changesJournal: boolean;
  /** In plain words, one a line. */
  readonly words: readonly string[];
}

/** The way so far, from the first line on. */
interface Way {
  readonly fs: FsLike;
  readonly months: readonly Month[];
  readonly backup: ChainPlaces;
  readonly backupFs: FsLike;
  readonly patches: Patch[];
  readonly pieces: Piece[];
  readonly words: string[];
  head: Head;
  /** Where own lines are gone on with; null: they are not. */
  at: Place | null;
  cutAfter: number | null;
}

/**
 * Works out what would make a record whole again with the help of a whole backup in folder `from`, changing nothing: what is
 * damaged or missing here is taken from there where the chain fits, single bits are put back, what still does not fit is set
 * aside.
 */
export function planMend(fs: FsLike, folder: string, from: string): MendPlan {
  const backup = chainPlaces(fs, from);
  const months = listMonths(fs, folder);
  const patches: Patch[] = [];
  const way: Way = {
    ...{ fs: patchedFs(fs, patches), months, backup, backupFs: fs, patches },
    ...{ pieces: [], words: [], head: start, at: startOf(months), cutAfter: null },
  };
  while (way.at !== null) step(way, folder, way.at);
  const tables = planTables(fs, folder, from, way.pieces, way.cutAfter);
  const [only] = way.pieces;
  const isAsItWas =
    way.pieces.length === 1 &&
    only?.months === months &&
    samePlace(only.to, endOf(months)) &&
    patches.length === 0;
  const changesJournal = !isAsItWas && (months.length > 0 || way.pieces.length > 0);
  return {
    ...{ pieces: way.pieces, patches, tables, head: way.head, cutAfter: way.cutAfter, changesJournal },
    words: [...way.words, ...tables.words],
  };
}

function step(way: Way, folder: string, from: Place): void {
  const scan = scanJournal(way.fs, way.months, way.head, from);
  const { fault, tail } = scan;
  if (fault !== null) {
    const patch = findFlippedBit(
      way.fs,
      join(journalFolder(folder), fault.file),
      fault.place.offset,
      scan.head,
    );
    if (patch !== null) {
      way.patches.push(patch);
      way.words.push(
        `Line ${fault.n} (${fault.file}, line ${fault.fileLine}): one bit is wrong. It is put back.`,
      );
      return;
    }
  }
  const stop = fault?.place ?? tail?.place ?? endOf(way.months);
  if (!samePlace(stop, from)) way.pieces.push({ months: way.months, fs: way.fs, from, to: stop });
  way.head = scan.head;
  const where = fault === null ? '' : ` (${fault.file}, line ${fault.fileLine}: ${fault.why})`;
  const over = fault === null ? ahead(way) : bridge(way.fs, way.months, scan.head, stop, way.backup);
  if (over !== null) takeOver(way, over, where);
  way.at = over?.rejoin ?? null;
  if (way.at === null && !samePlace(stop, endOf(way.months))) setAside(way, scan.head.n, where);
}

/** The backup goes on where the record ends. */
function ahead({ head, backup }: Way): ReturnType<typeof bridge> {
  const goesOn = backup.head.n > head.n && head.n > 0 && backup.hashOf(head.n) === head.hash;
  return goesOn ? { through: backup.head, rejoin: null } : null;
}

function takeOver(
  way: Way,
  { through, rejoin }: NonNullable<ReturnType<typeof bridge>>,
  where: string,
): void {
  const { backup, head } = way;
  const from = backup.placeOf(head.n + 1);
  const to = backup.placeOf(through.n + 1);
  const lines = through.n === head.n + 1 ? `Line ${through.n}` : `Lines ${head.n + 1} to ${through.n}`;
  if (through.n > head.n && from !== null && to !== null) {
    way.pieces.push({ months: backup.months, fs: way.backupFs, from, to });
    const fits = rejoin === null ? 'before' : 'before and after';
    way.words.push(`${lines}${where}: taken from the backup, whose chain fits ${fits}.`);
  } else way.words.push(`What stands between line ${head.n} and the next${where} is left out.`);
  way.head = through;
}

function setAside(way: Way, stands: number, where: string): void {
  way.cutAfter = stands;
  way.words.push(
    `What stands here after line ${stands}${where} does not follow. It is set aside, in the folder set-aside, and counts no more.`,
  );
}

function samePlace(one: Place, other: Place): boolean {
  return one.month === other.month && one.offset === other.offset;
}
