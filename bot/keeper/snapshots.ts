import type { Desk } from '../../core/desk/desk.ts';
import { HOUR } from '../../core/time/instant.ts';
import { stampOf } from '../store/snapshot.ts';
import type { Store } from '../store/store.ts';
import { isTrouble } from '../store/trouble.ts';

/** A snapshot is written after so many turns, so that a start never has many more lines to read … */
const EVERY_TURNS = 2_000;
/** … and once in so many hours. */
const EVERY_HOURS = 20;

/** Spent: it has handed over what the disk did not take, and must be opened again. */
export type Kept = 'kept' | 'desk is spent';

/** Writes the desk's snapshots when they are due. */
export class Snapshots {
  readonly #store: Store;
  readonly #every: number;
  /** Number of the line that the last one was of. */
  #saved: number;
  #at: number | null = null;

  constructor(store: Store, saved: number, every = EVERY_TURNS) {
    this.#store = store;
    this.#saved = saved;
    this.#every = every;
  }

  /** Writes one after so many turns. */
  afterTurn(desk: Desk): Kept {
    return this.#store.head.n - this.#saved >= this.#every ? this.save(desk) : 'kept';
  }

  /** Writes one once a night. */
  nightly(desk: Desk, now: number): Kept {
    this.#at ??= now;
    if (now - this.#at < EVERY_HOURS * HOUR) return 'kept';
    this.#at = now;
    return this.save(desk);
  }

  /** Writes one, where anything is new. */
  save(desk: Desk): Kept {
    const { head, readOnly } = this.#store;
    if (readOnly !== null || head.n === this.#saved || desk.turns !== head.n) return 'kept';
    this.#saved = head.n;
    try {
      keepSnapshot(this.#store, desk);
      return 'kept';
    } catch (error) {
      // No loss: the next start reads more of the journal. A full disk is told of when a note does not go in.
      if (isTrouble(error)) return 'desk is spent';
      throw error;
    }
  }
}

/**
 * Keeps what the desk knows, at the present head, with the history beside it. The snapshot first: where that fails, what is
 * on the disk still fits the one before.
 */
export function keepSnapshot(store: Store, desk: Desk): void {
  const saved = desk.save();
  // With the history in memory, what is on the disk fits the snapshot before: the two stay together.
  if (saved === null || (desk.needsArchive && !store.history.lasts)) return;
  store.saveSnapshot(saved);
  if (desk.needsArchive) store.history.commit(stampOf(store.head));
}
