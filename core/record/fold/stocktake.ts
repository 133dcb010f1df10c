import { ruleValue } from '../../defaults/rule-value.ts';
import type { Mark, SiteState, State } from '../state.ts';
import type { Step } from './step.ts';

/** The note tells the state of those tips: when half of a site's are told, its count is done. */
export function tellStock(step: Step, ids: readonly string[] | undefined): void {
  const { state, mark, entry } = step;
  for (const id of ids ?? []) {
    const at = state.tips.get(id)?.site ?? null;
    const site = at === null ? undefined : state.sites.get(at);
    if (site === undefined) continue;
    if (site.toldNow.turn !== entry.turn) site.toldNow = { turn: entry.turn, tips: new Set() };
    site.toldNow.tips.add(id);
    if (site.stocktake === null) site.told.add(id);
    const told = Math.max(site.told.size, site.toldNow.tips.size);
    if (told >= least(state, site)) counted(site, mark);
  }
}

function least(state: State, site: SiteState): number {
  let own = 0;
  for (const tip of state.tips.values()) if (tip.site === site.id && tip.retired === null) own += 1;
  return Math.max(1, own * ruleValue(state.practice, 'stocktakeShare', { site: site.id }));
}

/** The count of the site's tips is done. */
export function counted(site: SiteState, mark: Mark): void {
  site.stocktake = mark;
  site.told = new Set();
}
