import type { Entry } from './entry.ts';

/** Place in the record: by when it happened, then by the original note's turn, then by place within the note. */
export interface Place {
  readonly when: number;
  readonly turn: number;
  readonly index: number;
}

/** Negative where the first comes before the second; 0 only for the same place. */
export function inOrder(a: Place, b: Place): number {
  return a.when - b.when || a.turn - b.turn || a.index - b.index;
}

/** Index of the first entry that does not come before that place. `entries` are in order. */
export function indexOfPlace(entries: readonly Entry[], place: Place): number {
  let low = 0;
  let high = entries.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    const entry = entries[middle];
    if (entry !== undefined && inOrder(entry, place) < 0) low = middle + 1;
    else high = middle;
  }
  return low;
}
