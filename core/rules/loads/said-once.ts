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

/** Loads stand in the order in which they were first spoken of, so an earlier one is met at once where there is any. */
function anyBefore(
  state: State,
  result: LoadResult,
  is: (load: LoadState, result: LoadResult) => boolean,
): boolean {
  for (const load of state.loads.values())
    for (const each of load.results)
      if (each.mark.entry !== result.mark.entry && each.mark.noted <= result.mark.noted && is(load, each))
        return true;
  return false;
}
