import type { TipSet } from '../reading/slots.ts';
import type { State, TipState } from './state.ts';

/** Sites within which a set is meant; empty: everywhere. */
type Sites = readonly string[];

/**
 * The tips that a set meant when it was said ("all the used ones"), in the practice file's order, with those named beside it
 * and without those excepted. Held, missing and retired tips are in no set but `all`, which leaves out only the retired.
 */
export function tipsOfSet(
  state: State,
  said: { readonly which?: TipSet; readonly tips?: readonly string[]; readonly except?: readonly string[] },
  sites: Sites = [],
): readonly string[] {
  const named = said.tips ?? [];
  const { which } = said;
  if (which === undefined) return named;
  const except = new Set(said.except);
  const meant = (tip: TipState) => {
    if (except.has(tip.id) || named.includes(tip.id)) return false;
    if (sites.length > 0 && (tip.site === null || !sites.includes(tip.site))) return false;
    return which === 'all' ? tip.state !== 'retired' : tip.state === which;
  };
  const own = [...state.tips.values()].filter(meant).map((tip) => tip.id);
  return [...named, ...own];
}
