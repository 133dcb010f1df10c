import type { Item } from '../../reading/slots.ts';
import { whyNotLoosen } from '../authority.ts';
import { loadMeant } from '../load-key.ts';
import type { LoadState, Refused } from '../state.ts';
import { setStage, show } from '../tip-change.ts';
import { passTips, releaseTips } from './load-tips.ts';
import { found, itemParts, type Step, scannerOf, tipOf, unknown } from './step.ts';

/** Not sure of it: a load's tips are not sterile, a tip is not sterile, a scanner is not ready, until someone answers. */
export function doubt(step: Step, item: Item): void {
  const { kind, id } = itemParts(item);
  const { mark, state } = step;
  if (kind === 'load') {
    const load = loadMeant(state, id);
    if (load === undefined) unknown(step, item);
    else doubtLoad(step, load);
    return;
  }
  if (kind === 'scanner') {
    const scanner = scannerOf(step, id);
    if (scanner !== undefined) scanner.doubt = mark;
  } else if (kind === 'tip') {
    const tip = tipOf(step, id);
    if (tip === undefined) return;
    tip.doubt = mark;
    show(tip, mark);
  }
}

function doubtLoad(step: Step, load: LoadState): void {
  const { state, mark } = step;
  // A failed load cannot become worse, and doubting it must not be a way round its failure.
  if (load.status === 'failed' || load.status === 'doubted') return;
  state.loads.set(load.key, { ...load, status: 'doubted', doubt: mark, beforeDoubt: load.status });
  for (const id of load.tips) {
    const tip = state.tips.get(id);
    if (tip === undefined || tip.load !== load.key || tip.stage !== 'sterile') continue;
    tip.sterile = null;
    setStage(tip, 'in-load', mark);
  }
}

/** The doubt is answered and nothing new was said: what stood before stands again. */
export function settle(step: Step, item: Item): void {
  const { kind, id } = itemParts(item);
  const { state, mark } = step;
  if (kind === 'load') {
    const load = loadMeant(state, id);
    if (load === undefined || load.status !== 'doubted') return;
    const after: LoadState = { ...load, status: load.beforeDoubt ?? 'open', doubt: null, beforeDoubt: null };
    state.loads.set(load.key, after);
    if (after.status === 'passed' && after.recalled === null) passTips(step, after, false);
    return;
  }
  const thing = kind === 'tip' ? state.tips.get(id) : kind === 'scanner' ? state.scanners.get(id) : undefined;
  if (thing === undefined) return;
  thing.doubt = null;
  const tip = kind === 'tip' ? state.tips.get(id) : undefined;
  if (tip !== undefined) show(tip, mark);
}

/**
 * Lead, deputy or manager let a load, or some of its tips, stand as sterile: one with no published value, or in doubt.
 * Nobody may release a load that failed.
 */
export function releaseLoad(
  step: Step,
  key: string,
  tips: readonly string[] | undefined,
  items: readonly Item[],
): void {
  const { state, entry, mark } = step;
  const load = state.loads.get(key);
  if (load === undefined) return;
  const why = whyNot(load, whyNotLoosen(state.practice, entry));
  if (why !== null) {
    found(step, { kind: 'refused', items, what: 'load-release', item: items[0] ?? null, why });
    return;
  }
  const ids = releaseTips(step, load, tips ?? load.tips);
  const released = { mark, tips: [...(load.released?.tips ?? []), ...ids] };
  const whole = tips === undefined;
  const after: LoadState = { ...load, released };
  state.loads.set(key, whole ? { ...after, status: 'passed', doubt: null, beforeDoubt: null } : after);
}

function whyNot(load: LoadState, person: Refused['why'] | null): Refused['why'] | null {
  if (load.status === 'failed' || load.recalled !== null) return 'load-failed';
  if (!isReleasable(load)) return 'nothing-to-release';
  return person;
}

/** It waits for the lead: no published value, or in doubt with a result noted. */
export function isReleasable({ status, finished }: LoadState): boolean {
  return status === 'needs-release' || (status === 'doubted' && finished !== null);
}
