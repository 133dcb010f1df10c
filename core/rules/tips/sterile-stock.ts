import type { State, TipState } from '../../record/state.ts';
import { isSterileStock } from '../../record/tip-safety.ts';
import type { Instant } from '../../time/instant.ts';

/** What is looked at: any `View` is one. */
export interface StockView {
  readonly state: State;
  readonly now: Instant;
}

/**
 * The tips at a site that may be fitted now, oldest first (by when they became sterile, then in the practice file's
 * order). `null`: every site. Not those past their storage limit or their maker's limit, nor those on their way.
 */
export function sterileStock({ state, now }: StockView, site: string | null): readonly TipState[] {
  const here = [...state.tips.values()].filter((tip) => site === null || tip.site === site);
  // `sort` keeps the order of those that became sterile together, so numbers stay in the file's order.
  return here
    .filter((tip) => isSterileStock(state, tip, now))
    .sort((one, other) => since(one) - since(other));
}

function since(tip: TipState): Instant {
  return tip.sterile?.mark.at ?? 0;
}
