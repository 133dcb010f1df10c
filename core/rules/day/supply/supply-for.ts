import { ruleValue } from '../../../defaults/rule-value.ts';
import { siteOf } from '../../../practice/look-up.ts';
import type { Site } from '../../../practice/practice.ts';
import { bookingsOf, serve } from '../../../supply/served-bookings.ts';
import { foreseeSupply, type SupplyOutlook } from '../../../supply/shortage.ts';
import type { Spare, SupplyDay } from '../../../supply/supply-day.ts';
import { type LearnedTurnaround, learnTurnaround } from '../../../supply/turnaround.ts';
import { type Instant, MINUTE } from '../../../time/instant.ts';
import { addDays, type LocalDate, startOfDay } from '../../../time/zone.ts';
import { hasCome, today as todayIn } from '../../clock.ts';
import type { View } from '../../matter.ts';
import { sterileStock } from '../../tips/sterile-stock.ts';
import type { BookedScan } from './bookings-on.ts';
import { bookingsToCome } from './bookings-to-come.ts';
import { tipsOnHand } from './tips-on-hand.ts';

/** Sterile tips at a site against the scans booked for one of its dates. */
export interface SiteSupply {
  readonly site: string;
  readonly date: LocalDate;
  /** Scans of that date still to come, in order. */
  readonly booked: readonly BookedScan[];
  /** Tips of the site that may be fitted now. */
  readonly sterile: readonly string[];
  /** Tips of the site of which nothing is known. */
  readonly unknown: readonly string[];
  /** The first scan of that date that goes without if nobody does anything, and how many do; `null`: enough. */
  readonly short: { readonly at: Instant; readonly scans: number } | null;
  /** `short` is no guess: the site's tips have been counted, or it is short even if all the unknown ones are sterile. */
  readonly certain: boolean;
  /** What prevents it: tips to send, tips to bring. It covers the days before that date too. */
  readonly outlook: SupplyOutlook;
  readonly turnaround: LearnedTurnaround;
}

/** A booking further ahead than this is not run through day by day (assumed). */
const FURTHEST_DAYS = 14;

/**
 * The supply of a site on one of its local dates, seen from now: scans of the days between take their tips first.
 * `null` where the practice has no such site.
 */
export function supplyFor(view: View, siteId: string, date: LocalDate): SiteSupply | null {
  const site = siteOf(view.practice, siteId);
  if (site === undefined) return null;
  const day = supplyDay(view, site, date);
  const start = startOfDay(date, site.timezone);
  const short = shortOn(day, start);
  const spares = short === null ? [] : sparesOf(view, site, day.end);
  return {
    site: siteId,
    date,
    booked: bookingsToCome(view, site, date),
    sterile: sterileStock({ state: view.state, now: day.now }, siteId).map(({ id }) => id),
    unknown: day.tips.filter((tip) => tip.state === 'unknown').map(({ id }) => id),
    short,
    certain: isCounted(view, siteId) || (short !== null && shortOn(withUnknown(day), start) !== null),
    turnaround: turnaroundOf(view, siteId),
    // Rules ask again and again whether the site is short, and seldom what to do about it.
    get outlook() {
      return foreseeSupply({ ...day, now: view.now, otherSites: spares });
    },
  };
}

/** The day if every tip of which nothing is known were sterile. */
function withUnknown(day: SupplyDay): SupplyDay {
  const tips = day.tips.map((tip) => (tip.state === 'unknown' ? { ...tip, state: 'sterile' as const } : tip));
  return { ...day, tips };
}

function isCounted({ state }: View, site: string): boolean {
  return state.sites.get(site)?.stocktake != null;
}

/**
 * From the beginning of today: only the scans still to come are in it, so where the hour itself makes no difference the
 * same is not worked out again.
 */
function supplyDay(view: View, site: Site, date: LocalDate): SupplyDay {
  const capacity = ruleValue(view.practice, 'tipsPerLoad', { site: site.id });
  const end = startOfDay(addDays(date, 1), site.timezone) - 1;
  const now = startOfDay(todayIn(view, site.timezone), site.timezone);
  return {
    tips: tipsOnHand(view.state, site.id, now),
    bookings: tipsNeeded(view, site, end),
    turnaround: turnaroundOf(view, site.id),
    scanMinutes: ruleValue(view.practice, 'scanTakesMinutes', { site: site.id }),
    now,
    hasPassed: (at) => hasCome(view, at + 1),
    end,
    ...(capacity > 0 ? { capacityPerLoad: capacity } : {}),
  };
}

function sparesOf(view: View, site: Site, end: Instant): readonly Spare[] {
  return view.practice.sites
    .filter(({ id }) => id !== site.id)
    .map((other) => spareOf(view, other, end))
    .filter(({ sterile }) => sterile > 0);
}

/** An instant for every tip that the scans up to `end` take, today's and each later day's. */
function tipsNeeded(view: View, site: Site, end: Instant): Instant[] {
  const each = ruleValue(view.practice, 'tipsPerScan', { site: site.id });
  const today = todayIn(view, site.timezone);
  const needed: Instant[] = [];
  for (let ahead = 0; ahead <= FURTHEST_DAYS; ahead++) {
    const scans = bookingsToCome(view, site, addDays(today, ahead));
    for (const { at } of scans) if (at <= end) for (let n = 0; n < each; n++) needed.push(at);
  }
  return needed;
}

/** What another site has beyond its own scans up to then. */
function spareOf(view: View, other: Site, end: Instant): Spare {
  const stock = sterileStock(view, other.id).length;
  return { site: other.id, sterile: Math.max(0, stock - tipsNeeded(view, other, end).length) };
}

/** The first scan at or after `from` that goes without, and how many do from there on. */
function shortOn(day: SupplyDay, from: Instant): SiteSupply['short'] {
  const bookings = bookingsOf(day);
  const served = serve(bookings, day);
  const without = bookings.filter((at, place) => at >= from && served[place] === false);
  const [at] = without;
  return at === undefined ? null : { at, scans: without.length };
}

/** Sent to sterile, as this site's own loads tell; the assumed time until there are enough of them. */
function turnaroundOf({ practice, state }: View, site: string): LearnedTurnaround {
  const at = { site };
  const lastLoads = ruleValue(practice, 'turnaroundLoadsKept', at);
  const minutes = (state.sites.get(site)?.turnarounds ?? []).slice(-lastLoads);
  return learnTurnaround(
    minutes.map((each) => ({ sentAt: 0, sterileAt: each * MINUTE })),
    {
      assumedMinutes: ruleValue(practice, 'turnaroundMinutes', at),
      leastLoads: ruleValue(practice, 'turnaroundLoadsNeeded', at),
      lastLoads,
    },
  );
}
