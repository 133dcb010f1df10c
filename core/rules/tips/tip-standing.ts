import type { TipShown, TipState } from '../../record/state.ts';
import { isSterileStock } from '../../record/tip-safety.ts';
import type { StockView } from './sterile-stock.ts';

/** `unfit`: sterile by its last load and still not to be taken (stored too long, past its limit, in doubt). `away`: on its way. */
export type TipStanding = TipShown | 'unfit' | 'away';

/** In the order in which they are told: the stock, then the way round, then what needs somebody. */
export const TIP_STANDINGS: readonly TipStanding[] = [
  'sterile',
  'fitted',
  'used',
  'washed',
  'bagged',
  'sent',
  'in-load',
  'away',
  'unfit',
  'held',
  'missing',
  'unknown',
  'retired',
];

/** Where a tip is on its way round, as everybody is told it: what stops it first, then where it is, then its state. */
export function tipStanding({ state, now }: StockView, tip: TipState): TipStanding {
  const { state: shown, departed, scanner } = tip;
  if (shown === 'held' || shown === 'missing' || shown === 'retired') return shown;
  if (departed !== null) return 'away';
  if (scanner !== null) return 'fitted';
  return shown === 'sterile' && !isSterileStock(state, tip, now) ? 'unfit' : shown;
}
