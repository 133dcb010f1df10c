import type { Practice } from '../practice/practice.ts';
import type { Archive } from './archive.ts';
import type { Entry } from './entry.ts';
import type { Place } from './order.ts';
import type { PackedState } from './state-json.ts';

/** Where a timeline keeps what is only history, and how much it keeps at hand. */
export interface TimelineOptions {
  readonly archive?: Archive;
  /** Entries that stay in memory when the rest goes to the archive: corrections of some weeks refold from here. */
  readonly keep?: number;
  /** More entries than this in memory, and all but `keep` go. */
  readonly most?: number;
  /** Days of history that stay in the state; see `retire`. */
  readonly days?: number;
}

/** A timeline for a snapshot: a state, and what comes after it. The rest is in its archive. */
export interface SavedTimeline {
  /** The practice file as it was when the record began. */
  readonly practice: Practice;
  readonly state: PackedState;
  /** The place up to which everything is in the state; `null`: nothing yet. */
  readonly through: Place | null;
  readonly entries: readonly Entry[];
  /** Decisions about entries that do not hold just now. */
  readonly waiting: readonly Entry[];
}
