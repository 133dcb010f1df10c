import { newTip } from '../start-state.ts';
import type { NeedWhy, TipStage, TipState, UnsafeReason } from '../state.ts';
import { addNeed, isBack, setStage } from '../tip-change.ts';
import { siteOfRoom } from '../where.ts';
import { becomeSterile } from './become-sterile.ts';
import { leaveLoads, takeOff } from './contact.ts';
import { found, type Step, type Steps, tipsOf } from './step.ts';
import { tellStock } from './stocktake.ts';

export const tipSteps = {
  // New ones are not known to be sterile.
  added: (step, said) => {
    const { state, mark } = step;
    for (const id of said.tips) {
      const tip = state.tips.get(id) ?? newTip(id, siteOfRoom(state.practice, step.entry.room), null, 0);
      tip.added ??= mark;
      tip.since ??= mark;
      tip.spoken = mark;
      state.tips.set(id, tip);
    }
  },
  removed: (step, said) => {
    for (const tip of tipsOf(step, said.tips)) {
      isBack(tip, step.mark);
      leaveLoads(step, tip);
      takeOff(step, tip);
      tip.bagged = null;
    }
  },
  washed: (step, said) => {
    for (const tip of tipsOf(step, said.tips)) {
      if (!takeOn(step, tip)) continue;
      tip.bagged = null;
      tip.sent = null;
      goRound(step, tip, 'washed');
    }
    tellStock(step, said.tips);
  },
  bagged: (step, said) => {
    for (const tip of tipsOf(step, said.tips)) {
      // Wrapped after its load, as after a cycle for unwrapped instruments: it stays what it is.
      if (tip.sterile !== null && tip.stage === 'sterile') tip.sterile = { ...tip.sterile, bagged: true };
      tip.bagged = step.mark;
      if (takeOn(step, tip) && tip.stage !== 'sterile' && tip.stage !== 'sent') goRound(step, tip, 'bagged');
    }
    tellStock(step, said.tips);
  },
  sent: (step, said) => {
    for (const tip of tipsOf(step, said.tips)) {
      const onLoad = !takeOn(step, tip);
      checkLimit(step, tip, 'sent');
      if (!onLoad) goRound(step, tip, 'sent');
      tip.sent = step.mark;
    }
    tellStock(step, said.tips);
  },
  sterile: (step, said) => {
    for (const tip of tipsOf(step, said.tips)) saySterile(step, tip);
    tellStock(step, said.tips);
  },
  inspected: (step, said) => {
    for (const tip of tipsOf(step, said.tips))
      if (said.outcome === 'failed') spoil(step, tip, 'failed-inspection');
  },
  retired: (step, said) => {
    for (const tip of tipsOf(step, said.tips)) {
      if (tip.scanner !== null) takeOff(step, tip);
      leaveLoads(step, tip);
      tip.retired ??= { mark: step.mark, reason: said.reason ?? null };
      setStage(tip, tip.stage, step.mark);
    }
    tellStock(step, said.tips);
  },
} satisfies Steps;

/** `false`: it is part of an open load, and what was said is an earlier step told late. */
function takeOn(step: Step, tip: TipState): boolean {
  isBack(tip, step.mark);
  if (tip.scanner !== null) takeOff(step, tip);
  tip.departed = null;
  return tip.load === null || tip.stage !== 'in-load' || !tip.openLoads.includes(tip.load);
}

/** A step on the way round: from here only a load, or coming back from one, makes it sterile. */
function goRound(step: Step, tip: TipState, stage: TipStage): void {
  if (stage === 'washed') tip.washed = step.mark;
  tip.sterile = null;
  if (tip.needs.length === 0) addNeed(tip, 'reprocessing', step.mark);
  setStage(tip, stage, step.mark);
}

/** Dropped, its pack broken, its indicator unchanged, failed at inspection: used until its next passed load. */
export function spoil(step: Step, tip: TipState, why: NeedWhy): void {
  leaveLoads(step, tip);
  addNeed(tip, why, step.mark);
  setStage(tip, 'used', step.mark);
}

/** No cycle is left for the one that is begun. */
export function checkLimit(step: Step, tip: TipState, by: 'sent' | 'load-started'): void {
  const { id, cycles, limit } = tip;
  if (limit === null || cycles < limit || tip.retired !== null) return;
  // Sent and then loaded is one way to the autoclave, said twice.
  if (by === 'load-started' && tip.sent !== null) return;
  found(step, { kind: 'past-limit', items: [`tip:${id}`], tip: id, by, cycles, limit });
}

function saySterile(step: Step, tip: TipState): void {
  const reasons = reasonsToRefuse(step, tip);
  if (reasons.length > 0) {
    const items = [`tip:${tip.id}`];
    found(step, { kind: 'sterile-refused', items, tip: tip.id, reasons });
    return;
  }
  // A stocktake tells what is known: nothing begins anew.
  if (tip.stage === 'sterile' && tip.sterile !== null) {
    tip.doubt = null;
    setStage(tip, 'sterile', step.mark);
    return;
  }
  becomeSterile(step, tip, 'said', null);
}

/** Why the record cannot take it that the tip is sterile: contact since its last load, or a load with no good result. */
function reasonsToRefuse(step: Step, tip: TipState): UnsafeReason[] {
  const reasons: UnsafeReason[] = [];
  if (tip.retired !== null) reasons.push({ why: 'retired', mark: tip.retired.mark, load: null });
  if (tip.missing !== null) reasons.push({ why: 'missing', mark: tip.missing, load: null });
  if (tip.scanner !== null) reasons.push({ why: 'fitted', mark: tip.fitted, load: null });
  const load = tip.load === null ? undefined : step.state.loads.get(tip.load);
  if (load !== undefined && load.finished === null) {
    // Even of one that it has left: what came back may be that load, of which no result is known.
    reasons.push({ why: 'load-open', mark: load.started, load: load.key });
    return reasons;
  }
  // Sent after that, it has been through the autoclave again: with no load named, taken as said.
  if (tip.sent !== null) return reasons;
  // Washed or bagged with no use on record is as good as unknown: taken as said.
  for (const { why, mark, load } of tip.needs) if (why !== 'reprocessing') reasons.push({ why, mark, load });
  if (load?.status === 'doubted') reasons.push({ why: 'load-doubted', mark: load.doubt, load: load.key });
  else if (load?.status === 'needs-release' && load.released?.tips.includes(tip.id) !== true)
    reasons.push({ why: 'load-needs-release', mark: load.finished, load: load.key });
  else if (load?.status === 'failed' && tip.sterile === null && tip.needs.length === 0)
    reasons.push({ why: 'load-failed', mark: load.finished, load: load.key });
  return reasons;
}
