import type { Practice } from '../practice/practice.ts';
import type { Archive } from './archive.ts';
import { historyIn, INCIDENTS, LOADS, NUMBERS } from './history-in.ts';
import { LongMap } from './long-map.ts';
import { MemoryArchive } from './memory-archive.ts';
import {
  type AutoclaveState,
  type ScannerState,
  type SiteState,
  type State,
  type TipState,
  UNNAMED,
} from './state.ts';

/**
 * The record of a practice about which nothing has been noted: scanners and tips at home, everything else not known.
 * `archive`: where what is only history will be kept.
 */
export function startState(practice: Practice, archive: Archive = new MemoryArchive()): State {
  const state: State = {
    practice,
    file: practice,
    scanners: new Map(),
    tips: new Map(),
    loads: new LongMap(archive, LOADS),
    loadsByNumber: new LongMap(archive, NUMBERS),
    autoclaves: new Map(),
    sites: new Map(),
    incidents: new LongMap(archive, INCIDENTS),
    settings: new Map(),
    words: new Map(),
    shown: new Map(),
    spoke: new Map(),
    history: historyIn(archive),
  };
  addMissing(state, practice);
  return state;
}

/**
 * Puts in what the practice file has and the state lacks. What the file no longer has stays in the record;
 * a tip's limit follows the file, its count of cycles does not.
 */
export function addMissing(state: State, practice: Practice): void {
  for (const { id } of practice.sites) if (!state.sites.has(id)) state.sites.set(id, newSite(id));
  for (const { id, home } of practice.scanners)
    if (!state.scanners.has(id)) state.scanners.set(id, newScanner(id, home));
  for (const { id, site } of practice.autoclaves)
    if (!state.autoclaves.has(id)) state.autoclaves.set(id, newAutoclave(id, site));
  if (practice.autoclaves.length === 0 && !state.autoclaves.has(UNNAMED))
    state.autoclaves.set(
      UNNAMED,
      newAutoclave(UNNAMED, practice.sites.length === 1 ? (practice.sites[0]?.id ?? null) : null),
    );
  for (const { id, home, cycles, cyclesSoFar } of practice.tips) {
    const known = state.tips.get(id);
    if (known === undefined) state.tips.set(id, newTip(id, home, cycles, cyclesSoFar));
    else known.limit = cycles;
  }
}

function newSite(id: string): SiteState {
  return {
    id,
    readings: [],
    bookings: new Map(),
    closedDates: new Map(),
    hours: new Map(),
    stocktake: null,
    stocktakeAsked: null,
    told: new Set(),
    toldNow: { turn: -1, tips: new Set() },
    turnarounds: [],
    turnaroundLoads: 0,
    lastNoted: null,
  };
}

function newScanner(id: string, home: string): ScannerState {
  return {
    id,
    site: home,
    room: null,
    placed: null,
    departed: null,
    arrived: null,
    calibrationTip: { site: home, room: null, mark: null, missing: null },
    lastPass: null,
    earlyPass: null,
    lastFailure: null,
    failuresInRow: 0,
    causes: [],
    dirtySince: null,
    warnedNotWiped: null,
    lastWipe: null,
    lastPartWipe: null,
    covered: null,
    uncovered: null,
    tip: null,
    tipFitted: null,
    scan: null,
    lastScan: null,
    usedOn: null,
    lastNoted: null,
    holds: [],
    missing: null,
    doubt: null,
    available: null,
    uses: 0,
    faults: [],
    faultCount: 0,
  };
}

/** A tip of which nothing is known but where it belongs. */
export function newTip(id: string, home: string | null, limit: number | null, cycles: number): TipState {
  return {
    id,
    state: 'unknown',
    since: null,
    stage: 'unknown',
    holds: [],
    missing: null,
    retired: null,
    doubt: null,
    site: home,
    room: null,
    placed: null,
    departed: null,
    scanner: null,
    fitted: null,
    usedSinceFitted: false,
    useSaid: false,
    needs: [],
    sterile: null,
    load: null,
    openLoads: [],
    loadsSinceUse: [],
    lastUse: null,
    lastContact: null,
    washed: null,
    bagged: null,
    sent: null,
    cycles,
    limit,
    spoken: null,
    added: null,
    uses: 0,
    faults: [],
    faultCount: 0,
    warnedFor: null,
    warnedDayOne: false,
  };
}

function newAutoclave(id: string, site: string | null): AutoclaveState {
  return {
    id,
    site,
    holds: [],
    tests: {},
    sporeTests: [],
    lastNegative: null,
    positivesInRow: 0,
    repaired: null,
    clearCycles: 0,
    clearSporeTests: 0,
    loadsSinceNegative: [],
    lastLoadDate: null,
    lastLoad: null,
  };
}
