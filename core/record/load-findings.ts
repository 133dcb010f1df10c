import type { TestSort } from './autoclave-state.ts';
import type { Found } from './finding-base.ts';
import type { Hold } from './hold.ts';

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
