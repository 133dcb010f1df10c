import type { Practice } from '../../practice/practice.ts';
import type { State, TipState } from '../../record/state.ts';
import type { Instant } from '../../time/instant.ts';
import { isTooOld } from './storage-limit.ts';

/** What is looked at: any `View` is one. */
export interface StockView {
  readonly practice: Practice;
  readonly state: State;
  readonly now: Instant;
}

/**
 * The tips at a site that may be fitted now, oldest first (by when they became sterile, then in the practice file's
 * order). `null`: every site. Not those past their storage limit or their maker's limit, nor those on their way.
 */
export function sterileStock(view: StockView, site: string | null): readonly TipState[] {
  const here = [...view.state.tips.values()].filter((tip) => site === null || tip.site === site);
  return here.filter((tip) => isUsable(view, tip)).sort((one, other) => since(one) - since(other));
}

/** Sterile on record and nothing against it: the state alone does not tell of storage and cycles. */
export function isUsable({ practice, now }: StockView, tip: TipState): boolean {
  if (tip.state !== 'sterile' || tip.sterile === null) return false;
  if (tip.doubt !== null || tip.departed !== null) return false;
  // At the limit there is one last use; past it there is none.
  if (tip.limit !== null && tip.cycles > tip.limit) return false;
  return !isTooOld(practice, tip, now);
}

/** `sort` keeps the order of those that became sterile together, so numbers stay in the file's order. */
function since(tip: TipState): Instant {
  return tip.sterile?.mark.at ?? 0;
}
