import { ruleValue } from '../../defaults/rule-value.ts';
import type { Practice } from '../../practice/practice.ts';
import type { Item } from '../../reading/slots.ts';
import type { FaultNote, State } from '../../record/state.ts';
import { binomialUpperTail } from '../../science/binomial.ts';

/** More faults than chance would give an item, with the figures that say so. */
export interface Unlikely {
  readonly faults: number;
  /** Uses over which they came: its last 30, or as many as it has. */
  readonly uses: number;
  readonly othersFaults: number;
  readonly othersUses: number;
  /** Chance of as many or more at the others' rate. */
  readonly tail: number;
}

interface Counted {
  readonly id: string;
  readonly uses: number;
  readonly faults: readonly FaultNote[];
  readonly faultCount: number;
}

/**
 * A tip or scanner whose faults over its last uses are unlikely at the rate of all the others of its kind together (exact
 * binomial tail). `null`: not unlikely, too few, or no use of any other to compare with.
 */
export function unlikelyFaults(practice: Practice, state: State, item: Item): Unlikely | null {
  const found = kinOf(state, item);
  if (found === null) return null;
  const { own, others } = found;
  const span = ruleValue(practice, 'faultUses');
  const faults = own.faults.filter(({ atUse }) => atUse > own.uses - span).length;
  const othersUses = others.reduce((total, each) => total + each.uses, 0);
  const othersFaults = others.reduce((total, each) => total + each.faultCount, 0);
  if (faults < ruleValue(practice, 'faultLeast') || othersUses === 0) return null;
  // A fault noted with no use noted for it still came with one.
  const uses = Math.max(Math.min(own.uses, span), faults);
  const tail = binomialUpperTail(uses, faults, Math.min(1, othersFaults / othersUses));
  return tail < ruleValue(practice, 'faultTail') ? { faults, uses, othersFaults, othersUses, tail } : null;
}

function kinOf(
  state: State,
  item: Item,
): { readonly own: Counted; readonly others: readonly Counted[] } | null {
  const [kind, id] = item.split(/:(.*)/s);
  const all: ReadonlyMap<string, Counted> | null =
    kind === 'tip' ? state.tips : kind === 'scanner' ? state.scanners : null;
  const own = id === undefined ? undefined : all?.get(id);
  if (all === null || own === undefined) return null;
  return { own, others: [...all.values()].filter((each) => each !== own) };
}
