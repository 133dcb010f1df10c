import type { Lengths } from './lists.ts';
import type { State } from './state.ts';

/** How far everything had grown that grows with the record and is shared between copies of the state. */
export interface Grown {
  readonly uses: Lengths;
  readonly fittings: Lengths;
  readonly tipLoads: Lengths;
  readonly findings: number;
  readonly loads: number;
  readonly loadsByNumber: number;
  readonly incidents: number;
}

export function grown({ history, loads, loadsByNumber, incidents }: State): Grown {
  return {
    uses: history.uses.lengths(),
    fittings: history.fittings.lengths(),
    tipLoads: history.tipLoads.lengths(),
    findings: history.findings.length,
    loads: loads.changes,
    loadsByNumber: loadsByNumber.changes,
    incidents: incidents.changes,
  };
}

/** Takes off everything that was added since. */
export function cutTo({ history, loads, loadsByNumber, incidents }: State, then: Grown): void {
  history.uses.cutTo(then.uses);
  history.fittings.cutTo(then.fittings);
  history.tipLoads.cutTo(then.tipLoads);
  history.findings.cutTo(then.findings);
  loads.undoTo(then.loads);
  loadsByNumber.undoTo(then.loadsByNumber);
  incidents.undoTo(then.incidents);
}
