import type { Hold, Mark, Need, NeedWhy, TipShown, TipStage, TipState } from './state.ts';

function shownOf(tip: TipState): TipShown {
  if (tip.retired !== null) return 'retired';
  if (tip.missing !== null) return 'missing';
  if (tip.holds.length > 0) return 'held';
  // In doubt: not to be taken as sterile until someone answers.
  if (tip.doubt !== null && tip.stage === 'sterile') return 'unknown';
  return tip.stage;
}

/** Brings the shown state up to date after a change; `since` moves only where it changes. */
export function show(tip: TipState, mark: Mark): void {
  const state = shownOf(tip);
  if (state === tip.state) return;
  tip.state = state;
  tip.since = mark;
}

export function setStage(tip: TipState, stage: TipStage, mark: Mark): void {
  tip.stage = stage;
  show(tip, mark);
}

/** From here on it needs a load: what was sent before no longer counts as on its way back. */
export function addNeed(tip: TipState, why: NeedWhy, mark: Mark, load: string | null = null): void {
  const need: Need = { why, mark, load };
  tip.needs = [...tip.needs.filter((each) => each.why !== why), need];
  tip.sterile = null;
  tip.sent = null;
}

/** Another hold. Of one sort the latest stands, but what two people placed ends only when both, or the lead, let it go. */
export function hold(holds: readonly Hold[], added: Hold): readonly Hold[] {
  const { sort, ends, mark } = added;
  const isSame = (each: Hold) =>
    each.sort === sort && each.ends === ends && (ends !== 'placer' || each.mark.from === mark.from);
  return [...holds.filter((each) => !isSame(each)), added];
}

/** A note that has it in someone's hands says that it is no longer missing; it then needs a load. */
export function isBack(tip: TipState, mark: Mark): void {
  if (tip.missing === null) return;
  tip.missing = null;
  addNeed(tip, 'was-missing', mark);
  setStage(tip, 'used', mark);
}
