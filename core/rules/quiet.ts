import { siteOf } from '../practice/look-up.ts';
import type { Practice } from '../practice/practice.ts';
import type { State } from '../record/state.ts';
import type { Instant } from '../time/instant.ts';
import { isOpen, NO_CHANGES, type NotedChanges, openFrom } from '../time/opening.ts';

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
