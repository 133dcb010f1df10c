import type { State, TipState, UnsafeReason } from '../../record/state.ts';
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
  if (reasons.length === 0) reasons.push(...inUse(state, tip));
  return { usable: reasons.length === 0, reasons };
}

/** Scanned with since it went on, or in a scan that is under way: what a tip needs is kept only once the scan is over. */
function inUse(state: State, tip: TipState): readonly UnsafeReason[] {
  const scan = tip.scanner === null ? null : (state.scanners.get(tip.scanner)?.scan ?? null);
  if (scan?.tip === tip.id) return [{ why: 'used', mark: scan.started, load: null }];
  return tip.usedSinceFitted ? [{ why: 'used', mark: tip.lastUse, load: null }] : [];
}
