import { ruleValue } from '../../defaults/rule-value.ts';
import { MINUTE } from '../../time/instant.ts';
import type { ContactBy, Scan, ScannerState, TipState, UnsafeReason } from '../state.ts';
import { reasonsAgainst } from '../tip-safety.ts';
import { dateAt } from '../where.ts';
import { arrive } from './arrive.ts';
import { checkReady } from './calibration.ts';
import { addUse, checkTip, putOn, uncover } from './contact.ts';
import { finishScan } from './scan-end.ts';
import { found, type Step, type Steps, scannerOf, tipOf } from './step.ts';

export const scanSteps = {
  fitted: (step, said) => {
    const scanner = scannerOf(step, said.scanner);
    const tip = tipOf(step, said.tip);
    if (scanner === undefined || tip === undefined) return;
    // On it already and no scan finished: told twice, or told after the scan was begun.
    if (tip.scanner === scanner.id && !tip.usedSinceFitted) return;
    const samePatient = said.samePatient === true;
    if (!samePatient) checkWiped(step, scanner, 'fitted');
    fitFor(step, tip, scanner, 'fitted', samePatient);
  },
  'scan-started': (step, said) => {
    const scanner = scannerOf(step, said.scanner);
    const tip = said.tip === undefined ? undefined : tipOf(step, said.tip);
    if (scanner === undefined) return;
    begin(step, scanner, tip, 'scan-started', said);
  },
  'scan-finished': (step, said) => {
    const scanner = scannerOf(step, said.scanner);
    const tip = said.tip === undefined ? undefined : tipOf(step, said.tip);
    if (scanner === undefined) return;
    if (scanner.scan === null) {
      if (isToldTwice(step, scanner, tip)) return;
      begin(step, scanner, tip, 'scan-finished', said);
    } else if (tip !== undefined && tip.id !== scanner.scan.tip) {
      // Another tip than the one it began with: that is the one it was done with.
      putOn(step, tip, scanner, 'scan-finished');
      addUse(step, tip, scanner, said.samePatient === true);
      const { lastScan } = scanner;
      if (lastScan !== null) scanner.scan = { ...lastScan, finished: null, tip: tip.id };
    }
    finishScan(step, scanner);
  },
} satisfies Steps;

/** The same tip again on the same scanner for the same patient is no news; anything else speaks as it is. */
function fitFor(step: Step, tip: TipState, scanner: ScannerState, by: ContactBy, samePatient: boolean): void {
  const stillTheirs = samePatient && scanner.lastScan?.tip === tip.id;
  putOn(step, tip, scanner, by, stillTheirs ? ['used', 'removed', 'fitted-elsewhere', 'fitted'] : []);
}

interface ScanSaid {
  readonly site?: string;
  readonly room?: string;
  readonly samePatient?: true;
}

function begin(
  step: Step,
  scanner: ScannerState,
  named: TipState | undefined,
  by: 'scan-started' | 'scan-finished',
  said: ScanSaid,
): void {
  const { state, mark } = step;
  const samePatient = said.samePatient === true;
  finishScan(step, scanner);
  placeScan(step, scanner, said);
  if (by === 'scan-started') {
    checkReady(step, scanner);
    if (!samePatient) checkWiped(step, scanner, 'scan-started');
  }
  const onIt = scanner.tip === null ? undefined : state.tips.get(scanner.tip);
  if (named !== undefined && named !== onIt) fitFor(step, named, scanner, by, samePatient);
  else if (onIt !== undefined) checkFitted(step, onIt, scanner, by, samePatient);
  const tip = named ?? onIt;
  const scan: Scan = {
    started: mark,
    finished: null,
    tip: tip?.id ?? null,
    site: scanner.site,
    room: scanner.room,
    samePatient,
  };
  scanner.scan = scan;
  scanner.lastScan = scan;
  scanner.usedOn = dateAt(state.practice, scanner.site, mark.at);
  scanner.uses += 1;
  uncover(step, scanner);
  if (tip !== undefined) addUse(step, tip, scanner, samePatient);
}

/** A scan said to be at another site or in another room says that the scanner is there. */
function placeScan(step: Step, scanner: ScannerState, said: ScanSaid): void {
  const elsewhere = said.site !== undefined && (said.site !== scanner.site || scanner.departed !== null);
  if (said.site !== undefined && elsewhere && step.state.sites.has(said.site))
    arrive(step, scanner, said.site, said.room ?? null);
  else if (said.room !== undefined) scanner.room = said.room;
  if (scanner.missing !== null) scanner.missing = null;
}

/** A scan with the tip that is on it: used on an earlier scan, or something speaks against it. */
function checkFitted(
  step: Step,
  tip: TipState,
  scanner: ScannerState,
  by: 'scan-started' | 'scan-finished',
  samePatient: boolean,
): void {
  const contact = tip.fitted?.entry ?? step.entry.id;
  const { lastScan } = scanner;
  const reasons = reasonsAgainst(step.state, tip, step.mark.at);
  if (!tip.usedSinceFitted) {
    checkTip(step, tip, scanner, by, reasons, contact);
    return;
  }
  const own = (each: UnsafeReason) => each.why === 'used';
  const others = reasons.filter((each) => !own(each));
  checkTip(step, tip, scanner, by, others, contact);
  if (samePatient) return;
  if (lastScan !== null && lastScan.tip === tip.id) {
    const items = [`tip:${tip.id}`, `scanner:${scanner.id}`];
    found(step, {
      kind: 'same-tip-again',
      items,
      tip: tip.id,
      scanner: scanner.id,
      by,
      earlier: lastScan,
    });
  } else if (others.length === 0) checkTip(step, tip, scanner, by, reasons, contact);
}

function checkWiped(step: Step, scanner: ScannerState, by: 'fitted' | 'scan-started'): void {
  // What is put on or begun while a scan is under way says that that one is over.
  finishScan(step, scanner);
  const earlier = scanner.dirtySince;
  if (earlier === null) return;
  const again = scanner.warnedNotWiped === earlier.started.entry;
  scanner.warnedNotWiped = earlier.started.entry;
  const items = [`scanner:${scanner.id}`];
  found(step, { kind: 'not-wiped', items, scanner: scanner.id, by, earlier, again });
}

/** The end of the last scan, told by a second person: not another scan. */
function isToldTwice(step: Step, scanner: ScannerState, tip: TipState | undefined): boolean {
  const { lastScan, dirtySince } = scanner;
  if (lastScan === null || lastScan.finished === null || dirtySince === null) return false;
  // A tip that has gone on since (in a load, sterile) has been on again.
  if (tip !== undefined && (tip.id !== lastScan.tip || tip.stage !== 'used')) return false;
  return step.mark.at - lastScan.finished.at <= ruleValue(step.state.practice, 'toldTwiceMinutes') * MINUTE;
}
