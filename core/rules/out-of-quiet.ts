import type { Instant } from '../time/instant.ts';
import type { About } from './about.ts';
import type { Matter, View } from './matter.ts';
import { isQuiet, whenOpen } from './quiet.ts';

/** Said whatever the hour: what may still reach a patient, and the post that belongs before opening. */
const AT_ANY_HOUR = new Set<About>(['brief', 'incident', 'warning', 'look-back']);

/**
 * The matter with its unsaid stages out of the site's quiet hours. One whose time went by unsaid (the program was down)
 * and that finds the site shut now waits for the next opening, as one that falls due then does.
 */
export function outOfQuiet(view: View, matter: Matter): Matter {
  if (isForAnyHour(matter)) return matter;
  const stages = matter.stages.map(({ stage, at }) => {
    return { stage, at: view.said.saidAt(matter.key, stage) === null ? sayableOf(view, matter, at) : at };
  });
  return { ...matter, stages };
}

/** When something of that matter that is due at `at`, or was put off to then, may be said: only briefs in time come early. */
export function sayableOf({ practice, state, now }: View, matter: Matter, at: Instant): Instant {
  if (AT_ANY_HOUR.has(matter.about) && matter.about !== 'brief') return at;
  const from = Math.max(at, isQuiet(practice, state, matter.site, now) ? now : at);
  return whenOpen(practice, state, matter.site, from);
}

function isForAnyHour({ about, group }: Matter): boolean {
  return AT_ANY_HOUR.has(about) || group === 'brief';
}
