import type { About } from '../desk/effect.ts';
import type { Matter, View } from './matter.ts';
import { isQuiet, whenOpen } from './quiet.ts';

/** Said whatever the hour: what may still reach a patient, and the post that belongs before opening. */
const AT_ANY_HOUR = new Set<About>(['brief', 'incident', 'warning', 'look-back']);

/**
 * The matter with its unsaid stages out of the site's quiet hours. One whose time went by unsaid (the program was down)
 * and that finds the site shut now waits for the next opening, as one that falls due then does.
 */
export function outOfQuiet({ practice, state, said, now }: View, matter: Matter): Matter {
  if (AT_ANY_HOUR.has(matter.about) || matter.group === 'brief') return matter;
  const stages = matter.stages.map(({ stage, at }) => {
    if (said.saidAt(matter.key, stage) !== null) return { stage, at };
    const from = Math.max(at, isQuiet(practice, state, matter.site, now) ? now : at);
    return { stage, at: whenOpen(practice, state, matter.site, from) };
  });
  return { ...matter, stages };
}
