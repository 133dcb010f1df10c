import type { State, TipState } from '../../../record/state.ts';
import { reasonsAgainst } from '../../../record/tip-safety.ts';
import type { SupplyState, TipOnHand } from '../../../supply/supply-day.ts';
import type { Instant } from '../../../time/instant.ts';
import { sterileStock } from '../../tips/sterile-stock.ts';

/** What a site's tips can do for scans to come. */
export function tipsOnHand(state: State, site: string, now: Instant): readonly TipOnHand[] {
  const stock = new Set(sterileStock({ state, now }, site).map(({ id }) => id));
  return [...state.tips.values()]
    .filter((tip) => tip.site === site && tip.departed === null)
    .map((tip) => onHand(state, tip, now, stock.has(tip.id)));
}

function onHand(state: State, tip: TipState, now: Instant, inStock: boolean): TipOnHand {
  const since = tip.since?.at ?? now;
  const { id } = tip;
  if (inStock) return { id, state: 'sterile', since };
  if (tip.state === 'fitted') return fitted(state, tip, now);
  const shown = tip.state === 'sterile' ? 'used' : tip.state;
  if (!canGoRound(tip) && REPROCESSED.has(shown)) return { id, state: 'retired', since };
  const sentAt = tip.sent?.at;
  return { id, state: shown, since, ...(sentAt === undefined ? {} : { sentAt }) };
}

/** Can still be sent: its maker's limit leaves it a cycle. */
function canGoRound({ cycles, limit }: TipState): boolean {
  return limit === null || cycles < limit;
}

const REPROCESSED = new Set<SupplyState>(['used', 'washed', 'bagged']);

/** On a scanner: there for the scan to come, or taken up by one that has begun (its tip can be sent after it). */
function fitted(state: State, tip: TipState, now: Instant): TipOnHand {
  const scan = tip.scanner === null ? null : (state.scanners.get(tip.scanner)?.scan ?? null);
  const good = scan === null && !tip.usedSinceFitted && reasonsAgainst(state, tip, now).length === 0;
  const since = (good ? tip.fitted : (tip.lastUse ?? tip.fitted))?.at ?? now;
  if (!good && !canGoRound(tip)) return { id: tip.id, state: 'retired', since };
  return { id: tip.id, state: 'fitted', since, scanning: !good };
}
