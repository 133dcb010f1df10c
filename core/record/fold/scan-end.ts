import type { Mark, Scan, ScannerState, State } from '../state.ts';
import { addNeed, setStage } from '../tip-change.ts';
import type { Step } from './step.ts';

/** The tip has been in a mouth: used until its next passed load. */
export function soil(state: State, id: string | null, mark: Mark): void {
  const tip = id === null ? undefined : state.tips.get(id);
  if (tip === undefined) return;
  tip.usedSinceFitted = true;
  addNeed(tip, 'used', mark);
  setStage(tip, 'used', mark);
}

/**
 * The scan under way is over, by its note or because what was noted next cannot be during a scan (wiped, covered, moved,
 * the tip off, another scan): the scanner is dirty and its tip used.
 */
export function finishScan(step: Step, scanner: ScannerState): Scan | null {
  const { scan } = scanner;
  if (scan === null) return null;
  const over: Scan = { ...scan, finished: step.mark };
  scanner.scan = null;
  scanner.lastScan = over;
  scanner.dirtySince = over;
  soil(step.state, over.tip, step.mark);
  return over;
}
