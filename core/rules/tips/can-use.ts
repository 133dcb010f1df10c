import type { TipState, UnsafeReason } from '../../record/state.ts';
import { reasonsAgainst } from '../../record/tip-safety.ts';
import type { StockView } from './sterile-stock.ts';

/** May it meet a patient now? `reasons`: everything against it, the gravest first; empty where it may. */
export interface CanUse {
  readonly usable: boolean;
  readonly reasons: readonly UnsafeReason[];
}

/**
 * The answer to "can I use tip 4?". A sterile tip that is on a scanner and not yet scanned with may be used there; one
 * that is on its way may be used when it arrives. `null` where the practice has no such tip.
 */
export function canUse({ state, now }: StockView, id: string): CanUse | null {
  const tip = state.tips.get(id);
  if (tip === undefined) return null;
  const reasons = [...reasonsAgainst(state, tip, now)];
  // What it was used for is kept as a need only once the scan is over.
  if (reasons.length === 0 && tip.usedSinceFitted) reasons.push(usedReason(tip));
  return { usable: reasons.length === 0, reasons };
}

function usedReason(tip: TipState): UnsafeReason {
  return { why: 'used', mark: tip.lastUse, load: null };
}
