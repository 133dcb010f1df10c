import { type Instant, MINUTE } from '../time/instant.ts';

/** One stretch of opening hours. */
export interface OpenStretch {
  readonly from: Instant;
  readonly to: Instant;
}

/**
 * Starts for `count` bookings that named no time: the open time (breaks left out) is cut into equal shares and each
 * booking starts with its share, on the whole minute. The first is at opening, the safe side for supply. None if shut.
 */
export function spreadBookings(count: number, hours: readonly OpenStretch[]): Instant[] {
  const stretches = hours.filter(({ from, to }) => to > from).toSorted((a, b) => a.from - b.from);
  const open = stretches.reduce((sum, { from, to }) => sum + to - from, 0);
  if (open === 0) return [];
  return Array.from({ length: Math.max(0, count) }, (_, i) => {
    let into = (open * i) / count;
    for (const { from, to } of stretches) {
      if (into < to - from) return from + Math.floor(into / MINUTE) * MINUTE;
      into -= to - from;
    }
    return stretches[0]?.from ?? 0;
  });
}
