import type { State } from './state.ts';
import { UndoMap } from './undo-map.ts';

/** A state as plain JSON values, Maps and Sets marked so that `unpackState` finds them again. */
export type PackedState = { readonly packed: unknown };

/** A state for a snapshot. It shares nothing with the state that changes. */
export function packState(state: State): PackedState {
  return { packed: pack(state) };
}

/** The state that `packState` gave, after JSON too. What wrote it is the caller's to know: versions are checked there. */
export function unpackState({ packed }: PackedState): State {
  // Whoever reads a snapshot has checked that this very version of the fold wrote it.
  const state = unpack(packed) as State;
  const { loads, loadsByNumber } = state;
  return { ...state, loads: UndoMap.from(loads), loadsByNumber: UndoMap.from(loadsByNumber) };
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
