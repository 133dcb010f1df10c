import type { Mark } from './mark.ts';

/**
 * Why something must not be used. Several may stand at once; it is free when none is left.
 * - `said`: somebody said so (also a damaged mirror or body)
 * - `dropped`: a scanner, until it passes its calibration
 * - `reached-patient`: a tip after an incident
 * - `test-failed`: an autoclave whose test failed
 * - `spore-positive`: an autoclave, until a repeat is clear (or, after a second positive, repair and three clear cycles)
 */
export type HoldSort = 'said' | 'damaged' | 'dropped' | 'reached-patient' | 'test-failed' | 'spore-positive';

/** Who can end it. `placer`: who placed it, or the lead, deputy or manager. `lead`: those three alone. The others end by what is noted. */
export type HoldEnds = 'placer' | 'lead' | 'pass' | 'clear-test';

export interface Hold {
  readonly sort: HoldSort;
  readonly reason: string | null;
  readonly mark: Mark;
  readonly ends: HoldEnds;
}
