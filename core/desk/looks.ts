import type { Practice } from '../practice/practice.ts';
import type { Timeline } from '../record/timeline.ts';
import { share } from '../rules/look.ts';
import type { View } from '../rules/matter.ts';
import type { Instant } from '../time/instant.ts';
import type { PostLog } from './post-log.ts';

/** What rules look at, one view for as long as nothing changes: a note, what is due after it and the next instant share it. */
export class Looks {
  #last: { readonly view: View; readonly changes: number } | null = null;

  view(practice: Practice, timeline: Timeline, said: PostLog, now: Instant): View {
    // Asked for first: it folds what was added.
    const { state } = timeline;
    const changes = () => timeline.changes + said.changes;
    const last = this.#last;
    if (
      last?.changes === changes() &&
      last.view.now === now &&
      last.view.state === state &&
      last.view.said === said &&
      last.view.practice === practice
    )
      return last.view;
    const view = share({ practice, state, said, now }, changes);
    this.#last = { view, changes: changes() };
    return view;
  }
}
