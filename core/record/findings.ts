import type { Finding, State } from './state.ts';

/** Findings on recent entries of those turns (original note's turn), in the order of the record. */
export function findingsOfTurns(state: State, turns: readonly number[]): readonly Finding[] {
  const wanted = new Set(turns.map(String));
  return state.history.findings
    .recent()
    .filter(({ mark }) => wanted.has(mark.entry.slice(0, mark.entry.indexOf('.'))));
}

/** Findings on what happened at or after that instant, in the order of the record; a late note may have added some. */
export function findingsSince(state: State, since: number): readonly Finding[] {
  const { findings } = state.history;
  const found: Finding[] = [];
  for (const finding of findings.newestFirst()) {
    if (finding.mark.at < since) break;
    found.push(finding);
  }
  return found.reverse();
}

/** The finding of that key, or `undefined` where a correction took it away. */
export function findingOf(state: State, key: string): Finding | undefined {
  return state.history.findings.keyed(key).findLast((each) => each.key === key);
}

/** Findings on one entry, in the order of the record. */
export function findingsOn(state: State, entry: string): readonly Finding[] {
  return state.history.findings.keyed(`${entry}:`);
}
