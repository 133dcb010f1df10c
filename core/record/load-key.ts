import type { LoadState, State } from './state.ts';

/** What was said of a load: its number, and its autoclave where that was said. */
export interface LoadName {
  readonly number: string;
  readonly autoclave: string | null;
}

/** `118`, `big/118`, or a key (`big/118@2026-11-23`): number and autoclave. */
export function loadName(text: string): LoadName {
  const bare = text.replace(/@.*$/, '');
  const slash = bare.indexOf('/');
  if (slash < 0) return { number: bare, autoclave: null };
  return { number: bare.slice(slash + 1), autoclave: slash === 0 ? null : bare.slice(0, slash) };
}

/** A key that no load has yet: autoclave, number and local date; `~2` and so on where one day has several of a number. */
export function newLoadKey(state: State, name: LoadName, date: string): string {
  const key = `${name.autoclave === null ? '' : `${name.autoclave}/`}${name.number}@${date}`;
  let free = key;
  for (let n = 2; state.loads.has(free); n += 1) free = `${key}~${n}`;
  return free;
}

/** Puts a load whose autoclave was told only now among those of its number as what it is. Its key stays. */
export function autoclaveTold({ loadsByNumber }: State, { key, number, autoclave }: LoadState): void {
  const refs = loadsByNumber.get(number) ?? [];
  if (refs.every((ref) => ref.key !== key || ref.autoclave === autoclave)) return;
  loadsByNumber.set(
    number,
    refs.map((ref) => (ref.key === key ? { key, autoclave } : ref)),
  );
}

/**
 * The loads that a number may mean now: the latest of each autoclave. One that was never given its result and whose number
 * has come round again is not meant.
 */
export function loadsMeant(state: State, name: LoadName): LoadState[] {
  // A number that comes round every few months has many loads: only the latest of each autoclave is read.
  const latest = new Map<string | null, string>();
  for (const { key, autoclave } of state.loadsByNumber.get(name.number) ?? [])
    if (name.autoclave === null || autoclave === null || autoclave === name.autoclave)
      latest.set(autoclave, key);
  return [...latest.values()].flatMap((key) => state.loads.get(key) ?? []);
}

/** The load that people mean by a number, `big/118` or a key: the open one, else the latest. */
export function loadMeant(state: State, text: string): LoadState | undefined {
  const byKey = state.loads.get(text);
  if (byKey !== undefined) return byKey;
  const loads = loadsMeant(state, loadName(text));
  return loads.findLast((each) => each.finished === null) ?? loads.sort(earlierFirst).at(-1);
}

function earlierFirst(a: LoadState, b: LoadState): number {
  return (a.finished?.at ?? 0) - (b.finished?.at ?? 0);
}

/** The local date in a load's key: see `LoadState.key`. */
export function dateInKey(key: string): string {
  return key.slice(key.lastIndexOf('@') + 1).slice(0, 'yyyy-mm-dd'.length);
}
