import { createHash } from 'node:crypto';
import { setTimeout as wait } from 'node:timers/promises';
import { HTTPError } from 'matrix-js-sdk/lib/matrix.js';
import type { Transport } from '../../../store/transport.ts';
import type { Sender } from '../out/sender.ts';
import { waitFor } from '../out/wait-for.ts';
import { type Batch, contentOf, LEDGER_TYPES, type LedgerKind, type Piece, piecesOf } from './batch.ts';
import type { FolderRows } from './folder-rows.ts';
import type { Posted, PostedPiece } from './posted.ts';
import type { OwnLedger } from './take-up.ts';

/** What is mirrored, from where and by what. */
export interface MirrorParts {
  readonly own: OwnLedger;
  readonly rows: FolderRows;
  readonly posted: Posted;
  readonly sender: Sender;
  readonly transport: Transport;
}

/**
 * Posts what the folder has and the ledger room has not: what stands beside a line first, then the line, each once, and
 * written down before it is sent.
 */
export class Mirror {
  readonly #parts: MirrorParts;
  /** What is in the room was held against what stands in the folder: somebody may have been forgotten meanwhile. */
  #checked = false;

  constructor(parts: MirrorParts) {
    this.#parts = parts;
  }

  /** Everything that belongs to lines 1 to `through`. */
  async upTo(through: number): Promise<void> {
    const { rows, posted } = this.#parts;
    await this.#finish();
    if (!this.#checked) await this.#putRight();
    this.#checked = true;
    const { epoch } = this.#parts.own;
    const after = (kind: LedgerKind) => posted.last(kind).number;
    await this.#all(() => rows.person(after('people'), through, epoch));
    await this.#all(() => rows.texts(after('texts'), through, epoch));
    await this.#all(() => rows.lines(after('lines'), through, epoch));
    await this.#all(() => rows.posts(after('posts'), through, epoch));
  }

  async #all(next: () => Batch | null): Promise<void> {
    for (let batch = next(); batch !== null; batch = next()) await this.#post(batch);
  }

  /** Written down first, so that a repeat after a crash is the same event. */
  async #post(batch: Batch): Promise<void> {
    for (const piece of piecesOf(batch)) {
      const transaction = transactionOf(piece);
      this.#parts.posted.plan(transaction, piece);
      if (this.#parts.posted.isThere(transaction)) continue;
      await this.#answersFirst();
      await this.#send(transaction, piece);
    }
  }

  async #send(transaction: string, piece: Piece): Promise<void> {
    const { sender } = this.#parts;
    const type = LEDGER_TYPES[piece.kind];
    for (let tries = 0; ; tries++) {
      try {
        const { event, session } = await sender.sendLocked(
          this.#parts.own.room,
          type,
          contentOf(piece),
          transaction,
        );
        this.#parts.posted.arrived(transaction, event, session);
        return;
      } catch (error) {
        const pause = error instanceof HTTPError ? waitFor(error, tries) : null;
        if (pause === null) throw error;
        await wait(pause);
      }
    }
  }

  /** A homeserver allows so many messages a second: answers to people have them first. */
  async #answersFirst(): Promise<void> {
    for (let looks = 0; looks < 20 && this.#parts.transport.unsent().length > 0; looks++) await wait(100);
  }

  /** What a crash or a lost line left half posted. */
  async #finish(): Promise<void> {
    for (const row of this.#parts.posted.open()) {
      const again = this.#again(row);
      if (again?.hash === row.hash) await this.#post(again);
      // Made anew from where it began. What was forgotten since stays written down, to be taken out should it have arrived.
      else if (row.kind === 'lines' || row.kind === 'posts') this.#parts.posted.drop(row.transaction);
    }
  }

  /** What was forgotten since it was posted is posted as it stands now, and what was there is taken out. */
  async #putRight(): Promise<void> {
    for (const kind of ['people', 'texts'] as const) {
      const batches = Map.groupBy(this.#parts.posted.all(kind), ({ first, last }) => `${first} ${last}`);
      for (const pieces of batches.values()) await this.#putRightBatch(pieces);
    }
  }

  #again({ kind, first, last }: PostedPiece): Batch | null {
    const { epoch } = this.#parts.own;
    switch (kind) {
      case 'lines':
        return this.#parts.rows.lines(first - 1, last, epoch);
      case 'people':
        return this.#parts.rows.person(first - 1, Number.POSITIVE_INFINITY, epoch);
      case 'texts':
        return this.#parts.rows.textsBetween(first, last, epoch);
      case 'posts':
        return null;
    }
  }

  /** The new one stands before the old one goes: a machine lost in between loses nothing that was to be kept. */
  async #putRightBatch(pieces: readonly PostedPiece[]): Promise<void> {
    const [first] = pieces;
    const now = first === undefined ? null : this.#again(first);
    if (now === null || pieces.every(({ hash }) => hash === now.hash)) return;
    await this.#post(now);
    for (const { transaction, event, hash } of pieces) {
      if (hash === now.hash || event === null) continue;
      await this.#parts.sender.redact(this.#parts.own.room, event, `${transaction}-gone`);
      this.#parts.posted.drop(transaction);
    }
  }
}

function transactionOf({ kind, epoch, first, last, part, hash }: Piece): string {
  const text = [kind, epoch, first, last, part, hash].join(' ');
  return `swl${createHash('sha256').update(text).digest('base64url').slice(0, 40)}`;
}
