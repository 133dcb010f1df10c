import { ruleValue } from '../../defaults/rule-value.ts';
import type { LoadState } from '../../record/state.ts';
import { sitesOfRoom } from '../../record/where.ts';
import { DAY } from '../../time/instant.ts';
import { hasCome } from '../clock.ts';
import type { View } from '../matter.ts';

/** Loads of a site with no result yet, or whose tips wait for a release, oldest first; of the last `openLoadDays` (60). */
export function openLoads(view: View, site: string): readonly LoadState[] {
  const { loads } = view.state;
  const asked = ruleValue(view.practice, 'openLoadDays') * DAY;
  return loads.recent().filter((load) => {
    if ((load.status !== 'open' && load.status !== 'needs-release') || !isHere(view, load, site))
      return false;
    const told = load.started ?? load.finished;
    return told === null || !hasCome(view, told.at + asked);
  });
}

/** The load's own site; where that is not known, any that its chat room serves. */
function isHere({ practice }: View, { site, started, finished }: LoadState, id: string): boolean {
  if (site !== null) return site === id;
  const room = (started ?? finished)?.room;
  return room !== undefined && sitesOfRoom(practice, room).includes(id);
}
