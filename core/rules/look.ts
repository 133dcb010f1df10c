import type { View } from './matter.ts';

/** Views that are shared, each with what counts the changes of what it shows. A copy of one shares nothing with it. */
const shared = new WeakMap<object, () => number>();

/**
 * Lets everything that asks the rules through this view share what was worked out, for as long as `changes` gives the
 * same number. It must give another one whenever anything changes that the view shows: the record, or what was said.
 */
export function share(view: View, changes: () => number): View {
  shared.set(view, changes);
  return view;
}

interface Known<T> {
  at: number;
  readonly values: Map<string, T>;
}

/**
 * What one question gives, worked out once for each look at things: a turn asks what is open up to four times, and rules
 * ask one another. A view that is not shared is asked anew each time.
 */
export class OncePerLook<T> {
  readonly #known = new WeakMap<object, Known<T>>();

  /** What `work` gives. `what`: everything that is asked besides the view. */
  get(view: object, what: string, work: () => T): T {
    const changes = shared.get(view);
    if (changes === undefined) return work();
    const values = this.#valuesAt(view, changes());
    const known = values.get(what);
    if (known !== undefined) return known;
    const value = work();
    values.set(what, value);
    return value;
  }

  #valuesAt(view: object, at: number): Map<string, T> {
    let known = this.#known.get(view);
    if (known === undefined) {
      known = { at, values: new Map() };
      this.#known.set(view, known);
    }
    if (known.at !== at) {
      known.values.clear();
      known.at = at;
    }
    return known.values;
  }
}
