import type { Site } from '../practice/practice.ts';
import { type Instant, MINUTE } from './instant.ts';
import { addDays, type LocalDate } from './local-date.ts';
import { NO_CHANGES, type NotedChanges, openTimes } from './opening-times.ts';
import { localDateOf, toInstant } from './zone.ts';

export { NO_CHANGES, type NotedChanges, type NotedHours, openTimes } from './opening-times.ts';

/** From opening to closing; the closing minute is still open. */
export interface OpenInstants {
  readonly open: Instant;
  readonly shut: Instant;
}

/** A site that is closed for longer than this is taken never to open again. */
const FURTHEST_DAYS = 400;

/** The spans for which a site is open on one of its local dates, in order, breaks left out; empty where it is closed. */
export function openSpans(
  site: Site,
  date: LocalDate,
  changes: NotedChanges = NO_CHANGES,
): readonly OpenInstants[] {
  if (changes.closed.has(date) || changes.hours.get(date) !== undefined)
    return findSpans(site, date, changes);
  let dates = usual.get(site);
  if (dates === undefined) {
    dates = new Map();
    usual.set(site, dates);
  }
  let spans = dates.get(date);
  if (spans === undefined) {
    spans = findSpans(site, date, NO_CHANGES);
    if (dates.size >= MOST_KEPT) dates.clear();
    dates.set(date, spans);
  }
  return spans;
}

/** Days of which no note has changed the hours, by site; a site is never changed, only replaced. */
const usual = new WeakMap<Site, Map<LocalDate, readonly OpenInstants[]>>();
/** Days a site: rules ask for those of some weeks at every look. */
const MOST_KEPT = 1_000;

function findSpans(site: Site, date: LocalDate, changes: NotedChanges): readonly OpenInstants[] {
  const spans = openTimes(site, date, changes).map(({ open, shut }) => {
    return { open: toInstant(date, open, site.timezone), shut: toInstant(date, shut, site.timezone) };
  });
  // A clock change can swallow a short span whole.
  return spans.filter(({ open, shut }) => open < shut);
}

/** The day's first opening, `null` where the site is closed. */
export function firstOpening(
  site: Site,
  date: LocalDate,
  changes: NotedChanges = NO_CHANGES,
): Instant | null {
  return openSpans(site, date, changes)[0]?.open ?? null;
}

/** The day's last closing, `null` where the site is closed. */
export function lastClosing(site: Site, date: LocalDate, changes: NotedChanges = NO_CHANGES): Instant | null {
  return openSpans(site, date, changes).at(-1)?.shut ?? null;
}

/** True from each opening to the end of the closing minute. */
export function isOpen(site: Site, instant: Instant, changes: NotedChanges = NO_CHANGES): boolean {
  const spans = openSpans(site, localDateOf(instant, site.timezone), changes);
  return spans.some(({ open, shut }) => instant >= open && instant < shut + MINUTE);
}

/** The first opening later than that instant (after a break too), `null` where there is none within 400 days. */
export function nextOpening(site: Site, after: Instant, changes: NotedChanges = NO_CHANGES): Instant | null {
  const today = localDateOf(after, site.timezone);
  for (let day = 0; day <= FURTHEST_DAYS; day++) {
    const next = openSpans(site, addDays(today, day), changes).find(({ open }) => open > after);
    if (next !== undefined) return next.open;
  }
  return null;
}

/** That instant where the site is open then, else the next opening. */
export function openFrom(site: Site, instant: Instant, changes: NotedChanges = NO_CHANGES): Instant | null {
  return isOpen(site, instant, changes) ? instant : nextOpening(site, instant, changes);
}

export function isOpenDay(site: Site, date: LocalDate, changes: NotedChanges = NO_CHANGES): boolean {
  return openTimes(site, date, changes).length > 0;
}

/** The first open date after that one, `null` where there is none within 400 days. */
export function nextOpenDay(
  site: Site,
  date: LocalDate,
  changes: NotedChanges = NO_CHANGES,
): LocalDate | null {
  return openDayFrom(site, addDays(date, 1), changes);
}

/** That date where the site is open on it, else the next open one. */
export function openDayFrom(
  site: Site,
  date: LocalDate,
  changes: NotedChanges = NO_CHANGES,
): LocalDate | null {
  for (let day = 0; day <= FURTHEST_DAYS; day++) {
    const candidate = addDays(date, day);
    if (isOpenDay(site, candidate, changes)) return candidate;
  }
  return null;
}
