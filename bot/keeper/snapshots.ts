import type { Desk } from '../../core/desk/desk.ts';
import { HOUR } from '../../core/time/instant.ts';
import type { Store } from '../store/store.ts';
import { stampOf } from './open-desk.ts';

/** A snapshot is written after so many turns, so that a start never has many more lines to read … */
const EVERY_TURNS = 2_000;
/** … and once in so many hours. */
const EVERY_HOURS = 20;

/** Writes the desk's snapshots when they are due. */
export class Snapshots {
  readonly #store: Store;
  /** Number of the line that the last one was of. */
  #saved: number;
  #at: number | null = null;

  constructor(store: Store, saved: number) {
    this.#store = store;
    this.#saved = saved;
  }

  /** Writes one after so many turns. */
  afterTurn(desk: Desk): void {
    if (this.#store.head.n - this.#saved >= EVERY_TURNS) this.save(desk);
  }

  /** Writes one once a night. */
  nightly(desk: Desk, now: number): void {
    this.#at ??= now;
    if (now - this.#at < EVERY_HOURS * HOUR) return;
    this.#at = now;
    this.save(desk);
  }

  /** Writes one, where anything is new. */
  save(desk: Desk): void {
    const { head, readOnly } = this.#store;
    if (readOnly !== null || head.n === this.#saved || desk.turns !== head.n) return;
    this.#saved = head.n;
    try {
      keepSnapshot(this.#store, desk);
    } catch (error) {
      // No loss: the next start reads more of the journal. A full disk is told of when a note does not go in.
      if (!(error instanceof Error) || error.name !== 'StoreTrouble') throw error;
    }
  }
}

/**
 * Keeps what the desk knows, at the present head, with the history beside it. The snapshot first: where that fails, what is
 * on the disk still fits the one before.
 */
export function keepSnapshot(store: Store, desk: Desk): void {
  const saved = desk.save();
  if (saved === null) return;
  store.saveSnapshot(saved);
  if (desk.needsArchive) store.history.commit(stampOf(store.head));
}
