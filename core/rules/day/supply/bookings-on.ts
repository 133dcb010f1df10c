import type { Site } from '../../../practice/practice.ts';
import type { Booking } from '../../../record/state.ts';
import { spreadBookings } from '../../../supply/spread-bookings.ts';
import type { Instant } from '../../../time/instant.ts';
import { openSpans } from '../../../time/opening.ts';
import { type LocalDate, toInstant } from '../../../time/zone.ts';
import type { View } from '../../matter.ts';
import { changesOf } from '../../quiet.ts';

/** One booked scan with the instant at which it is expected. */
export interface BookedScan {
  readonly at: Instant;
  /** No time was said: it is spread over the hours. */
  readonly spread: boolean;
  /** When it was noted. */
  readonly noted: Instant;
}

/** Assumed for a scan with no time on a day on which the site has no hours: early is the safe side. */
const NO_HOURS_START = '09:00';

/**
 * The scans booked at a site for a date, in order. Those without a time are spread evenly over the hours; of those noted
 * during the day itself only what was left of the hours then. None on a day that a note or the practice file closes.
 */
export function bookingsOn(
  view: Pick<View, 'practice' | 'state'>,
  site: Site,
  date: LocalDate,
): readonly BookedScan[] {
  const booked = view.state.sites.get(site.id)?.bookings.get(date) ?? [];
  if (booked.length === 0) return [];
  const changes = changesOf(view.state, site.id);
  const hours = openSpans(site, date, changes);
  if (hours.length === 0 && (site.closed.includes(date) || changes.closed.has(date))) return [];
  const timed = booked.flatMap(({ time, mark }) => {
    return time === null
      ? []
      : [{ at: toInstant(date, time, site.timezone), spread: false, noted: mark.noted }];
  });
  const untimed = booked.filter(({ time }) => time === null);
  if (hours.length === 0) {
    const at = toInstant(date, NO_HOURS_START, site.timezone);
    return [...timed, ...untimed.map(({ mark }) => ({ at, spread: true, noted: mark.noted }))].sort(byTime);
  }
  return [...timed, ...spreadOver(untimed, hours)].sort(byTime);
}

function byTime(one: BookedScan, other: BookedScan): number {
  return one.at - other.at;
}

function spreadOver(
  untimed: readonly Booking[],
  hours: readonly { readonly open: Instant; readonly shut: Instant }[],
): readonly BookedScan[] {
  const opening = hours[0]?.open ?? Number.POSITIVE_INFINITY;
  const together = Map.groupBy(untimed, ({ mark }) => Math.max(opening, mark.noted));
  return [...together].flatMap(([from, bookings]) => {
    const left = hours.map(({ open, shut }) => ({ from: Math.max(open, from), to: shut }));
    return spreadBookings(bookings.length, left).map((at, place) => {
      return { at, spread: true, noted: bookings[place]?.mark.noted ?? from };
    });
  });
}
