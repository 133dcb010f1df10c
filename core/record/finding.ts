import type { Item } from '../reading/slots.ts';
import type { Found } from './finding-base.ts';
import type {
  AutoclaveHeld,
  AutoclaveTestFailed,
  AutoclaveUnsaid,
  LoadAmbiguous,
  LoadCountsFailed,
  LoadFailed,
  LoadNoValue,
  LoadNumberAgain,
  LoadWet,
  LoadWithoutTips,
  SporePositive,
  Untested,
} from './load-findings.ts';
import type {
  CalibrationTipApart,
  NotReadyScanner,
  NotWiped,
  PassBeforeSettling,
  TemperatureDue,
} from './scanner-findings.ts';
import type {
  Displaced,
  InTwoLoads,
  LeftOpenLoad,
  NearLimit,
  NeverUsedInTwoLoads,
  PastLimit,
  SameTipAgain,
  SterileRefused,
  UnsafeTip,
} from './tip-findings.ts';

export type * from './load-findings.ts';
export type * from './scanner-findings.ts';
export type * from './tip-findings.ts';

/** The author may not say this of it: nothing changes; the lead, deputy or manager may. */
export interface Refused extends Found<'refused'> {
  readonly what: 'release' | 'load-release' | 'load-correction' | 'close-incident';
  readonly item: Item | null;
  readonly why:
    | 'not-allowed'
    | 'not-signed'
    | 'load-failed'
    | 'needs-pass'
    | 'needs-clear-test'
    | 'nothing-to-release';
}

/** The note speaks of something that the practice file does not have: nothing changes. */
export interface UnknownItem extends Found<'unknown-item'> {
  readonly item: Item;
}

/** What the fold noticed on an entry: worked out anew whenever it is folded, so a warning is a function of the record. */
export type Finding =
  | UnsafeTip
  | SameTipAgain
  | NotWiped
  | NotReadyScanner
  | SterileRefused
  | LoadCountsFailed
  | LoadNoValue
  | LoadWet
  | LoadFailed
  | LoadWithoutTips
  | LoadAmbiguous
  | LoadNumberAgain
  | Refused
  | AutoclaveHeld
  | Untested
  | AutoclaveTestFailed
  | AutoclaveUnsaid
  | SporePositive
  | NeverUsedInTwoLoads
  | InTwoLoads
  | LeftOpenLoad
  | CalibrationTipApart
  | PassBeforeSettling
  | TemperatureDue
  | PastLimit
  | NearLimit
  | Displaced
  | UnknownItem;

export type FindingKind = Finding['kind'];
export type FindingOf<K extends FindingKind> = Extract<Finding, { kind: K }>;
