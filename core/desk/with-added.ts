import type { Practice } from '../practice/practice.ts';
import type { State } from '../record/state.ts';

/** The practice with the tips that notes have added ("new tips 13 to 16 arrived"), so that the reader knows their ids. */
export function withAdded(practice: Practice, state: State): Practice {
  const listed = new Set(practice.tips.map(({ id }) => id));
  const added = [...state.tips.values()].filter(({ id }) => !listed.has(id));
  if (added.length === 0) return practice;
  const home = practice.sites[0]?.id ?? '';
  const tips = added.map(({ id, site, limit }) => ({
    id,
    home: site ?? home,
    cycles: limit,
    cyclesSoFar: 0,
  }));
  return { ...practice, tips: [...practice.tips, ...tips] };
}
