import type { DatabaseSync } from 'node:sqlite';
import type { MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import { noHash } from '../../../store/line.ts';
import { factOf, setFact, together } from '../matrix-db.ts';
import { type FoldedLedger, foldLedger, type KeptPiece } from './fold-ledger.ts';
import type { FolderRows } from './folder-rows.ts';
import { claim, claimOf, findLedgerRoom, makeLedgerRoom } from './ledger-room.ts';
import { Posted } from './posted.ts';
import { readLedger } from './read-ledger.ts';
import { FolderBehind, LedgerLocked, TakenOver } from './trouble.ts';

/** The ledger that this machine writes to. */
export interface OwnLedger {
  readonly room: string;
  readonly epoch: number;
}

/** What is asked to take it up. */
export interface TakingUp {
  readonly client: MatrixClient;
  readonly db: DatabaseSync;
  readonly rows: FolderRows;
  readonly practice: string;
  /** Number of the last line of the folder. */
  readonly head: number;
  readonly say: (line: string) => void;
  /** A new recovery key was just made: what the old one locked is given up. */
  readonly anew: boolean;
}

/**
 * Goes on with the ledger where this machine left it, or makes one. A folder that the ledger does not know (an archive put
 * back, `matrix.db` lost) is held against what the room has: its own lines from where they part make a new epoch. Throws
 * TakenOver where another machine writes now, FolderBehind where the room has more than the folder, LedgerLocked where it
 * cannot be read.
 */
export async function takeUpLedger(parts: TakingUp): Promise<OwnLedger> {
  const { client, db, rows, say } = parts;
  const own = ownLedger(db);
  const room = (await findLedgerRoom(client)) ?? (await makeLedgerRoom(client, parts.practice));
  const claimed = await claimOf(client, room);
  if (own?.room === room && own.epoch > 0) {
    if (claimed.epoch > own.epoch) throw new TakenOver();
    const { number, hash } = new Posted(db).last('lines');
    if (number === 0 || rows.hashOf(number) === hash) return own;
  }
  const { pieces, locked } = await readLedger(client, room);
  // What cannot be read could be more than the folder has: nothing is written over it unasked.
  if (locked > 0 && !parts.anew) throw new LedgerLocked(locked);
  const folded = foldLedger(pieces);
  const common = sharedLines(folded, rows, parts.head);
  if (common === parts.head && folded.lines.length > common)
    throw new FolderBehind(parts.head, folded.lines.length);
  const epoch = Math.max(claimed.epoch, folded.epoch) + 1;
  if (folded.lines.length > 0) say(`The ledger room has lines 1 to ${common} already; going on from there.`);
  keepOwnLedger(db, { room, epoch }, pieces, common);
  await claim(client, room, { epoch, device: client.getDeviceId() ?? '' });
  return { room, epoch };
}

/** Writes down which ledger is this machine's, and what of it is in the room already: lines 1 to `through`. */
export function keepOwnLedger(
  db: DatabaseSync,
  own: OwnLedger,
  pieces: readonly KeptPiece[],
  through: number,
): void {
  const posted = new Posted(db);
  together(db, () => {
    posted.dropAll();
    for (const { event, piece } of pieces) {
      // What each post became has to be told again by this machine, whose outbox counts anew.
      if (piece.kind === 'posts' || (piece.kind === 'lines' && piece.last > through)) continue;
      posted.adopt(piece, event);
    }
    setFact(db, 'ledger', JSON.stringify(own));
  });
}

function ownLedger(db: DatabaseSync): OwnLedger | null {
  const text = factOf(db, 'ledger');
  return text === null ? null : JSON.parse(text);
}

/** How many lines folder and ledger have alike. */
function sharedLines({ hashes }: FoldedLedger, rows: FolderRows, head: number): number {
  let low = 0;
  let high = Math.min(hashes.length, head);
  // Each line has the hash of the one before: alike at n means alike up to n.
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (rows.hashOf(middle) === (hashes[middle - 1] ?? noHash)) low = middle;
    else high = middle - 1;
  }
  return low;
}
