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

/** Every load of that number, oldest first; of that autoclave, or of none said, where one is said. */
export function loadsNamed(state: State, name: LoadName): LoadState[] {
  const loads: LoadState[] = [];
  for (const key of state.loadsByNumber.get(name.number) ?? []) {
    const load = state.loads.get(key);
    if (load === undefined) continue;
    if (name.autoclave === null || load.autoclave === null || load.autoclave === name.autoclave)
      loads.push(load);
  }
  return loads;
}

/** The load that people mean by a number now: its key itself, else the open one, else the latest. */
export function loadMeant(state: State, text: string): LoadState | undefined {
  const byKey = state.loads.get(text);
  if (byKey !== undefined) return byKey;
  const loads = loadsNamed(state, loadName(text));
  return loads.findLast((each) => each.status === 'open') ?? loads.at(-1);
}
