import type { Instant } from '../time/instant.ts';
import type { Turnaround } from './turnaround.ts';

/** Where a tip is on its way round. */
export type SupplyState =
  | 'unknown'
  | 'sterile'
  | 'fitted'
  | 'used'
  | 'washed'
  | 'bagged'
  | 'sent'
  | 'in-load'
  | 'held'
  | 'missing'
  | 'retired';

/** One tip at the site. */
export interface TipOnHand {
  readonly id: string;
  readonly state: SupplyState;
  readonly since: Instant;
  /** When it was sent, where that is earlier than `since` (a load started later). */
  readonly sentAt?: Instant;
  /** Fitted, and its scan is under way: it serves no further booking. */
  readonly scanning?: boolean;
}

/** Another site's sterile tips beyond what its own bookings need. */
export interface Spare {
  readonly site: string;
  readonly sterile: number;
}

/** A site's day from `now` to `end`, one tip a scan. */
export interface SupplyDay {
  readonly tips: readonly TipOnHand[];
  /** Starts of booked scans; those before `now` or after `end` are left out of account. */
  readonly bookings: readonly Instant[];
  readonly turnaround: Turnaround;
  /** Tips that one load holds; with it, loads run one after the other. Without it there is no limit. */
  readonly capacityPerLoad?: number;
  /** From a scan's start until its tip can be sent; 30 when absent (assumed). */
  readonly scanMinutes?: number;
  readonly now: Instant;
  /** Whether an instant has gone by; where it is left out `now` tells. */
  readonly hasPassed?: (at: Instant) => boolean;
  readonly end: Instant;
  readonly otherSites?: readonly Spare[];
}

/** Assumed: half an hour from a scan's start until its tip can be sent. */
export const SCAN_MINUTES = 30;
