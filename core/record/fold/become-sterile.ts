import { ruleValue } from '../../defaults/rule-value.ts';
import type { SterileSince, TipState } from '../state.ts';
import { setStage } from '../tip-change.ts';
import { found, type Step } from './step.ts';

/** The one way in which a tip becomes sterile in the record: by a passed or released load, or taken as said. */
export function becomeSterile(
  step: Step,
  tip: TipState,
  how: SterileSince['how'],
  load: string | null,
): void {
  const { mark } = step;
  // Come back from the autoclave: one cycle, if the way there was noted and no load has counted it. Not sent, it still
  // stands under its last load.
  if (how === 'said' && tip.sent !== null) {
    countCycle(step, tip);
    tip.load = null;
  }
  tip.needs = [];
  tip.sent = null;
  tip.doubt = null;
  tip.usedSinceFitted = false;
  tip.sterile = { mark, how, load, bagged: tip.bagged !== null };
  setStage(tip, 'sterile', mark);
}

export function countCycle(step: Step, tip: TipState): void {
  tip.cycles += 1;
  const { id, cycles, limit } = tip;
  if (limit === null) return;
  const within = ruleValue(step.state.practice, 'cyclesOrderWithin');
  if (cycles >= limit - within)
    found(step, { kind: 'near-limit', items: [`tip:${id}`], tip: id, cycles, limit });
}
