import type { Archive } from './archive.ts';
import { historyIn, INCIDENTS, LOADS, NUMBERS, type PackedHistory, packHistory } from './history-in.ts';
import type { IncidentState } from './incident-state.ts';
import type { LoadRef, LoadState } from './load-state.ts';
import { LongMap, type PackedMap } from './long-map.ts';
import type { State } from './state.ts';

/** A state as plain JSON values, Maps and Sets marked so that `unpackState` finds them again. */
export interface PackedState {
  readonly packed: unknown;
  readonly loads: PackedMap<LoadState>;
  readonly loadsByNumber: PackedMap<readonly LoadRef[]>;
  readonly incidents: PackedMap<IncidentState>;
  readonly history: PackedHistory;
}

/** A state for a snapshot. It shares nothing with the state that changes. */
export function packState(state: State): PackedState {
  const { loads, loadsByNumber, incidents, history, ...rest } = state;
  // Values in these are never changed in place, but the lists themselves are: JSON is a copy that stays as it is.
  const long = {
    loads: loads.pack(),
    loadsByNumber: loadsByNumber.pack(),
    incidents: incidents.pack(),
    history: packHistory(history),
  };
  return { packed: pack(rest), ...copied(long) };
}

/**
 * The state that `packState` gave, after JSON too, on the archive that it was on. What wrote it is the caller's to know:
 * versions are checked there.
 */
export function unpackState(
  { packed, loads, loadsByNumber, incidents, history }: PackedState,
  archive: Archive,
): State {
  // Whoever reads a snapshot has checked that this very version of the fold wrote it.
  const state = unpack(packed) as Omit<State, 'loads' | 'loadsByNumber' | 'incidents' | 'history'>;
  return {
    ...state,
    loads: new LongMap(archive, LOADS, loads),
    loadsByNumber: new LongMap(archive, NUMBERS, loadsByNumber),
    incidents: new LongMap(archive, INCIDENTS, incidents),
    history: historyIn(archive, history),
  };
}

function copied<T>(value: T): T {
  return JSON.parse(JSON.stringify(value));
}

function pack(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(pack);
  if (value instanceof Map) return { '~map': Array.from(value, ([key, each]) => [key, pack(each)]) };
  if (value instanceof Set) return { '~set': Array.from(value, pack) };
  return mapped(value, pack);
}

function unpack(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(unpack);
  if ('~map' in value && isPairs(value['~map']))
    return new Map(value['~map'].map(([key, each]) => [key, unpack(each)]));
  if ('~set' in value && Array.isArray(value['~set'])) return new Set(value['~set'].map(unpack));
  return mapped(value, unpack);
}

function mapped(value: object, each: (value: unknown) => unknown): Record<string, unknown> {
  const result: Record<string, unknown> = {};
  for (const [key, one] of Object.entries(value)) if (one !== undefined) result[key] = each(one);
  return result;
}

function isPairs(value: unknown): value is [unknown, unknown][] {
  return Array.isArray(value) && value.every((each) => Array.isArray(each) && each.length === 2);
}
