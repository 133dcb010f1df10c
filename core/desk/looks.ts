import type { Practice } from '../practice/practice.ts';
import type { Timeline } from '../record/timeline.ts';
import type { View } from '../rules/matter.ts';
import { share } from '../rules/watch/shared.ts';
import { Watch } from '../rules/watch/watch.ts';
import type { Instant } from '../time/instant.ts';
import type { PostLog } from './post-log.ts';

/** What rules look at, from turn to turn: one view for as long as nothing changes, and one watch for a practice. */
export class Looks {
  #watch: Watch | null = null;
  #last: { readonly view: View; readonly record: number; readonly talk: number } | null = null;

  view(practice: Practice, timeline: Timeline, said: PostLog, now: Instant): View {
    // Asked for first: it folds what was added.
    const { state } = timeline;
    const last = this.#last;
    if (
      last?.record === timeline.changes &&
      last.talk === said.changes &&
      last.view.now === now &&
      last.view.state === state &&
      last.view.said === said &&
      last.view.practice === practice
    )
      return last.view;
    const view = { practice, state, said, now };
    if (this.#watch === null || last?.view.practice !== practice || last.view.said !== said)
      this.#watch = new Watch(view);
    const changes = () => ({ record: timeline.changes, talk: said.changes });
    share(view, this.#watch, changes);
    this.#last = { view, ...changes() };
    return view;
  }
}
