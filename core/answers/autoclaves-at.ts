import { type AutoclaveState, UNNAMED } from '../record/state.ts';
import type { AskView } from './answer-view.ts';
import { sitesOfAsk } from './site-of-ask.ts';

/** Autoclaves that an ask is about: the one named, else those at its sites; the unnamed one where the practice lists none. */
export function autoclavesAt(
  named: string | undefined,
  site: string | undefined,
  view: AskView,
): readonly AutoclaveState[] {
  const all = [...view.state.autoclaves.values()].filter(({ id }) => {
    return view.practice.autoclaves.length === 0 || id !== UNNAMED;
  });
  if (named !== undefined) return all.filter(({ id }) => id === named);
  const sites = sitesOfAsk(view.practice, site, view.room);
  const here = all.filter((autoclave) => autoclave.site === null || sites.includes(autoclave.site));
  return here.length === 0 && site === undefined ? all : here;
}
