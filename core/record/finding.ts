import type { Item } from '../reading/slots.ts';
import type { TestSort } from './autoclave-state.ts';
import type { Hold } from './hold.ts';
import type { Mark } from './mark.ts';
import type { CauseStanding, Scan } from './scanner-state.ts';
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

interface Found<K extends string> {
  readonly kind: K;
  /** `entry:kind:item`: never the same for two findings, the same after a refold. */
  readonly key: string;
  /** Entry on which it was noticed. */
  readonly mark: Mark;
  readonly items: readonly Item[];
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

/** `sterile` was said of a tip that the record cannot take it of: nothing changes. */
export interface SterileRefused extends Found<'sterile-refused'> {
  readonly tip: string;
  readonly reasons: readonly UnsafeReason[];
}

/** A load said to have passed counts as failed: its figures miss the time, or its indicator failed. */
export interface LoadCountsFailed extends Found<'load-counts-failed'> {
  readonly load: string;
  readonly why: 'short' | 'indicator';
}

/** A load said to have passed at a temperature with no published value: its tips wait for the lead. */
export interface LoadNoValue extends Found<'load-no-value'> {
  readonly load: string;
  readonly celsius: number;
}

/** A load came out wet: the packs of its tips do not keep them sterile. */
export interface LoadWet extends Found<'load-wet'> {
  readonly load: string;
  readonly tips: readonly string[];
}

/** A load failed (said, counted, or corrected to it): look back with `lookBack`. */
export interface LoadFailed extends Found<'load-failed'> {
  readonly load: string;
  readonly tips: readonly string[];
  /** It had been taken as passed before. */
  readonly corrected: boolean;
}

/** A result with no load to go with: its tips are not known. */
export interface LoadWithoutTips extends Found<'load-without-tips'> {
  readonly load: string;
}

/** Several open loads have that number and the note names no autoclave: nothing changes until it is said. */
export interface LoadAmbiguous extends Found<'load-ambiguous'> {
  readonly number: string;
  readonly loads: readonly string[];
}

/** A load with this number already has its result: a new load was opened (counters start again, or a slip). */
export interface LoadNumberAgain extends Found<'load-number-again'> {
  readonly load: string;
  readonly earlier: string;
}

/** The author may not say this of it: nothing changes; the lead, deputy or manager may. */
export interface Refused extends Found<'refused'> {
  readonly what: 'release' | 'load-release' | 'load-correction' | 'close-incident';
  readonly item: Item | null;
  readonly why: 'not-allowed' | 'load-failed' | 'needs-pass' | 'needs-clear-test' | 'nothing-to-release';
}

/** A load was started on an autoclave that is held or out of service: warning. */
export interface AutoclaveHeld extends Found<'autoclave-held'> {
  readonly autoclave: string;
  readonly load: string;
  readonly holds: readonly Hold[];
}

/** First load of the day without the tests that the practice makes. `leak` is weekly. */
export interface Untested extends Found<'untested'> {
  readonly autoclave: string;
  readonly load: string;
  readonly sorts: readonly TestSort[];
}

/** A test of an autoclave failed: it is held. */
export interface AutoclaveTestFailed extends Found<'autoclave-test-failed'> {
  readonly autoclave: string;
  readonly sort: TestSort;
}

/** The note does not say which of several autoclaves: a test waits until it is said, a load is kept without. */
export interface AutoclaveUnsaid extends Found<'autoclave-unsaid'> {
  readonly choices: readonly string[];
  /** The load of which it was not said; `null`: a test, of which nothing is recorded until it is. */
  readonly load: string | null;
}

/** A positive spore test: out of service; the loads since the last negative one; recalled or not. */
export interface SporePositive extends Found<'spore-positive'> {
  readonly autoclave: string;
  readonly inRow: number;
  readonly loads: readonly string[];
  readonly recalledLoads: readonly string[];
  readonly recalledTips: readonly string[];
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
