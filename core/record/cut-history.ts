import type { History } from './state.ts';

type Lengths = ReadonlyMap<string, number>;

/** How long each list of the history was. */
export interface HistoryLengths {
  readonly uses: Lengths;
  readonly fittings: Lengths;
  readonly steriles: Lengths;
  readonly tipLoads: Lengths;
  readonly findings: number;
}

export function historyLengths(history: History): HistoryLengths {
  return {
    uses: lengthsOf(history.uses),
    fittings: lengthsOf(history.fittings),
    steriles: lengthsOf(history.steriles),
    tipLoads: lengthsOf(history.tipLoads),
    findings: history.findings.length,
  };
}

/** Takes off everything that was added since. */
export function cutHistory(history: History, lengths: HistoryLengths): void {
  cut(history.uses, lengths.uses);
  cut(history.fittings, lengths.fittings);
  cut(history.steriles, lengths.steriles);
  cut(history.tipLoads, lengths.tipLoads);
  history.findings.length = lengths.findings;
}

function lengthsOf(lists: ReadonlyMap<string, readonly unknown[]>): Lengths {
  const lengths = new Map<string, number>();
  for (const [id, list] of lists) lengths.set(id, list.length);
  return lengths;
}

function cut(lists: Map<string, unknown[]>, lengths: Lengths): void {
  for (const [id, list] of lists) {
    const length = lengths.get(id);
    if (length === undefined) lists.delete(id);
    else list.length = length;
  }
}
