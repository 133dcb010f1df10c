import { Checkpoints } from './checkpoints.ts';
import type { Entry } from './entry.ts';
import { foldEntry } from './fold/fold.ts';
import type { State } from './state.ts';

/** The state after the first so many of some entries, going on and going back along them. */
export class RunningFold {
  #state: State;
  #checkpoints: Checkpoints;
  #folded = 0;
  #changes = 0;

  /** `state`: before the first of the entries. It is this fold's from here on. */
  constructor(state: State) {
    this.#state = state;
    this.#checkpoints = new Checkpoints(state);
  }

  /** The state as far as it is folded. */
  get state(): State {
    return this.#state;
  }

  /** Another number whenever the state became, or is about to become, another. */
  get changes(): number {
    return this.#changes;
  }

  /** Something was changed behind the first of the entries. */
  changed(): void {
    this.#changes += 1;
  }

  /** Begins anew: `state` is that before the first of the entries from here on. */
  startFrom(state: State): void {
    this.#state = state;
    this.#folded = 0;
    this.#checkpoints = new Checkpoints(state);
  }

  /** Folds the entries before that index. */
  foldTo(entries: readonly Entry[], end: number): void {
    while (this.#folded < end) {
      const entry = entries[this.#folded];
      if (entry === undefined) break;
      foldEntry(this.#state, entry);
      this.#changes += 1;
      this.#folded += 1;
      if (Checkpoints.wanted(this.#folded, entries.length)) this.#checkpoints.keep(this.#folded, this.#state);
    }
  }

  /** Goes back to a state that holds nothing from that index on. */
  goBack(index: number): void {
    if (index >= this.#folded) return;
    const before = this.#checkpoints.back(index);
    this.#changes += 1;
    this.#state = before.state;
    this.#folded = before.count;
  }
}
