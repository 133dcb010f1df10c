import { reorderPoint } from '../science/stock.ts';

/** What ordering tips depends on. Stock is counted in usable cycles left, not in tips. */
export interface TipStock {
  /** Cycles left of each tip that can still be used and whose limit is known. */
  readonly cyclesLeft: readonly number[];
  /** Tips used on each of the last open days, days without any included. */
  readonly usesPerDay: readonly number[];
  /** Open days from ordering to having. */
  readonly leadDays: number;
  /** Standard deviation of that; 0 when absent. */
  readonly leadDaysSpread?: number;
  /** Cycles of a new tip. */
  readonly cyclesPerTip: number;
  /** Open days that an order should last beyond the reorder point. */
  readonly coverDays: number;
  /** Fewer days than this say too little of the spread; 5 when absent (assumed). */
  readonly leastDays?: number;
  /** Chance of not running out before the order comes; a fraction. */
  readonly serviceLevel: number;
}

/** When to order, and how many. Cycles, open days, tips. */
export interface Reorder {
  readonly cyclesLeft: number;
  readonly meanPerDay: number;
  /** Standard deviation of a day's use. */
  readonly spreadPerDay: number;
  readonly reorderPoint: number;
  /** Open days until the reorder point at the mean use; 0: order now. */
  readonly orderInDays: number;
  /** Tips to order then. */
  readonly tips: number;
}

/**
 * Reorder point d·L + z·√(L·σd² + d²·σL²) in cycles, and how many tips bring the stock up to it and `coverDays` more.
 * Undefined with under `leastDays` (5) days of use, or when nothing was used. RangeError unless `cyclesPerTip` is above 0.
 */
export function reorder(stock: TipStock): Reorder | undefined {
  if (!(stock.cyclesPerTip > 0)) throw new RangeError(`a new tip has no cycles: ${stock.cyclesPerTip}`);
  const days = stock.usesPerDay.length;
  const meanPerDay = stock.usesPerDay.reduce((sum, uses) => sum + uses, 0) / days;
  if (days < (stock.leastDays ?? 5) || meanPerDay <= 0) return undefined;
  const squares = stock.usesPerDay.reduce((sum, uses) => sum + (uses - meanPerDay) ** 2, 0);
  const spreadPerDay = Math.sqrt(squares / (days - 1));
  const demand = {
    mean: meanPerDay,
    spread: spreadPerDay,
    leadTime: stock.leadDays,
    leadTimeSpread: stock.leadDaysSpread ?? 0,
  };
  const point = reorderPoint(demand, stock.serviceLevel);
  const cyclesLeft = stock.cyclesLeft.reduce((sum, cycles) => sum + Math.max(0, cycles), 0);
  const orderInDays = Math.max(0, (cyclesLeft - point) / meanPerDay);
  const atOrder = Math.min(cyclesLeft, point);
  const wanted = meanPerDay * stock.coverDays + (point - atOrder);
  const tips = Math.max(1, Math.ceil(wanted / stock.cyclesPerTip - 1e-9)); // 0.07 · 100 is 7.000000000000001
  return { cyclesLeft, meanPerDay, spreadPerDay, reorderPoint: point, orderInDays, tips };
}
