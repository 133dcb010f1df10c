import type { Instant } from '../time/instant.ts';
import { sterileArrivals } from './sterile-arrivals.ts';
import type { SupplyDay } from './supply-day.ts';

/** The bookings that count, in order. */
export function bookingsOf(day: SupplyDay): Instant[] {
  return day.bookings.filter((at) => at >= day.now && at <= day.end).sort((a, b) => a - b);
}

/**
 * Runs the day if nobody sends a tip: each booking takes a sterile tip if there is one.
 * Returns, for each booking in order, whether it is served.
 */
export function serve(bookings: readonly Instant[], day: SupplyDay): boolean[] {
  const arrivals = sterileArrivals(day);
  let taken = 0;
  return bookings.map((at) => {
    const arrival = arrivals[taken];
    const served = arrival !== undefined && arrival <= at;
    if (served) taken++;
    return served;
  });
}
