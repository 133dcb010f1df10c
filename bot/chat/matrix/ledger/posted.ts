import type { DatabaseSync } from 'node:sqlite';
import type { Echo } from '../sync/listener.ts';
import type { LedgerKind, Piece } from './batch.ts';

/** An event of the ledger room as this machine knows it; `event` null while it is not known to have arrived. */
export interface PostedPiece {
  readonly transaction: string;
  readonly kind: LedgerKind;
  readonly first: number;
  readonly last: number;
  readonly hash: string;
  readonly event: string | null;
}

/** What of the record was posted to the ledger room: written down before it is sent, so that nothing is posted twice. */
export class Posted {
  readonly #db: DatabaseSync;

  constructor(db: DatabaseSync) {
    this.#db = db;
  }

  /** The last number of a kind, with the hash of its batch; 0 at the start. */
  last(kind: LedgerKind): { readonly number: number; readonly hash: string } {
    const row = this.#db
      .prepare('SELECT last, hash FROM ledger_event WHERE kind = ? ORDER BY last DESC LIMIT 1')
      .get(kind);
    return { number: Number(row?.last ?? 0), hash: String(row?.hash ?? '') };
  }

  plan(transaction: string, piece: Piece): void {
    const { kind, first, last, part, hash } = piece;
    this.#db
      .prepare(
        'INSERT OR IGNORE INTO ledger_event (txn, kind, first, last, part, hash) VALUES (?, ?, ?, ?, ?, ?)',
      )
      .run(transaction, kind, first, last, part, hash);
  }

  /** Whether a piece is known to be in the room. */
  isThere(transaction: string): boolean {
    const row = this.#db
      .prepare('SELECT 1 AS yes FROM ledger_event WHERE txn = ? AND event IS NOT NULL')
      .get(transaction);
    return row !== undefined;
  }

  /** `session`: the key that it was locked with. */
  arrived(transaction: string, event: string, session: string | null): void {
    this.#db
      .prepare('UPDATE ledger_event SET event = ?, session = coalesce(?, session) WHERE txn = ?')
      .run(event, session, transaction);
  }

  /** Our own events come back with their transactions: what went out before a crash is known to have gone out. */
  echoed(echoes: readonly Echo[]): void {
    if (echoes.length === 0) return;
    const ours = new Map(echoes.map((echo) => [echo.transaction, echo]));
    for (const { transaction } of this.open()) {
      const echo = ours.get(transaction);
      if (echo !== undefined) this.arrived(transaction, echo.event, echo.session);
    }
  }

  /** An event of before, found in the room. */
  adopt(piece: Piece, event: string): void {
    const transaction = `found/${event}`;
    this.plan(transaction, piece);
    this.#db.prepare('UPDATE ledger_event SET event = ?, backed = 1 WHERE txn = ?').run(event, transaction);
  }

  drop(transaction: string): void {
    this.#db.prepare('DELETE FROM ledger_event WHERE txn = ?').run(transaction);
  }

  dropAll(): void {
    this.#db.exec('DELETE FROM ledger_event');
  }

  /** Planned and not known to have arrived, in order. */
  open(): readonly PostedPiece[] {
    return this.#rows('WHERE event IS NULL ORDER BY rowid');
  }

  all(kind: LedgerKind): readonly PostedPiece[] {
    return this.#rows('WHERE kind = ? ORDER BY first', kind);
  }

  /** Keys of events that are not known to be in the backup. */
  sessionsNotBacked(): readonly string[] {
    const rows = this.#db
      .prepare('SELECT DISTINCT session FROM ledger_event WHERE backed = 0 AND session IS NOT NULL')
      .all();
    return rows.map(({ session }) => String(session));
  }

  backed(session: string): void {
    this.#db.prepare('UPDATE ledger_event SET backed = 1 WHERE session = ?').run(session);
  }

  #rows(where: string, ...values: string[]): readonly PostedPiece[] {
    const rows = this.#db
      .prepare(`SELECT txn, kind, first, last, hash, event FROM ledger_event ${where}`)
      .all(...values);
    return rows.map(({ txn, kind, first, last, hash, event }) => ({
      transaction: String(txn),
      kind: kindIn(kind),
      first: Number(first),
      last: Number(last),
      hash: String(hash),
      event: typeof event === 'string' ? event : null,
    }));
  }
}

/** How far the ledger is: lines that arrived, and those of them whose keys are in the backup. A hole ends it. */
export function ledgerReach(db: DatabaseSync): { readonly arrived: number; readonly backed: number } {
  const end = Number(
    db.prepare("SELECT max(last) AS n FROM ledger_event WHERE kind = 'lines'").get()?.n ?? 0,
  );
  const through = (missing: string): number => {
    const hole = db
      .prepare(`SELECT min(first) AS n FROM ledger_event WHERE kind = 'lines' AND ${missing}`)
      .get();
    return typeof hole?.n === 'number' ? hole.n - 1 : end;
  };
  return { arrived: through('event IS NULL'), backed: through('(event IS NULL OR backed = 0)') };
}

function kindIn(value: unknown): LedgerKind {
  if (value === 'lines' || value === 'texts' || value === 'people' || value === 'posts') return value;
  throw new Error(`matrix.db has an event of no kind: ${String(value)}`);
}
