import { type Instant, MINUTE } from '../time/instant.ts';
import { bookingsOf, serve } from './served-bookings.ts';
import { SCAN_MINUTES, type SupplyDay } from './supply-day.ts';

/** A tip that can be sent from `from` on; without an id it is one that a scan still to come will have used. */
export interface Sendable {
  readonly from: Instant;
  readonly id?: string;
}

/** A booking that the tips on hand do not serve, by its place among the day's bookings, and what would serve it. */
export type Extra = { readonly booking: Instant; readonly place: number } & (
  | { readonly how: 'send'; readonly sendBy: Instant; readonly tip: Sendable }
  | { readonly how: 'bring' }
  | { readonly how: 'none' }
);

const DIRTY = new Set(['used', 'washed', 'bagged']);

/** The tips that can be sent as the day begins, those longest so first. */
function sendableNow(day: SupplyDay, scan: number): Sendable[] {
  const dirty = day.tips
    .filter((tip) => DIRTY.has(tip.state))
    .toSorted((a, b) => a.since - b.since)
    .map(({ id }) => ({ from: day.now, id }));
  const inUse = day.tips
    .filter((tip) => tip.state === 'fitted' && tip.scanning === true)
    .map(({ id, since }) => ({ from: Math.max(day.now, since + scan), id }));
  return [...dirty, ...inUse.sort((a, b) => a.from - b.from)];
}

/**
 * Serves each booking left over, earliest first, with a tip that can still be sent in time, else with one brought
 * (while `spare` lasts). Greedy is best here: what can be sent in time for one booking can for every later one, so any
 * choice of tip serves as many. `neverSend` holds places (in the bookings' order) that the loads had no room for.
 */
export function extraTips(
  day: SupplyDay,
  spare: number,
  neverSend: ReadonlySet<number> = new Set(),
): Extra[] {
  const turnaround = day.turnaround.medianMinutes * MINUTE;
  const scan = (day.scanMinutes ?? SCAN_MINUTES) * MINUTE;
  const bookings = bookingsOf(day);
  const served = serve(bookings, day);
  const sendable = sendableNow(day, scan);
  const extras: Extra[] = [];
  let brought = 0;
  bookings.forEach((booking, place) => {
    if (served[place] !== true) {
      const sendBy = booking - turnaround;
      const next = sendable.findIndex((tip) => tip.from <= sendBy);
      const tip = next >= 0 && !neverSend.has(place) ? sendable.splice(next, 1)[0] : undefined;
      if (tip !== undefined) extras.push({ how: 'send', booking, place, sendBy, tip });
      else if (brought < spare) {
        brought++;
        extras.push({ how: 'bring', booking, place });
      } else {
        extras.push({ how: 'none', booking, place });
        return;
      }
    }
    sendable.push({ from: booking + scan });
  });
  return extras;
}
