import { type Instant, MINUTE } from '../time/instant.ts';
import { type Extra, extraTips } from './extra-tips.ts';
import { type LoadToSend, loadsToSend, type OneAtATime } from './loads-to-send.ts';
import { bookingsOf, serve } from './served-bookings.ts';
import { autoclaveFree } from './sterile-arrivals.ts';
import type { Spare, SupplyDay } from './supply-day.ts';

/** Tips to bring from one other site, there by `by` at the latest. */
export interface ToBring {
  readonly site: string;
  readonly count: number;
  readonly by: Instant;
}

/** The first booking that the sterile tips do not reach. */
export interface Shortage {
  readonly at: Instant;
  /** Its place among the day's bookings still to come, from 1. */
  readonly booking: number;
  /** Bookings at that same instant that go without. */
  readonly short: number;
}

/** What the rest of the day needs. */
export interface SupplyOutlook {
  readonly bookings: number;
  /** Absent when every booking is served. */
  readonly shortage?: Shortage;
  /** Bookings that go without by the end of the day if nobody does anything. */
  readonly unserved: number;
  /** The fewest tips, in the fewest loads, as late as will do. */
  readonly send: readonly LoadToSend[];
  /** What sending cannot mend; from as few sites as will do. */
  readonly bring: readonly ToBring[];
  /** Bookings that go without even so. */
  readonly stillShort: number;
  /** First shortage if loads take as long as this site's slow ones; only where its spread is known. */
  readonly ifSlow?: Shortage;
}

function firstShortage(day: SupplyDay): Shortage | undefined {
  const bookings = bookingsOf(day);
  const served = serve(bookings, day);
  const place = served.indexOf(false);
  const at = bookings[place];
  if (at === undefined) return undefined;
  const short = bookings.filter((booking, i) => booking === at && served[i] === false).length;
  return { at, booking: place + 1, short };
}

function slowShortage(day: SupplyDay): Shortage | undefined {
  const { medianMinutes, spreadMinutes } = day.turnaround;
  if (spreadMinutes === undefined) return undefined;
  return firstShortage({ ...day, turnaround: { medianMinutes: medianMinutes + spreadMinutes } });
}

function oneAtATime(day: SupplyDay): OneAtATime | undefined {
  if (day.capacityPerLoad === undefined) return undefined;
  const milliseconds = day.turnaround.medianMinutes * MINUTE;
  return { capacity: day.capacityPerLoad, milliseconds, freeFrom: autoclaveFree(day) };
}

/** The extras and their loads; a tip that no load has room for is given up and the rest planned again. */
function plan(day: SupplyDay, spare: number): { extras: Extra[]; loads: LoadToSend[] } {
  const autoclave = oneAtATime(day);
  const neverSend = new Set<number>();
  for (;;) {
    const extras = extraTips(day, spare, neverSend);
    const fitted = loadsToSend(extras, autoclave);
    if ('loads' in fitted) return { extras, loads: fitted.loads };
    neverSend.add(fitted.giveUp.place);
  }
}

/** Which sites give `count` tips: the one with most first, so that as few as possible are asked. */
function bringFrom(sites: readonly Spare[], count: number, by: Instant): ToBring[] {
  const bring: ToBring[] = [];
  let left = count;
  for (const { site, sterile } of sites.toSorted((a, b) => b.sterile - a.sterile)) {
    const taken = Math.min(left, Math.max(0, sterile));
    if (taken > 0) bring.push({ site, count: taken, by });
    left -= taken;
  }
  return bring;
}

/**
 * Runs a site's day: the first shortage, and the least that prevents every one of the day: the fewest tips sent, as late
 * as will do, and only for what that cannot mend the fewest brought from elsewhere. Turnaround counts at its median.
 * Where a load's capacity is given the plan is sound, and the least while all its tips can be sent from the start.
 */
export function foreseeSupply(day: SupplyDay): SupplyOutlook {
  const sites = day.otherSites ?? [];
  const spare = sites.reduce((sum, site) => sum + Math.max(0, site.sterile), 0);
  const { extras, loads } = plan(day, spare);
  const toBring = extras.filter((extra) => extra.how === 'bring');
  const shortage = firstShortage(day);
  const ifSlow = slowShortage(day);
  return {
    bookings: bookingsOf(day).length,
    ...(shortage && { shortage }),
    unserved: extras.length,
    send: loads,
    bring: toBring[0] === undefined ? [] : bringFrom(sites, toBring.length, toBring[0].booking),
    stillShort: extras.filter((extra) => extra.how === 'none').length,
    ...(ifSlow && { ifSlow }),
  };
}
