import { ruleValue } from '../../defaults/rule-value.ts';
import type { Practice } from '../../practice/practice.ts';
import type { Reading, State } from '../../record/state.ts';
import { HOUR, type Instant } from '../../time/instant.ts';

/** The last two readings that can be compared, and whether the room still changes too fast to calibrate in. */
export interface RoomTrend {
  readonly earlier: Reading;
  readonly later: Reading;
  readonly unsteady: boolean;
}

/**
 * How the air of a site (of a scanner's room, where readings name it) has changed since an instant, at most until another.
 * Readings that name a room are compared with that room's, the others with one another. `null`: no two to compare.
 */
export function roomTrend(
  { practice, state }: { readonly practice: Practice; readonly state: State },
  site: string,
  room: string | null,
  since: Instant,
  until: Instant,
): RoomTrend | null {
  const readings = (state.sites.get(site)?.readings ?? []).filter(
    ({ mark }) => mark.at >= since && mark.at <= until,
  );
  const pair = lastPair(readings, (each) => each === null || each === room) ?? lastPair(readings, () => true);
  if (pair === null) return null;
  const [earlier, later] = pair;
  const hours = (later.mark.at - earlier.mark.at) / HOUR;
  const least = ruleValue(practice, 'settleUnsteadyCelsiusPerHour', { site });
  // Readings carry one decimal: what only binary fractions take off the limit is on it.
  const unsteady = Math.abs(later.celsius - earlier.celsius) >= least * hours - 1e-9;
  return { earlier, later, unsteady: unsteady && later.celsius !== earlier.celsius };
}

function lastPair(
  readings: readonly Reading[],
  counts: (room: string | null) => boolean,
): readonly [Reading, Reading] | null {
  const own = readings.filter(({ room }) => counts(room));
  for (const [index, later] of [...own.entries()].reverse()) {
    const earlier = own.slice(0, index).findLast(({ room }) => room === later.room);
    if (earlier !== undefined) return [earlier, later];
  }
  return null;
}
