import type { Lists } from '../../core/record/lists.ts';
import type { State } from '../../core/record/state.ts';

/** A state with all of its history, wherever it is kept, as plain values: what two ways of folding must have in common. */
export function plainState({ history, loads, loadsByNumber, ...rest }: State): unknown {
  return {
    ...rest,
    loads: loads.all(),
    numbers: loadsByNumber.all(),
    uses: plain(history.uses),
    fittings: plain(history.fittings),
    tipLoads: plain(history.tipLoads),
    findings: [...history.findings.all()],
  };
}

function plain<T>(lists: Lists<T>): unknown {
  return new Map([...lists].map(([id, list]) => [id, [...list.all()]]));
}
