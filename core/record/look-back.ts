import type { Instant } from '../time/instant.ts';
import type { LoadState, State, TipFitting, TipUse } from './state.ts';

/** What came near a patient under a load that is not good: newest first, never a patient's name. */
export interface LookBack {
  readonly load: LoadState;
  readonly uses: readonly TipUse[];
  /** Tips put on with no use noted since. */
  readonly fittings: readonly TipFitting[];
}

/**
 * Scans and fittings with tips of that load after its end and before each tip's next passed load: earlier ones stood under
 * an earlier good load. One whose time is a stretch counts if any of it falls inside.
 */
export function lookBack(state: State, key: string): LookBack | null {
  const load = state.loads.get(key);
  if (load === undefined) return null;
  const end = load.finished?.at ?? load.started?.at ?? 0;
  const uses: TipUse[] = [];
  const fittings: TipFitting[] = [];
  for (const tip of load.tips) {
    if (load.left.some((each) => each.tip === tip && each.mark.at <= end)) continue;
    const next = nextGood(state, tip, end);
    const own = between(state.history.uses.get(tip) ?? [], end, next);
    uses.push(...own);
    for (const fitting of between(state.history.fittings.get(tip) ?? [], end, next))
      if (!own.some((use) => use.mark.at >= fitting.mark.at)) fittings.push(fitting);
  }
  return { load, uses: uses.sort(newestFirst), fittings: fittings.sort(newestFirst) };
}

/** Scans with the tip since it last became sterile by a load that still stands (or was taken as said), newest first. */
export function usesSinceGood(state: State, tip: string): readonly TipUse[] {
  const steriles = state.history.steriles.get(tip) ?? [];
  const last = steriles.findLast((each) => stands(state, each.load));
  const uses = between(state.history.uses.get(tip) ?? [], last?.at ?? Number.NEGATIVE_INFINITY, null);
  return uses.sort(newestFirst);
}

interface Marked {
  readonly mark: { readonly at: Instant; readonly earliest: Instant };
}

/** In order of time, so the search goes from the end; stretches may begin before their neighbours and are looked at too. */
function between<T extends Marked>(all: readonly T[], from: Instant, to: Instant | null): T[] {
  const inside: T[] = [];
  for (let n = all.length - 1; n >= 0; n -= 1) {
    const one = all[n];
    if (one === undefined || one.mark.at < from) break;
    if (to === null || one.mark.earliest < to) inside.push(one);
  }
  return inside;
}

function nextGood(state: State, tip: string, after: Instant): Instant | null {
  const steriles = state.history.steriles.get(tip) ?? [];
  const next = steriles.find((each) => each.at > after && stands(state, each.load));
  return next?.at ?? null;
}

/** A load that failed later, or was recalled, is no good load. */
function stands(state: State, key: string | null): boolean {
  if (key === null) return true;
  const load = state.loads.get(key);
  if (load === undefined || load.recalled !== null || load.wet) return false;
  return load.status === 'passed' || (load.status === 'needs-release' && load.released !== null);
}

function newestFirst(a: Marked, b: Marked): number {
  return b.mark.at - a.mark.at;
}
