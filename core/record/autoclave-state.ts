import type { Instant } from '../time/instant.ts';
import type { Hold } from './hold.ts';
import type { Mark } from './mark.ts';

/** Key in the state of the one autoclave of a practice that lists none (and of notes that do not say which). */
export const UNNAMED = '';

export type TestSort = 'penetration' | 'control' | 'leak';

export interface TestResult {
  readonly mark: Mark;
  readonly outcome: 'passed' | 'failed';
}

export interface SporeTest {
  readonly outcome: 'passed' | 'failed' | 'running';
  /** Local date on which it was run: due dates count from this. */
  readonly ran: string;
  /** Instant from which loads count as after it: the note that it was running, else that day's start. */
  readonly ranAt: Instant;
  /** The note that told of it last. */
  readonly mark: Mark;
}

export interface AutoclaveState {
  /** Bare id, or `UNNAMED`. */
  readonly id: string;
  readonly site: string | null;
  holds: readonly Hold[];
  /** Last result of each sort; a sort that is absent has never been noted: not practised here. */
  tests: Partial<Record<TestSort, TestResult>>;
  /** The latest 12, in order of the date they were run. */
  sporeTests: readonly SporeTest[];
  lastNegative: SporeTest | null;
  /** Positives with no negative between. */
  positivesInRow: number;
  /** After a second positive: repaired since? and clear empty-chamber cycles since (three free it). */
  repaired: Mark | null;
  clearCycles: number;
  clearSporeTests: number;
  /** Keys of loads since the last negative spore test was run, oldest first, the latest 400. */
  loadsSinceNegative: readonly string[];
  /** Local date of the last load started: the first of a day is checked for tests. */
  lastLoadDate: string | null;
  lastLoad: string | null;
}
