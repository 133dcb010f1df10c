import type { Found } from './finding-base.ts';
import type { Mark } from './mark.ts';
import type { Scan } from './scanner-state.ts';
import type { NeedWhy } from './tip-state.ts';

/**
 * Why a tip is not to meet a patient. What needs a load carries the event's mark; the rest stands beside it.
 * `not-sterile`: on its way round (washed, bagged, sent) with nothing that says it came back.
 * `fitted`: on a scanner since its last load (only where `sterile` is said of it).
 */
export type UnsafeWhy =
  | NeedWhy
  | 'no-sterile-record'
  | 'not-sterile'
  | 'fitted'
  | 'load-open'
  | 'load-doubted'
  | 'load-needs-release'
  | 'doubted'
  | 'held'
  | 'missing'
  | 'retired'
  | 'past-cycles'
  | 'too-old';

export interface UnsafeReason {
  readonly why: UnsafeWhy;
  /** What happened to it, when and by whom; `null` where no note says (never recorded sterile). */
  readonly mark: Mark | null;
  readonly load: string | null;
}

/** Where contact with a patient was noticed. */
export type ContactBy = 'fitted' | 'scan-started' | 'scan-finished' | 'used';

/** A tip that must not be used is fitted or used: warning. */
export interface UnsafeTip extends Found<'unsafe-tip'> {
  readonly tip: string;
  readonly scanner: string | null;
  readonly site: string | null;
  readonly by: ContactBy;
  /** All that hold, the gravest first. */
  readonly reasons: readonly UnsafeReason[];
  /** The same for the fitting and the scan that follows it: a warning is never repeated for one cause. */
  readonly cause: string;
  /** This cause was found before (the tip was fitted, now it is scanned with). */
  readonly again: boolean;
  /** Its state is unknown and the site's tips have not been counted yet: day one. */
  readonly dayOne: boolean;
}

/** The tip on the scanner was used on an earlier scan and is scanned with again; not said to be the same patient. */
export interface SameTipAgain extends Found<'same-tip-again'> {
  readonly tip: string;
  readonly scanner: string;
  readonly by: ContactBy;
  readonly earlier: Scan;
}

/** `sterile` was said of a tip that the record cannot take it of: nothing changes. */
export interface SterileRefused extends Found<'sterile-refused'> {
  readonly tip: string;
  readonly reasons: readonly UnsafeReason[];
}

/** In a load twice running with no use between. */
export interface NeverUsedInTwoLoads extends Found<'never-used-in-two-loads'> {
  readonly tip: string;
  readonly loads: readonly string[];
}

/** In two loads at once. */
export interface InTwoLoads extends Found<'in-two-loads'> {
  readonly tip: string;
  readonly loads: readonly string[];
}

/** Fitted, used or removed while its load is open: not part of that load's pass. */
export interface LeftOpenLoad extends Found<'left-open-load'> {
  readonly tip: string;
  readonly load: string;
}

/** A tip was sent or loaded with no cycle left: caution, retire it. */
export interface PastLimit extends Found<'past-limit'> {
  readonly tip: string;
  readonly by: 'sent' | 'load-started';
  readonly cycles: number;
  readonly limit: number;
}

/** Its count came within 2 of the limit (order), or to it (one last use). */
export interface NearLimit extends Found<'near-limit'> {
  readonly tip: string;
  readonly cycles: number;
  readonly limit: number;
}

/** A new tip put on says that the old one came off: worked out, to be shown as such. */
export interface Displaced extends Found<'displaced'> {
  readonly tip: string;
  readonly scanner: string;
}
