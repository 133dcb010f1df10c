import { ruleValue } from '../../defaults/rule-value.ts';
import { MINUTE } from '../../time/instant.ts';
import type { LoadState, Mark, TipState } from '../state.ts';
import { addNeed, setStage } from '../tip-change.ts';
import { becomeSterile, countCycle } from './become-sterile.ts';
import type { Step } from './step.ts';

/** Its tips that were not fitted, used or spoilt while it was open. */
function members(step: Step, load: LoadState): TipState[] {
  const tips: TipState[] = [];
  for (const id of load.tips) {
    if (load.left.some((each) => each.tip === id)) continue;
    const tip = step.state.tips.get(id);
    if (tip !== undefined) tips.push(tip);
  }
  return tips;
}

/** The load has ended: each tip's cycle is counted once, whatever the result. */
function end(step: Step, load: LoadState, tip: TipState, first: boolean): void {
  if (!first || !tip.openLoads.includes(load.key)) return;
  tip.spoken = step.mark;
  countCycle(step, tip);
  tip.openLoads = tip.openLoads.filter((each) => each !== load.key);
}

/** Nothing has been noted of the tip since that load left it as it is. */
function isUntouched(tip: TipState, load: LoadState): boolean {
  if (tip.load !== load.key || tip.sent !== null) return false;
  if (tip.stage === 'in-load') return true;
  // What was noted after the failure (used, dropped, failed at inspection) comes behind it in the list.
  const last = tip.needs.at(-1);
  return tip.stage === 'used' && last?.why === 'load-failed' && last.load === load.key;
}

/** Passed: sterile, those that are still as the load left them. */
export function passTips(step: Step, load: LoadState, first: boolean): void {
  let sent: Mark | null = null;
  for (const tip of members(step, load)) {
    if (tip.sent !== null && (sent === null || tip.sent.at < sent.at)) sent = tip.sent;
    const takesPart = first && tip.openLoads.includes(load.key);
    end(step, load, tip, first);
    // Said to be in another load since: that one decides.
    if (takesPart ? tip.load !== load.key : !isUntouched(tip, load)) {
      if (!first) toldAgain(step, load, tip);
      continue;
    }
    if (load.wet) {
      addNeed(tip, 'load-wet', step.mark, load.key);
      setStage(tip, 'used', step.mark);
    } else becomeSterile(step, tip, 'load', load.key);
  }
  if (first && load.tips.length > 0) keepTurnaround(step, load, sent ?? load.started);
}

/** A later result of a load whose tip has gone on since. Told wet only after it had passed: what it made sterile is not. */
function toldAgain(step: Step, load: LoadState, tip: TipState): void {
  forgetFailure(step, load, tip);
  if (load.wet && tip.load === load.key) unsterile(tip, step.mark, 'load-wet', load.key);
}

/** The failure was corrected: what was noted of the tip since stands, the failure does not; one only fitted is as it went on. */
function forgetFailure(step: Step, load: LoadState, tip: TipState): void {
  const failed = tip.needs.some((each) => each.why === 'load-failed' && each.load === load.key);
  if (!failed || tip.load !== load.key) return;
  tip.needs = tip.needs.filter((each) => each.why !== 'load-failed' || each.load !== load.key);
  if (tip.stage === 'fitted' && tip.needs.length === 0 && !tip.usedSinceFitted && !load.wet)
    tip.sterile = { mark: step.mark, how: 'load', load: load.key, bagged: false };
}

/** No published value: as it is until lead, deputy or manager release it. */
export function waitTips(step: Step, load: LoadState, first: boolean): void {
  for (const tip of members(step, load)) {
    end(step, load, tip, first);
    if (tip.load !== load.key || tip.stage !== 'sterile') continue;
    // Let go by the lead before the same result was told again.
    if (!first && load.released?.tips.includes(tip.id) === true) continue;
    tip.sterile = null;
    setStage(tip, 'in-load', step.mark);
  }
}

/** Failed: not sterile. One that has gone on since keeps its place on the way round. */
export function failTips(step: Step, load: LoadState, first: boolean): void {
  for (const tip of members(step, load)) {
    const open = tip.openLoads.includes(load.key);
    end(step, load, tip, first);
    // In two loads at once and the other one passed: the one that failed counts.
    if (tip.load !== load.key && !(open && tip.stage === 'sterile')) continue;
    unsterile(tip, step.mark, 'load-failed', load.key);
    tip.loadsSinceUse = [];
  }
}

/** What made it sterile no longer holds. On a scanner it stays there; on its way round it goes on. */
export function unsterile(
  tip: TipState,
  mark: Mark,
  why: 'load-failed' | 'recalled' | 'load-wet',
  load: string,
): void {
  const { sent, stage } = tip;
  addNeed(tip, why, mark, load);
  // Behind the rest only where nothing had been noted of it since the load: see `isUntouched`.
  if (stage !== 'sterile' && stage !== 'in-load')
    tip.needs = [...tip.needs.slice(-1), ...tip.needs.slice(0, -1)];
  if (tip.stage === 'sent' || tip.stage === 'bagged' || tip.stage === 'washed') {
    // It left for another load before this was known: coming back from that one still counts.
    tip.sent = sent;
    return;
  }
  setStage(tip, tip.stage === 'fitted' ? 'fitted' : 'used', mark);
}

/** Lead, deputy or manager let it stand as sterile. */
export function releaseTips(step: Step, load: LoadState, ids: readonly string[]): string[] {
  const released: string[] = [];
  for (const tip of members(step, load)) {
    if (!ids.includes(tip.id) || tip.load !== load.key || tip.stage !== 'in-load') continue;
    becomeSterile(step, tip, 'released', load.key);
    released.push(tip.id);
  }
  return released;
}

function keepTurnaround(step: Step, load: LoadState, from: Mark | null): void {
  const site = load.site === null ? undefined : step.state.sites.get(load.site);
  if (site === undefined || from === null) return;
  const minutes = (step.mark.at - from.at) / MINUTE;
  // Told with its result or after it: when it went on is not known, and no load takes less.
  if (minutes < ruleValue(step.state.practice, 'leastLoadMinutes', { site: site.id })) return;
  site.turnarounds = [...site.turnarounds.slice(-19), minutes];
  site.turnaroundLoads += 1;
}
