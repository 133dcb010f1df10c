import type { Finding, State } from './state.ts';

/** Findings on entries of those turns (original note's turn), in the order of the record. */
export function findingsOfTurns(state: State, turns: readonly number[]): readonly Finding[] {
  const wanted = new Set(turns.map(String));
  return state.history.findings.filter(({ mark }) =>
    wanted.has(mark.entry.slice(0, mark.entry.indexOf('.'))),
  );
}

/** Findings on what happened at or after that instant, in the order of the record; a late note may have added some. */
export function findingsSince(state: State, since: number): readonly Finding[] {
  const { findings } = state.history;
  let first = findings.length;
  while (first > 0 && (findings[first - 1]?.mark.at ?? 0) >= since) first -= 1;
  return findings.slice(first);
}

/** The finding of that key, or `undefined` where a correction took it away. The search begins at the latest. */
export function findingOf(state: State, key: string): Finding | undefined {
  return state.history.findings.findLast((each) => each.key === key);
}
