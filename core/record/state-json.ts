import type { State } from './state.ts';
import { UndoMap } from './undo-map.ts';

/** A state as text for a snapshot: Maps and Sets are marked so that `stateFromJson` finds them again. */
export function stateToJson(state: State): string {
  return JSON.stringify(state, (_key, value: unknown) => {
    if (value instanceof Map) return { '~map': [...value] };
    if (value instanceof Set) return { '~set': [...value] };
    return value;
  });
}

/** The state that `stateToJson` wrote. Throws SyntaxError on anything that is not JSON; what wrote it is the caller's to know. */
export function stateFromJson(text: string): State {
  const state: State = JSON.parse(text, (_key, value: unknown) => {
    if (typeof value !== 'object' || value === null) return value;
    if ('~map' in value && isPairs(value['~map'])) return new Map(value['~map']);
    if ('~set' in value && Array.isArray(value['~set'])) return new Set(value['~set']);
    return value;
  });
  const { loads, loadsByNumber } = state;
  return { ...state, loads: UndoMap.from(loads), loadsByNumber: UndoMap.from(loadsByNumber) };
}

function isPairs(value: unknown): value is [unknown, unknown][] {
  return Array.isArray(value) && value.every((each) => Array.isArray(each) && each.length === 2);
}
