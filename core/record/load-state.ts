import type { Mark } from './mark.ts';

/**
 * - `open`: no result yet
 * - `passed`: its tips are sterile (those that were still part of it)
 * - `failed`: said, or counted as failed (`why`)
 * - `needs-release`: a temperature with no published value: lead, deputy or manager decide
 * - `doubted`: someone is not sure: not sterile until anyone types the result
 */
export type LoadStatus = 'open' | 'passed' | 'failed' | 'needs-release' | 'doubted';

/** What the figures say: see `core/science/sterilisation.ts`. */
export type LoadJudged = 'met' | 'short' | 'no-value' | 'not-judged';

/** One result as it was noted; what was not said is `null`. */
export interface LoadResult {
  readonly mark: Mark;
  readonly outcome: 'passed' | 'failed';
  readonly celsius: number | null;
  readonly minutes: number | null;
  readonly indicator: 'passed' | 'failed' | null;
  readonly dry: boolean | null;
  readonly judged: LoadJudged;
}

/** Why a tip that was put in is not part of the load's pass: something was noted of it meanwhile. */
export interface LeftLoad {
  readonly tip: string;
  readonly mark: Mark;
}

/** What tells loads of one number apart, for finding the one that is meant without reading them all. */
export interface LoadRef {
  readonly key: string;
  /** As `LoadState.autoclave`: the load's own, also where it was told later. */
  readonly autoclave: string | null;
}

/** Never changed in place: the fold puts a new one in the map, so that checkpoints can share them. */
export interface LoadState {
  /** `autoclave/number@local date`, `~2` behind it where one day has two of a number. */
  readonly key: string;
  readonly number: string;
  /** Bare id; `null`: not said, or none is listed. */
  readonly autoclave: string | null;
  /** Site of the autoclave, else of the chat room it was noted in; `null`: not known. */
  readonly site: string | null;
  /** Local date on which it was started (finished, where no start was noted). */
  readonly date: string;
  /** Every tip said to be in it, in order; includes those in `left`. */
  readonly tips: readonly string[];
  readonly left: readonly LeftLoad[];
  readonly started: Mark | null;
  /** When it ended: the first result; later results correct it and do not move the end. */
  readonly finished: Mark | null;
  /** Every result noted, oldest first, the latest 8; the last one stands. */
  readonly results: readonly LoadResult[];
  readonly status: LoadStatus;
  /** Why it counts as failed. */
  readonly failedWhy: 'said' | 'short' | 'indicator' | null;
  readonly wet: boolean;
  readonly doubt: Mark | null;
  /** Status that a settled doubt gives back. */
  readonly beforeDoubt: LoadStatus | null;
  readonly released: { readonly mark: Mark; readonly tips: readonly string[] } | null;
  /** Cycles have been counted for its tips. */
  readonly counted: boolean;
  /** Recalled after a positive spore test. */
  readonly recalled: Mark | null;
  /** It was started while its autoclave was held or out of service. */
  readonly onHeldAutoclave: boolean;
}
