import type { LoadState, Mark, ScannerState, TipState } from '../../../record/state.ts';
import type { Instant } from '../../../time/instant.ts';
import type { View } from '../../matter.ts';
import { remembered } from '../../watch/remembered.ts';
import { openLoads } from '../open-loads.ts';

/** What a site leaves open at the end of its day, as data. */
export interface CloseOut {
  readonly site: string;
  /** Used and not on their way to the autoclave; those still on a scanner too. */
  readonly tips: readonly TipState[];
  readonly notWiped: readonly ScannerState[];
  readonly notCovered: readonly ScannerState[];
  readonly loads: readonly LoadState[];
}

const NOT_SENT = new Set(['used', 'washed', 'bagged']);

/** What stands open at the site now. Scanners that are missing or on their way are nobody's to wipe. */
export const closeOut: (view: View, site: string) => CloseOut = remembered(findOpen);

function findOpen(view: View, site: string): CloseOut {
  const { scanners, tips } = view.state;
  const here = [...scanners.values()].filter((scanner) => {
    return scanner.site === site && scanner.departed === null && scanner.missing === null;
  });
  return {
    site,
    tips: [...tips.values()].filter((tip) => tip.site === site && tip.departed === null && isNotSent(tip)),
    notWiped: here.filter(({ dirtySince, scan }) => dirtySince !== null || scan !== null),
    notCovered: here.filter(({ covered, uncovered }) => covered === null && uncovered !== null),
    loads: openLoads(view, site).filter(({ status }) => status === 'open'),
  };
}

/** A tip that was used stays on its scanner until a note takes it off. */
function isNotSent({ state, usedSinceFitted }: TipState): boolean {
  return NOT_SENT.has(state) || (state === 'fitted' && usedSinceFitted);
}

/**
 * Whether any of it stood open by then: what only came up after the close-out's own time is for the reminders, so that a
 * scan in the last minutes brings no second list.
 */
export function wasOpenBy({ tips, notWiped, notCovered, loads }: CloseOut, at: Instant): boolean {
  const marks: (Mark | null | undefined)[] = [
    ...tips.map(({ since, lastUse, state }) => (state === 'fitted' ? lastUse : since)),
    ...notWiped.map(({ dirtySince, scan }) => dirtySince?.finished ?? dirtySince?.started ?? scan?.started),
    ...notCovered.map(({ uncovered }) => uncovered),
    ...loads.map(({ started, finished }) => started ?? finished),
  ];
  return marks.some((mark) => mark != null && mark.noted <= at);
}
