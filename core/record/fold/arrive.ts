import { MINUTE } from '../../time/instant.ts';
import { minutesToSettle, readingAt } from '../settling.ts';
import type { Arrival, Mark, ScannerState, State } from '../state.ts';
import { stand } from './causes.ts';
import { finishScan } from './scan-end.ts';
import { found, type Step } from './step.ts';

/**
 * The scanner is at that site. Another site than before, or back from the road: it has to settle and is due for
 * calibration. Its calibration tip and the tip on it travel along.
 */
export function arrive(step: Step, scanner: ScannerState, site: string, room: string | null): void {
  const { state, mark } = step;
  const { departed } = scanner;
  if (scanner.missing !== null) scanner.available = mark;
  scanner.missing = null;
  if (departed === null && scanner.site === site) {
    if (room !== null) scanner.room = room;
    scanner.placed = mark;
    return;
  }
  finishScan(step, scanner);
  const from = departed?.from ?? scanner.site;
  const along = scanner.calibrationTip.missing === null && scanner.calibrationTip.site === scanner.site;
  const onWay = departed === null ? null : (mark.at - departed.mark.at) / MINUTE;
  const there = readingAt(state, site, room, mark.at)?.celsius;
  const before = readingAt(state, from, null, mark.at)?.celsius;
  const gap = there === undefined || before === undefined ? null : Math.abs(there - before);
  scanner.arrived = judged(state, scanner.id, { mark, from, site, journeyMinutes: onWay, gap });
  scanner.departed = null;
  scanner.site = site;
  scanner.room = room;
  scanner.placed = mark;
  scanner.available = mark;
  scanner.earlyPass = null;
  stand(scanner, { cause: 'moved', mark, step: null });
  if (along) scanner.calibrationTip = { ...scanner.calibrationTip, site, room };
  const tip = scanner.tip === null ? undefined : state.tips.get(scanner.tip);
  if (tip !== undefined) {
    tip.site = site;
    tip.room = room;
    tip.departed = null;
  }
}

function judged(
  state: State,
  scanner: string,
  arrival: Pick<Arrival, 'mark' | 'from' | 'site' | 'journeyMinutes' | 'gap'>,
): Arrival {
  const settleMinutes = minutesToSettle(state, scanner, arrival);
  return { ...arrival, settleMinutes, settledBy: arrival.mark.at + settleMinutes * MINUTE };
}

/** A reading at the new site while the scanner settles says more than the assumed difference: settling is judged anew. */
export function settleAnew(state: State, scanner: ScannerState, at: Mark, celsius: number): void {
  const { arrived } = scanner;
  if (arrived === null || at.at >= arrived.settledBy || scanner.departed !== null) return;
  const before = readingAt(state, arrived.from, null, arrived.mark.at)?.celsius;
  if (before === undefined) return;
  scanner.arrived = judged(state, scanner.id, { ...arrived, gap: Math.abs(celsius - before) });
}

/** A scanner at one site and its calibration tip at another. */
export function checkApart(step: Step, scanner: ScannerState): void {
  const { site } = scanner;
  const tipSite = scanner.calibrationTip.site;
  if (site === null || tipSite === null || site === tipSite || scanner.departed !== null) return;
  const items = [`scanner:${scanner.id}`, `calibration-tip:${scanner.id}`];
  found(step, { kind: 'calibration-tip-apart', items, scanner: scanner.id, site, tipSite });
}
