import type { Practice, RuleValue } from '../practice/practice.ts';
import type { Instant } from '../time/instant.ts';
import type { AutoclaveState } from './autoclave-state.ts';
import type { History } from './history.ts';
import type { IncidentState } from './incident-state.ts';
import type { LoadRef, LoadState } from './load-state.ts';
import type { LongMap } from './long-map.ts';
import type { Mark } from './mark.ts';
import type { ScannerState } from './scanner-state.ts';
import type { SiteState } from './site-state.ts';
import type { TipState } from './tip-state.ts';

export * from './autoclave-state.ts';
export type * from './finding.ts';
export type * from './history.ts';
export type * from './hold.ts';
export type * from './incident-state.ts';
export type * from './load-state.ts';
export type * from './mark.ts';
export * from './scanner-state.ts';
export type * from './site-state.ts';
export type * from './tip-state.ts';

/** A setting made in chat; it comes before the practice file's own. */
export interface Setting {
  readonly name: string;
  readonly site: string | null;
  readonly scanner: string | null;
  /** `null`: the practice file's own holds again. */
  readonly value: RuleValue | null;
  readonly mark: Mark;
}

/**
 * Everything the record says, folded from its entries in order. Only the fold writes it; to everyone else it is to be read.
 * Maps keep the practice file's order; tips added later come behind.
 */
export interface State {
  /** The practice file that holds at the last entry folded, with the settings made in chat put over it. */
  practice: Practice;
  /** The same without those settings. */
  file: Practice;
  readonly scanners: Map<string, ScannerState>;
  readonly tips: Map<string, TipState>;
  /** By key; see `LoadState.key`. In the order in which they were first spoken of. */
  readonly loads: LongMap<LoadState>;
  /** Loads by number, oldest first. */
  readonly loadsByNumber: LongMap<readonly LoadRef[]>;
  readonly autoclaves: Map<string, AutoclaveState>;
  readonly sites: Map<string, SiteState>;
  /** Open ones, and closed ones for the list of the year. */
  readonly incidents: LongMap<IncidentState>;
  /** By `name|site|scanner`. */
  readonly settings: Map<string, Setting>;
  /** Learned words and what they mean. */
  readonly words: Map<string, { readonly means: string; readonly mark: Mark }>;
  /** By person and topic: who was shown what, when last. */
  readonly shown: Map<string, { readonly person: string; readonly topic: string; readonly mark: Mark }>;
  /** Latest `noted` of each author whose entries were folded. */
  readonly spoke: Map<string, Instant>;
  readonly history: History;
}
