import { normalQuantile } from './normal.ts';

/** Demand while an order is on its way; any unit of stock, any unit of time used throughout. */
export interface Demand {
  /** Mean demand per unit of time. */
  readonly mean: number;
  /** Standard deviation of the demand of one unit of time; 0 when absent. */
  readonly spread?: number;
  /** Mean lead time. */
  readonly leadTime: number;
  /** Standard deviation of the lead time; 0 when absent. */
  readonly leadTimeSpread?: number;
}

/** Standard deviation of the demand over the lead time: √(L·σd² + d²·σL²). */
export function leadTimeDemandSpread(demand: Demand): number {
  const { mean, spread = 0, leadTime, leadTimeSpread = 0 } = demand;
  return Math.sqrt(leadTime * spread * spread + mean * mean * leadTimeSpread * leadTimeSpread);
}

/**
 * Safety stock z · √(L·σd² + d²·σL²) at `serviceLevel` (a fraction: the chance of no stock-out in one lead time).
 * Covers all three textbook forms: a spread left out is 0. (Stevenson, Operations Management 14e, ch. 12.)
 */
export function safetyStock(demand: Demand, serviceLevel: number): number {
  return normalQuantile(serviceLevel) * leadTimeDemandSpread(demand);
}

/** Stock at which to order: mean demand over the lead time plus the safety stock. */
export function reorderPoint(demand: Demand, serviceLevel: number): number {
  return demand.mean * demand.leadTime + safetyStock(demand, serviceLevel);
}
