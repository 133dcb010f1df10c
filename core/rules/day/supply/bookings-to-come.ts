import { ruleValue } from '../../../defaults/rule-value.ts';
import type { Site } from '../../../practice/practice.ts';
import { type Instant, MINUTE } from '../../../time/instant.ts';
import type { LocalDate } from '../../../time/zone.ts';
import { hasCome } from '../../clock.ts';
import type { Moment } from '../../moment.ts';
import { type BookedScan, bookingsOn } from './bookings-on.ts';

/**
 * The scans of a date that still want a tip, in order: those at or after now, without those that a scan begun a little
 * early (`scanBegunEarlyMinutes`) is taken for, since its tip is on a scanner already.
 */
export function bookingsToCome(view: Moment, site: Site, date: LocalDate): readonly BookedScan[] {
  const booked = bookingsOn(view, site, date);
  if (booked.length === 0) return booked;
  const early = ruleValue(view.practice, 'scanBegunEarlyMinutes', { site: site.id }) * MINUTE;
  const begun = new Set<BookedScan>();
  for (const start of begunScans(view, site.id)) {
    const near = booked.filter((each) => !begun.has(each) && Math.abs(each.at - start) <= early);
    const [nearest] = near.toSorted((one, other) => Math.abs(one.at - start) - Math.abs(other.at - start));
    if (nearest !== undefined) begun.add(nearest);
  }
  return booked.filter((each) => !hasCome(view, each.at + 1) && !begun.has(each));
}

/** Starts of each scanner's latest scan at that site; one of the same patient as before took no booking of its own. */
function begunScans(view: Moment, site: string): readonly Instant[] {
  return [...view.state.scanners.values()].flatMap(({ lastScan }) => {
    const counts = lastScan !== null && lastScan.site === site && !lastScan.samePatient;
    return counts && hasCome(view, lastScan.started.at) ? [lastScan.started.at] : [];
  });
}
