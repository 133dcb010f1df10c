import type { Entry } from './entry.ts';

/** Where the entries of a timeline may be parted, and the latest original turn before that. */
export interface CleanCut {
  readonly index: number;
  readonly turns: number;
}

/**
 * The last index up to `wanted` where no turn has entries on both sides, nor a later turn any before it; so that a turn's
 * number alone says on which side all of it is. `turns`: the latest turn before the first of these entries.
 */
export function cleanCut(entries: readonly Entry[], wanted: number, turns: number): CleanCut {
  let least = Number.POSITIVE_INFINITY;
  for (let index = entries.length - 1; index >= Math.max(0, wanted); index -= 1)
    least = Math.min(least, entries[index]?.turn ?? least);
  let most = turns;
  const before = entries.slice(0, Math.max(0, wanted)).map((entry) => {
    most = Math.max(most, entry.turn);
    return most;
  });
  for (let index = before.length; index > 0; index -= 1) {
    const latest = before[index - 1] ?? turns;
    if (latest < least) return { index, turns: latest };
    least = Math.min(least, entries[index - 1]?.turn ?? least);
  }
  return { index: 0, turns };
}
