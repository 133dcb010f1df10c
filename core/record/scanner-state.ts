import type { Instant } from '../time/instant.ts';
import type { Hold } from './hold.ts';
import type { Mark } from './mark.ts';
import type { Reading } from './site-state.ts';

/** In the order in which they are named; `never` and `weekly` are worked out from the passes. */
export const CAUSES = ['failed', 'dropped', 'repaired', 'moved', 'temperature'] as const;
/** A reason for calibrating that stands until the next pass. */
export type Cause = (typeof CAUSES)[number];

/** A temperature change since the last pass: both readings, for saying so. */
export interface TemperatureStep {
  readonly atPass: Reading;
  readonly now: Reading;
}

export interface CauseStanding {
  readonly cause: Cause;
  readonly mark: Mark;
  /** For `temperature` only. */
  readonly step: TemperatureStep | null;
}

/** On its way: it left `from`, for `to` where that was said. */
export interface Departure {
  readonly mark: Mark;
  readonly from: string | null;
  readonly to: string | null;
}

/** The last arrival at ANOTHER site. A move between rooms of one site is none. */
export interface Arrival {
  readonly mark: Mark;
  readonly from: string | null;
  readonly site: string;
  /** `departed` to `moved`; `null` where no departure was noted. */
  readonly journeyMinutes: number | null;
  /** Difference of the two sites' readings, °C, each under 24 h old; `null` where one is lacking. */
  readonly gap: number | null;
  /** Settling as it was judged, whole minutes; a reading at the new site while it settles judges anew. */
  readonly settleMinutes: number;
  /** `mark.at` plus those minutes. */
  readonly settledBy: Instant;
}

export interface Pass {
  readonly mark: Mark;
  readonly site: string | null;
  /** The site's (or room's) reading that held at the pass; `null` where there was none. */
  readonly reading: Reading | null;
}

/** A pass noted while the scanner was settling or on its way: does not count until a person says it had settled. */
export interface EarlyPass {
  readonly pass: Pass;
  /** When settling would be over; `null` while on its way. */
  readonly settledBy: Instant | null;
  /** What was asked back: waiting for an answer, or answered no. */
  readonly status: 'asked' | 'doubted';
}

/** A scan, under way or finished. */
export interface Scan {
  /** Entry that told of it first. */
  readonly started: Mark;
  /** `null` while it is under way. Set without a note when the next scan starts or the tip comes off. */
  readonly finished: Mark | null;
  readonly tip: string | null;
  readonly site: string | null;
  readonly room: string | null;
  readonly samePatient: boolean;
}

export interface FaultNote {
  readonly mark: Mark;
  readonly sort: string;
  /** The item's count of uses when it was noted: for "within its last 30 uses". */
  readonly atUse: number;
}

export interface ScannerState {
  readonly id: string;
  /** Where it is, or was before it left. */
  site: string | null;
  room: string | null;
  /** The note that put it there; `null` while it stands at home as the practice file says. */
  placed: Mark | null;
  /** `null` when it is not on its way. */
  departed: Departure | null;
  arrived: Arrival | null;
  /** Where its calibration tip is. `site` null: on its way. */
  calibrationTip: { site: string | null; room: string | null; mark: Mark | null; missing: Mark | null };
  lastPass: Pass | null;
  earlyPass: EarlyPass | null;
  lastFailure: Mark | null;
  /** Failed calibrations with no pass between. */
  failuresInRow: number;
  /** Reasons standing since the last pass, one of each sort, the latest; ordered as in `CAUSES`. */
  causes: readonly CauseStanding[];
  /** Last finished scan with no whole wipe-down since; `null`: clean. */
  dirtySince: Scan | null;
  /** Entry of the scan that a not-wiped finding was about last: fitting and then scanning have one cause. */
  warnedNotWiped: string | null;
  lastWipe: Mark | null;
  /** Lens or base alone; not a wipe-down. */
  lastPartWipe: Mark | null;
  /** Cover on, with the note that said so; `null`: off, or not said. */
  covered: Mark | null;
  /** When the cover came off last (a tip went on). */
  uncovered: Mark | null;
  /** Tip on it, until it comes off: a used tip stays on until a note or another tip takes it off. */
  tip: string | null;
  tipFitted: Mark | null;
  /** Under way now. */
  scan: Scan | null;
  /** The last scan, under way or finished. */
  lastScan: Scan | null;
  /** Site's local date of the last scan or use. */
  usedOn: string | null;
  /** Last thing noted of it, whatever it was. */
  lastNoted: Mark | null;
  holds: readonly Hold[];
  missing: Mark | null;
  /** "not sure blue passed": not ready until answered. */
  doubt: Mark | null;
  /** Last time it came back into use: arrived, was found, was released, or passed what it was held for. What waited for that is asked then. */
  available: Mark | null;
  uses: number;
  /** The latest 60, oldest first. */
  faults: readonly FaultNote[];
  faultCount: number;
}
