import type { Practice } from '../practice/practice.ts';
import type { State } from '../record/state.ts';
import type { Instant } from '../time/instant.ts';

/** Practice, record and instant at which something is judged; any `View` is one. */
export interface Moment {
  readonly practice: Practice;
  readonly state: State;
  readonly now: Instant;
}
