import { siteOf } from '../practice/look-up.ts';
import type { Practice } from '../practice/practice.ts';
import type { State } from '../record/state.ts';
import type { Instant } from '../time/instant.ts';
import { MINUTE } from '../time/instant.ts';
import { isOpen, NO_CHANGES, type NotedChanges, nextOpenDay, openFrom, openSpans } from '../time/opening.ts';
import { hasCome, today } from './clock.ts';
import type { Moment } from './moment.ts';

/** What notes changed of that site's hours; a site that the record does not know has no changes. */
export function changesOf(state: State, siteId: string): NotedChanges {
  const site = state.sites.get(siteId);
  return site === undefined ? NO_CHANGES : { closed: site.closedDates, hours: site.hours };
}

/** True while the site is shut, by its hours and by what notes changed of them. A site that is not listed is never quiet. */
export function isQuiet(practice: Practice, state: State, siteId: string, at: Instant): boolean {
  const site = siteOf(practice, siteId);
  return site !== undefined && !isOpen(site, at, changesOf(state, siteId));
}

/**
 * That instant, or the site's next opening where it is shut then. Where no opening is known (closed for more than
 * 400 days) it stays as it is: too early is better than never.
 */
export function whenOpen(practice: Practice, state: State, siteId: string, at: Instant): Instant {
  const site = siteOf(practice, siteId);
  return site === undefined ? at : (openFrom(site, at, changesOf(state, siteId)) ?? at);
}

/** As `isQuiet`, now: for rules, since it is known until when it holds. */
export function isQuietNow(moment: Moment, siteId: string): boolean {
  const site = siteOf(moment.practice, siteId);
  if (site === undefined) return false;
  const spans = openSpans(site, today(moment, site.timezone), changesOf(moment.state, siteId));
  return !spans.some(({ open, shut }) => hasCome(moment, open) && !hasCome(moment, shut + MINUTE));
}

/** As `whenOpen`, from now on. */
export function whenOpenNow(moment: Moment, siteId: string): Instant {
  return isQuietNow(moment, siteId) ? (openingAhead(moment, siteId) ?? moment.now) : moment.now;
}

/** That instant, or the site's next opening: out of the quiet that it falls into, and out of the quiet that there is now. */
export function outOfQuietFrom(moment: Moment, siteId: string, at: Instant): Instant {
  const open = whenOpen(moment.practice, moment.state, siteId, at);
  if (!isQuietNow(moment, siteId)) return open;
  return Math.max(open, openingAhead(moment, siteId) ?? moment.now);
}

/** The next opening to come, after a break too; `null` where none is known. */
function openingAhead(moment: Moment, siteId: string): Instant | null {
  const site = siteOf(moment.practice, siteId);
  if (site === undefined) return null;
  const changes = changesOf(moment.state, siteId);
  const date = today(moment, site.timezone);
  const later = openSpans(site, date, changes).find(({ open }) => !hasCome(moment, open));
  if (later !== undefined) return later.open;
  const next = nextOpenDay(site, date, changes);
  return next === null ? null : (openSpans(site, next, changes)[0]?.open ?? null);
}
