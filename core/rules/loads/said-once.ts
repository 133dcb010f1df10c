import type { LoadResult, LoadState, State } from '../../record/state.ts';
import type { View } from '../matter.ts';
import { judgedBy } from './judge-load.ts';

/**
 * True on the first result with figures of a load that nothing judges. Worked out from the record itself rather than
 * remembered, so a restart does not say it twice.
 */
export function firstWithoutTable(
  { practice, state }: Pick<View, 'practice' | 'state'>,
  load: LoadState,
  result: LoadResult,
): boolean {
  if (!hasFigures(result) || judgedBy(practice, load) !== null) return false;
  return !anyBefore(state, result, (other, each) => hasFigures(each) && judgedBy(practice, other) === null);
}

/** Tips of this load without a maker's limit, on the first result of any load that has such tips; else empty. */
export function firstWithoutLimit(state: State, load: LoadState, result: LoadResult): readonly string[] {
  const limitless = load.tips.filter((id) => isLimitless(state, id));
  if (limitless.length === 0) return [];
  const before = anyBefore(state, result, ({ tips }) => tips.some((id) => isLimitless(state, id)));
  return before ? [] : limitless;
}

function isLimitless(state: State, id: string): boolean {
  return state.tips.get(id)?.limit === null;
}

function hasFigures({ celsius, minutes }: LoadResult): boolean {
  return celsius !== null || minutes !== null;
}

/** The first load of all and the latest are at hand, and one of them is such a load where there is any: the rest is seldom read. */
function anyBefore(
  state: State,
  result: LoadResult,
  is: (load: LoadState, result: LoadResult) => boolean,
): boolean {
  const isBefore = (load: LoadState) =>
    load.results.some(
      (each) =>
        each.mark.entry !== result.mark.entry && each.mark.noted <= result.mark.noted && is(load, each),
    );
  return state.loads.recent().some(isBefore) || state.loads.all().some(isBefore);
}
