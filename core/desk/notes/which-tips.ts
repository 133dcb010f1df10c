import type { Fact } from '../../reading/fact.ts';
import type { TipSet } from '../../reading/slots.ts';
import type { State, TipState } from '../../record/state.ts';

type WithSet = Fact & { readonly which?: TipSet; readonly except?: readonly string[] };

/**
 * Puts the tips that a set means now ("all the used ones bar 3") in its place: what a note meant when it was typed is kept,
 * whatever is used later. `sites` are those of the chat room, where the note names none.
 */
export function settleSet(fact: Fact, state: State, sites: readonly string[]): Fact {
  const { which, except = [], ...rest } = fact as WithSet;
  if (which === undefined) return rest as Fact;
  const meant = [...state.tips.values()]
    .filter((tip) => inSet(tip, which) && !except.includes(tip.id) && here(tip, sites))
    .map((tip) => tip.id);
  if ('items' in rest) {
    const items = new Set([...rest.items, ...meant.map((id) => `tip:${id}`)]);
    return { ...rest, items: [...items] } as Fact;
  }
  const named = 'tips' in rest && rest.tips !== undefined ? rest.tips : [];
  return { ...rest, tips: inFileOrder(new Set([...named, ...meant]), state) } as Fact;
}

function inSet(tip: TipState, which: TipSet): boolean {
  if (tip.state === 'retired' || tip.state === 'missing') return false;
  if (which === 'all') return true;
  // Used ones may still be on a scanner: they count once they were scanned with.
  if (which === 'used') return tip.state === 'used' || (tip.state === 'fitted' && tip.usedSinceFitted);
  // "The rest in the autoclave" are those sent and those already in a load.
  if (which === 'sent') return tip.state === 'sent' || tip.state === 'in-load';
  return tip.state === which;
}

function here(tip: TipState, sites: readonly string[]): boolean {
  return sites.length === 0 || tip.site === null || sites.includes(tip.site);
}

function inFileOrder(ids: ReadonlySet<string>, state: State): string[] {
  const known = [...state.tips.keys()].filter((id) => ids.has(id));
  return [...known, ...[...ids].filter((id) => !state.tips.has(id))];
}
