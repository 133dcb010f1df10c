import { ruleValue } from '../../defaults/rule-value.ts';
import { MINUTE } from '../../time/instant.ts';
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
 * it sums that scan up and is not another one. Said once more with its scanner it is another patient, and warned of; with
 * no scanner ("tip 4 is dirty") it only tells how the tip is.
 */
function useTip(step: Step, tip: TipState, named: ScannerState | undefined, samePatient: boolean): void {
  const { state, mark } = step;
  const on = tip.scanner === null ? undefined : state.scanners.get(tip.scanner);
  if (on?.scan?.tip === tip.id && (named === undefined || named === on)) {
    finishScan(step, on);
    tip.useSaid = true;
    return;
  }
  if (tip.usedSinceFitted && tip.stage === 'used' && sumsUp(step, tip, named, samePatient)) {
    tip.useSaid = true;
    return;
  }
  const scanner = named ?? on;
  if (speaksAgainst(step, tip, named, samePatient))
    checkTip(
      step,
      tip,
      scanner ?? null,
      'used',
      reasonsAgainst(state, tip, mark.at),
      contactOf(step, tip, scanner),
    );
  tip.missing = null;
  leaveLoads(step, tip);
  addUse(step, tip, scanner ?? null, samePatient);
  tip.useSaid = true;
  soil(state, tip.id, mark);
  tip.bagged = null;
  if (scanner !== undefined) dirty(step, scanner, tip, samePatient);
}

/**
 * Whether a use is to be held against what is known of the tip. Nothing known of it, or used already: the note tells how
 * it is. Sterile or fitted, it met a patient as it was: in doubt, past its day, its load failed meanwhile.
 */
function speaksAgainst(
  step: Step,
  tip: TipState,
  named: ScannerState | undefined,
  samePatient: boolean,
): boolean {
  if (tip.state === 'held' || tip.state === 'retired' || tip.state === 'missing') return true;
  if (tip.stage === 'used') return isAnother(step, tip, named, samePatient);
  return tip.stage !== 'unknown';
}

/** In a mouth since its last load, and now said used on a scanner: not the same use told twice, which was settled before. */
function isAnother(
  step: Step,
  tip: TipState,
  named: ScannerState | undefined,
  samePatient: boolean,
): boolean {
  const last = step.state.history.uses.get(tip.id)?.at(-1)?.scanner ?? null;
  if (named === undefined || last === null) return false;
  if (last !== named.id) return true;
  return !samePatient && tip.needs.some(({ why }) => why === 'used');
}

/** Used on the scanner that it was fitted to: the fitting and the use are one contact, and one warning. */
function contactOf({ entry }: Step, tip: TipState, scanner: ScannerState | undefined): string {
  const isOn = scanner !== undefined && tip.scanner === scanner.id && !tip.usedSinceFitted;
  return isOn ? (tip.fitted?.entry ?? entry.id) : entry.id;
}

function sumsUp(step: Step, tip: TipState, named: ScannerState | undefined, samePatient: boolean): boolean {
  const { practice } = step.state;
  if (tip.lastUse === null) return false;
  const isLater = step.mark.earliest - tip.lastUse.at > ruleValue(practice, 'toldTwiceMinutes') * MINUTE;
  if (named !== undefined && tip.useSaid && isLater && !samePatient) return false;
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
