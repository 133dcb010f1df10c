import type { Item } from '../../reading/slots.ts';
import { loadMeant } from '../load-key.ts';
import type { LoadState } from '../state.ts';
import { isReleasable, releaseLoad } from './doubts.ts';
import { itemParts, type Step, unknown } from './step.ts';

/**
 * A load is released whole, or those of its tips that are named with it; a tip that waits for its load's release alone is
 * released by its own name. Gives back what is left: things to be released of a hold.
 */
export function releaseLoads(step: Step, items: readonly Item[]): readonly Item[] {
  const named = loadsOf(step, items);
  const parts = new Map<string, string[]>();
  const rest: Item[] = [];
  for (const item of items) {
    const { kind, id } = itemParts(item);
    if (kind === 'load') continue;
    const key = kind === 'tip' ? loadToRelease(step, id, named) : null;
    if (key === null) rest.push(item);
    else parts.set(key, [...(parts.get(key) ?? []), id]);
  }
  for (const { key, number } of named)
    if (!parts.has(key)) releaseLoad(step, key, undefined, [`load:${number}`]);
  for (const [key, ids] of parts) {
    const number = step.state.loads.get(key)?.number ?? key;
    releaseLoad(step, key, ids, [`load:${number}`, ...ids.map((id): Item => `tip:${id}`)]);
  }
  return rest;
}

function loadsOf(step: Step, items: readonly Item[]): readonly LoadState[] {
  const loads: LoadState[] = [];
  for (const item of items) {
    const { kind, id } = itemParts(item);
    if (kind !== 'load') continue;
    const load = loadMeant(step.state, id);
    if (load === undefined) unknown(step, item);
    else loads.push(load);
  }
  return loads;
}

/** Key of the load whose release the tip waits for, or with which it was named; `null` where its own hold is meant. */
function loadToRelease({ state }: Step, id: string, named: readonly LoadState[]): string | null {
  const tip = state.tips.get(id);
  const load = tip?.load == null ? undefined : state.loads.get(tip.load);
  if (tip === undefined || load === undefined || tip.holds.length > 0 || tip.doubt !== null) return null;
  if (named.some(({ key }) => key === load.key)) return load.key;
  return tip.stage === 'in-load' && isReleasable(load) ? load.key : null;
}
