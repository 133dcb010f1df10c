import type { View } from '../matter.ts';
import type { Moment } from '../moment.ts';
import { Grounds } from './grounds.ts';
import { watchAt } from './shared.ts';
import type { Answer, Watch } from './watch.ts';

/**
 * `work` as it is, but that what it gave once is given again for as long as everything it was worked out from is as it
 * was: the record, what was said, and the stretch of time within which the clock makes no difference (`clock.ts`). `what`
 * is everything that is asked besides the view. A view that nobody shares is asked anew each time.
 */
export function remembered<V extends Moment, T>(
  work: (view: V | View, what: string) => T,
): (view: V, what: string) => T {
  return (view, what) => {
    const watch = watchAt(view);
    if (watch === null) return work(view, what);
    let known = watch.answers.get(work);
    if (known === undefined) {
      known = new Map();
      watch.answers.set(work, known);
    }
    const before = known.get(what);
    const answer = before?.grounds.hold(watch) === true ? before : workOut(watch, work, what);
    known.set(what, answer);
    watch.grounds?.add(answer.grounds);
    // What `work` gave under this very key.
    return answer.value as T;
  };
}

function workOut<V extends Moment, T>(
  watch: Watch,
  work: (view: V | View, what: string) => T,
  what: string,
): Answer<T> {
  const asking = watch.grounds;
  const grounds = new Grounds();
  watch.grounds = grounds;
  try {
    return { value: work(watch.view, what), grounds };
  } finally {
    watch.grounds = asking;
  }
}

/** What `work` gives, once for as long as the same view shows the same: a turn asks several times what waits. */
export function atThisLook<T>(view: View, work: (view: View) => T): T {
  const watch = watchAt(view);
  if (watch === null || watch.grounds !== null) return work(view);
  if (!watch.looks.has(work)) watch.looks.set(work, work(view));
  // What `work` gave under this very key.
  return watch.looks.get(work) as T;
}
