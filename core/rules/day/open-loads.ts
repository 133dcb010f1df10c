import type { LoadState } from '../../record/state.ts';
import { sitesOfRoom } from '../../record/where.ts';
import type { View } from '../matter.ts';

/** Loads of a site with no result yet, or whose tips wait for a release, oldest first. */
export function openLoads(view: View, site: string): readonly LoadState[] {
  const { loads } = view.state;
  return loads.recent().filter((load) => {
    return (load.status === 'open' || load.status === 'needs-release') && isHere(view, load, site);
  });
}

/** The load's own site; where that is not known, any that its chat room serves. */
function isHere({ practice }: View, { site, started, finished }: LoadState, id: string): boolean {
  if (site !== null) return site === id;
  const room = (started ?? finished)?.room;
  return room !== undefined && sitesOfRoom(practice, room).includes(id);
}
