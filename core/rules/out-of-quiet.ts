import type { Instant } from '../time/instant.ts';
import type { About } from './about.ts';
import type { Matter, View } from './matter.ts';
import { outOfQuietFrom } from './quiet.ts';

/** Said whatever the hour: what may still reach a patient, and the post that belongs before opening. */
const AT_ANY_HOUR = new Set<About>(['brief', 'incident', 'warning', 'look-back']);

/**
 * The matter with its unsaid stages out of the site's quiet hours. One whose time went by unsaid (the program was down)
 * and that finds the site shut now waits for the next opening, as one that falls due then does.
 */
export function outOfQuiet(view: View, matter: Matter): Matter {
  if (isForAnyHour(matter)) return matter;
  const stages = matter.stages.map((each) => {
    if (view.said.saidAt(matter.key, each.stage) !== null) return each;
    const at = sayableOf(view, matter, each.at);
    return at === each.at ? each : { stage: each.stage, at };
  });
  return stages.every((each, place) => each === matter.stages[place]) ? matter : withStages(matter, stages);
}

/** When something of that matter that is due at `at`, or was put off to then, may be said: only briefs in time come early. */
export function sayableOf(view: View, matter: Matter, at: Instant): Instant {
  if (AT_ANY_HOUR.has(matter.about) && matter.about !== 'brief') return at;
  return outOfQuietFrom(view, matter.site, at);
}

/** Its words are left unwritten: few matters are said at the look that finds them. */
function withStages(matter: Matter, stages: Matter['stages']): Matter {
  const { key, rule, about, site, room, group, leads, tick, asks } = matter;
  return {
    ...{ key, rule, about, site, room, stages, group, leads },
    get items() {
      return matter.items;
    },
    get since() {
      return matter.since;
    },
    get line() {
      return matter.line;
    },
    ...(tick === undefined ? {} : { tick }),
    ...(asks === undefined ? {} : { asks }),
  };
}

function isForAnyHour({ about, group }: Matter): boolean {
  return AT_ANY_HOUR.has(about) || group === 'brief';
}
