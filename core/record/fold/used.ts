import type { Scan, ScannerState, TipState } from '../state.ts';
import { reasonsAgainst } from '../tip-safety.ts';
import { dateAt } from '../where.ts';
import { addUse, checkTip, leaveLoads, uncover } from './contact.ts';
import { finishScan, soil } from './scan-end.ts';
import { type Step, type Steps, scannerOf, tipsOf } from './step.ts';
import { tellStock } from './stocktake.ts';

export const usedSteps = {
  used: (step, said) => {
    const scanner = said.scanner === undefined ? undefined : scannerOf(step, said.scanner);
    for (const tip of tipsOf(step, said.tips)) useTip(step, tip, scanner, said.samePatient === true);
    tellStock(step, said.tips);
  },
} satisfies Steps;

/**
 * "used tip 4": contact with a patient, and its scanner is dirty. Said of a tip whose scan was noted since it was fitted,
 * it sums that scan up and is not another one.
 */
function useTip(step: Step, tip: TipState, named: ScannerState | undefined, samePatient: boolean): void {
  const { state, mark } = step;
  const on = tip.scanner === null ? undefined : state.scanners.get(tip.scanner);
  if (on?.scan?.tip === tip.id && (named === undefined || named === on)) {
    finishScan(step, on);
    return;
  }
  if (tip.usedSinceFitted && tip.stage === 'used' && sumsUp(step, tip, named)) return;
  const scanner = named ?? on;
  const known =
    tip.stage === 'sterile' || tip.stage === 'fitted' || tip.stage === 'unknown' || tip.stage === 'used';
  if (
    !known ||
    isElsewhere(step, tip, named) ||
    tip.state === 'held' ||
    tip.state === 'retired' ||
    tip.state === 'missing'
  )
    checkTip(
      step,
      tip,
      scanner ?? null,
      'used',
      reasonsAgainst(state, tip, mark.at),
      contactOf(step, tip, scanner),
    );
  if (tip.missing !== null) tip.missing = null;
  leaveLoads(step, tip);
  addUse(step, tip, scanner ?? null, samePatient);
  soil(state, tip.id, mark);
  tip.bagged = null;
  if (scanner !== undefined) dirty(step, scanner, tip, samePatient);
}

/** Used already, and now on another scanner than then: not the same use told twice. */
function isElsewhere({ state }: Step, tip: TipState, named: ScannerState | undefined): boolean {
  const last = state.history.uses.get(tip.id)?.at(-1)?.scanner ?? null;
  return tip.stage === 'used' && named !== undefined && last !== null && last !== named.id;
}

/** Used on the scanner that it was fitted to: the fitting and the use are one contact, and one warning. */
function contactOf({ entry }: Step, tip: TipState, scanner: ScannerState | undefined): string {
  const isOn = scanner !== undefined && tip.scanner === scanner.id && !tip.usedSinceFitted;
  return isOn ? (tip.fitted?.entry ?? entry.id) : entry.id;
}

function sumsUp(step: Step, tip: TipState, named: ScannerState | undefined): boolean {
  const { practice } = step.state;
  if (tip.lastUse === null) return false;
  const lastOn = step.state.history.uses.get(tip.id)?.at(-1)?.scanner ?? null;
  if (named !== undefined && named.id !== lastOn) return false;
  return dateAt(practice, tip.site, tip.lastUse.at) === dateAt(practice, tip.site, step.mark.at);
}

function dirty(step: Step, scanner: ScannerState, tip: TipState, samePatient: boolean): void {
  const { state, mark } = step;
  finishScan(step, scanner);
  const scan: Scan = {
    started: mark,
    finished: mark,
    tip: tip.id,
    site: scanner.site,
    room: scanner.room,
    samePatient,
  };
  scanner.lastScan = scan;
  scanner.dirtySince = scan;
  scanner.usedOn = dateAt(state.practice, scanner.site, mark.at);
  scanner.uses += 1;
  uncover(step, scanner);
}
