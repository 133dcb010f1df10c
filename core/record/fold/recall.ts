import { ruleValue } from '../../defaults/rule-value.ts';
import type { AutoclaveState, LoadState, State } from '../state.ts';
import { unsterile } from './load-tips.ts';
import type { Step } from './step.ts';

/** The load's own checks were noted and good: figures that hold, indicator passed. */
function ownChecksGood(load: LoadState): boolean {
  const last = load.results.at(-1);
  return last !== undefined && last.judged === 'met' && last.indicator === 'passed';
}

/** A load of an autoclave whose spore test is positive is recalled: at the second positive, or at the first as the rule says. */
export function recallNow(state: State, autoclave: AutoclaveState, load: LoadState): boolean {
  if (load.tips.length === 0 || load.recalled !== null) return false;
  if (autoclave.positivesInRow >= 2) return true;
  return ruleValue(state.practice, 'sporeRecall') === 'first' || !ownChecksGood(load);
}

/** Its tips are not sterile, unless they have been through another load since. Returns those it concerned. */
export function recall(step: Step, load: LoadState): string[] {
  const { state, mark } = step;
  state.loads.set(load.key, { ...load, recalled: mark });
  const recalled: string[] = [];
  for (const id of load.tips) {
    const tip = state.tips.get(id);
    if (tip === undefined || tip.load !== load.key) continue;
    unsterile(tip, mark, 'recalled', load.key);
    recalled.push(id);
  }
  return recalled;
}
