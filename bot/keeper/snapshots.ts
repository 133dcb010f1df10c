import type { Desk } from '../../core/desk/desk.ts';
import { HOUR } from '../../core/time/instant.ts';
import type { Store } from '../store/store.ts';

/** A snapshot is written after so many turns, so that a start never has many more lines to read … */
const EVERY_TURNS = 2_000;
/** … and once in so many hours. */
const EVERY_HOURS = 20;
/** Past this many entries in memory the desk goes on from its own snapshot, as a restart would. */
const MOST_ENTRIES = 50_000;

/** Writes the desk's snapshots when they are due. */
export class Snapshots {
  readonly #store: Store;
  readonly #makeDesk: () => Desk;
  /** Number of the line that the last one was of. */
  #saved: number;
  #at: number | null = null;

  constructor(store: Store, makeDesk: () => Desk, saved: number) {
    this.#store = store;
    this.#makeDesk = makeDesk;
    this.#saved = saved;
  }

  /** Writes one after so many turns; gives the desk to go on with. */
  afterTurn(desk: Desk): Desk {
    return this.#store.head.n - this.#saved >= EVERY_TURNS ? this.save(desk) : desk;
  }

  /** Writes one once a night; gives the desk to go on with. */
  nightly(desk: Desk, now: number): Desk {
    this.#at ??= now;
    if (now - this.#at < EVERY_HOURS * HOUR) return desk;
    this.#at = now;
    return this.save(desk);
  }

  /** Writes one, where anything is new; gives the desk to go on with, which may be a lighter one that knows the same. */
  save(desk: Desk): Desk {
    const { head, readOnly } = this.#store;
    if (readOnly !== null || head.n === this.#saved || desk.turns !== head.n) return desk;
    const saved = desk.save();
    if (saved === null) return desk;
    this.#saved = head.n;
    try {
      this.#store.saveSnapshot(saved);
    } catch (error) {
      // No loss: the next start reads more of the journal. A full disk is told of when a note does not go in.
      if (!(error instanceof Error) || error.name !== 'StoreTrouble') throw error;
    }
    if (desk.size <= MOST_ENTRIES) return desk;
    const lighter = this.#makeDesk();
    return lighter.restore(saved) ? lighter : desk;
  }
}
