import { median, percentile } from '../science/median.ts';
import { type Instant, MINUTE } from '../time/instant.ts';

/** Time from sent to sterile. */
export interface Turnaround {
  readonly medianMinutes: number;
  /** How much longer a slow load takes: the 90th percentile less the median. Absent when assumed. */
  readonly spreadMinutes?: number;
}

/** One finished load of the site, from its tips being sent to their being sterile. */
export interface FinishedLoad {
  readonly sentAt: Instant;
  readonly sterileAt: Instant;
}

export interface LearnedTurnaround extends Turnaround {
  /** Loads it was learned from; 0 when it is the assumed one. */
  readonly loads: number;
}

/** When a site's own loads are believed, and what is assumed until then. */
export interface TurnaroundLearning {
  readonly assumedMinutes: number;
  readonly leastLoads: number;
  readonly lastLoads: number;
}

/** Assumed: 90 min until the site has 5 loads, from then on the median of its last 20. */
const TURNAROUND_LEARNING: TurnaroundLearning = { assumedMinutes: 90, leastLoads: 5, lastLoads: 20 };

/** Turnaround of a site by its own loads, in any order; a load that ended no later than it was sent is a slip and left out. */
export function learnTurnaround(
  loads: readonly FinishedLoad[],
  learning: TurnaroundLearning = TURNAROUND_LEARNING,
): LearnedTurnaround {
  const minutes = loads
    .filter((load) => load.sterileAt > load.sentAt)
    .toSorted((a, b) => a.sterileAt - b.sterileAt)
    .slice(-learning.lastLoads)
    .map((load) => (load.sterileAt - load.sentAt) / MINUTE);
  const middle = median(minutes);
  const slow = percentile(minutes, 0.9);
  if (middle === undefined || slow === undefined || minutes.length < learning.leastLoads) {
    return { medianMinutes: learning.assumedMinutes, loads: 0 };
  }
  return { medianMinutes: middle, spreadMinutes: Math.max(0, slow - middle), loads: minutes.length };
}
