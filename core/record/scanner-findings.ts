import type { Found } from './finding-base.ts';
import type { Hold } from './hold.ts';
import type { CauseStanding, Scan } from './scanner-state.ts';

/** A scan is started on, or a tip fitted to, a scanner not wiped since its last scan; not said to be the same patient. */
export interface NotWiped extends Found<'not-wiped'> {
  readonly scanner: string;
  readonly by: 'fitted' | 'scan-started';
  readonly earlier: Scan;
  /** The fitting before this scan was already found. */
  readonly again: boolean;
}

/** A scan is started on a scanner that is held, missing, on its way, settling or due for a cause. (Weekly past closing: the rules.) */
export interface NotReadyScanner extends Found<'not-ready-scanner'> {
  readonly scanner: string;
  readonly causes: readonly CauseStanding[];
  readonly never: boolean;
  readonly holds: readonly Hold[];
  readonly inTransit: boolean;
  readonly missing: boolean;
  readonly doubted: boolean;
}

/** A scanner at one site and its calibration tip at another. */
export interface CalibrationTipApart extends Found<'calibration-tip-apart'> {
  readonly scanner: string;
  readonly site: string;
  readonly tipSite: string;
}

/** Ask back: had it sat at room temperature? */
export interface PassBeforeSettling extends Found<'pass-before-settling'> {
  readonly scanner: string;
  readonly settledBy: number | null;
}

/** Due because the room has become warmer or colder since the last pass. */
export interface TemperatureDue extends Found<'temperature-due'> {
  readonly scanner: string;
  readonly cause: CauseStanding;
}
