import type { Site } from '../../practice/practice.ts';
import type { State } from '../../record/state.ts';
import type { Instant } from '../../time/instant.ts';
import { isOpen, openSpans } from '../../time/opening.ts';
import { addDays, localDateOf } from '../../time/zone.ts';
import { changesOf } from '../quiet.ts';

/** A closing further back than this helps nobody any more. */
const FURTHEST_DAYS = 14;

/** That instant, or the last closing before it where the site is shut then: "by 07:15" is "by 17:30 the day before". */
export function lastOpen(state: State, site: Site, at: Instant): Instant {
  const changes = changesOf(state, site.id);
  if (isOpen(site, at, changes)) return at;
  const date = localDateOf(at, site.timezone);
  for (let back = 0; back <= FURTHEST_DAYS; back++) {
    const span = openSpans(site, addDays(date, -back), changes).findLast(({ shut }) => shut <= at);
    if (span !== undefined) return span.shut;
  }
  return at;
}
