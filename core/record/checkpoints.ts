import { copyState } from './copy-state.ts';
import { cutTo, type Grown, grown } from './grown.ts';
import type { State } from './state.ts';

/** Entries between checkpoints: a correction of the last notes refolds at most this many. */
const EVERY = 256;
/** Kept of each doubling of age: about forty of a million entries, so that they stay small beside the record. */
const PER_DOUBLING = 4;

/** Of stops numbered from 1 to `last`, whether that one is kept: all of the latest, and fewer the further back. */
export function isWorthKeeping(number: number, last: number): boolean {
  const age = Math.floor((last - number) / PER_DOUBLING);
  const step = age < 1 ? 1 : 2 ** (Math.floor(Math.log2(age)) + 1);
  return number % step === 0;
}

interface Checkpoint {
  /** Entries folded into it. */
  readonly count: number;
  readonly state: State;
  readonly grown: Grown;
}

/** Copies of the state along the record: dense at its end, where corrections fall, and thinner the further back. */
export class Checkpoints {
  #kept: Checkpoint[] = [];
  /** The state before the first entry. */
  readonly #start: Checkpoint;

  constructor(start: State) {
    this.#start = { count: 0, state: copyState(start), grown: grown(start) };
  }

  /** True where the state after `count` entries is worth keeping while `total` are folded. */
  static wanted(count: number, total: number): boolean {
    if (count % EVERY !== 0 || count === 0) return false;
    return isWorthKeeping(count / EVERY, total / EVERY);
  }

  keep(count: number, state: State): void {
    this.#kept.push({ count, state: copyState(state), grown: grown(state) });
    this.#kept = this.#kept.filter((each) => each.count === count || Checkpoints.wanted(each.count, count));
  }

  /**
   * The state at the latest checkpoint with at most `count` entries, its own to fold on; later ones are forgotten, and
   * what grew since is cut back.
   */
  back(count: number): { readonly count: number; readonly state: State } {
    this.#kept = this.#kept.filter((each) => each.count <= count);
    const latest = this.#kept.at(-1) ?? this.#start;
    const state = copyState(latest.state);
    cutTo(state, latest.grown);
    return { count: latest.count, state };
  }
}
