import type { View } from '../matter.ts';
import type { Changes, Watch } from './watch.ts';

/** Views that belong to a watch, each with what brings the watch up to it. A copy of one belongs to nothing. */
const watches = new WeakMap<object, { readonly watch: Watch; readonly look: (() => void) | null }>();

/**
 * Lets whoever asks the rules through this view have the answers that still hold from looks before. `changes` must give
 * another number whenever anything changes that the view shows: of the record, or of what was said.
 */
export function share(view: View, watch: Watch, changes: () => Changes): View {
  watches.set(watch.view, { watch, look: null });
  watches.set(view, { watch, look: () => watch.look(view.state, view.now, changes()) });
  return view;
}

/** The watch that this view belongs to, looking at things as the view shows them; `null`: none. */
export function watchAt(view: object): Watch | null {
  const shared = watches.get(view);
  if (shared === undefined) return null;
  shared.look?.();
  return shared.watch;
}
