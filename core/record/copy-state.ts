import type { SiteState, State } from './state.ts';

/**
 * A copy that folding on does not change. Only what the fold changes in place is copied; marks, loads, lists and the
 * practice are replaced by it, never changed, and stay shared. History, loads and incidents, which grow with the record, are
 * shared too and gone back on: see `grown`.
 */
export function copyState(state: State): State {
  return {
    practice: state.practice,
    file: state.file,
    scanners: copyEach(state.scanners, (each) => ({ ...each })),
    tips: copyEach(state.tips, (each) => ({ ...each })),
    loads: state.loads,
    loadsByNumber: state.loadsByNumber,
    autoclaves: copyEach(state.autoclaves, (each) => ({ ...each })),
    sites: copyEach(state.sites, copySite),
    incidents: state.incidents,
    settings: new Map(state.settings),
    words: new Map(state.words),
    shown: new Map(state.shown),
    spoke: new Map(state.spoke),
    history: state.history,
  };
}

function copyEach<T>(map: ReadonlyMap<string, T>, copy: (value: T) => T): Map<string, T> {
  const copied = new Map<string, T>();
  for (const [id, value] of map) copied.set(id, copy(value));
  return copied;
}

function copySite(site: SiteState): SiteState {
  return {
    ...site,
    told: new Set(site.told),
    toldNow: { turn: site.toldNow.turn, tips: new Set(site.toldNow.tips) },
  };
}
