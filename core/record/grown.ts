import type { State } from './state.ts';

type Lengths = ReadonlyMap<string, number>;

/** How far everything had grown that grows with the record and is shared between copies of the state. */
export interface Grown {
  readonly uses: Lengths;
  readonly fittings: Lengths;
  readonly steriles: Lengths;
  readonly tipLoads: Lengths;
  readonly findings: number;
  readonly loads: number;
  readonly loadsByNumber: number;
}

export function grown({ history, loads, loadsByNumber }: State): Grown {
  return {
    uses: lengthsOf(history.uses),
    fittings: lengthsOf(history.fittings),
    steriles: lengthsOf(history.steriles),
    tipLoads: lengthsOf(history.tipLoads),
    findings: history.findings.length,
    loads: loads.changes,
    loadsByNumber: loadsByNumber.changes,
  };
}

/** Takes off everything that was added since. */
export function cutTo({ history, loads, loadsByNumber }: State, then: Grown): void {
  cut(history.uses, then.uses);
  cut(history.fittings, then.fittings);
  cut(history.steriles, then.steriles);
  cut(history.tipLoads, then.tipLoads);
  history.findings.length = then.findings;
  loads.undoTo(then.loads);
  loadsByNumber.undoTo(then.loadsByNumber);
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
