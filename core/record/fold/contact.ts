import type { ContactBy, ScannerState, State, TipState, UnsafeReason } from '../state.ts';
import { addNeed, isBack, setStage } from '../tip-change.ts';
import { reasonsAgainst } from '../tip-safety.ts';
import { finishScan } from './scan-end.ts';
import { found, type Step } from './step.ts';

/** What the warning is about, told from what was already found at the fitting: `why@entry`. */
function reasonKey({ why, mark }: UnsafeReason): string {
  return `${why}@${mark?.entry ?? ''}`;
}

/** Finds a tip that must not be used, unless nothing speaks against it. `contact`: the entry that put it on. */
export function checkTip(
  step: Step,
  tip: TipState,
  scanner: ScannerState | null,
  by: ContactBy,
  reasons: readonly UnsafeReason[],
  contact: string,
): void {
  if (reasons.length === 0) return;
  const keys = reasons.map(reasonKey);
  const dayOne = isDayOne(step.state, tip, reasons);
  const sameContact = tip.warnedFor?.contact === contact ? tip.warnedFor.reasons : null;
  const isSame = (each: UnsafeReason) =>
    sameContact !== null && (sameContact.includes(reasonKey(each)) || isItsOutcome(tip, each));
  const again = reasons.every(isSame) || (dayOne && tip.warnedDayOne);
  tip.warnedFor = { contact, reasons: [...(sameContact ?? []), ...keys] };
  if (dayOne) tip.warnedDayOne = true;
  const site = scanner?.site ?? tip.site;
  const items = scanner === null ? [`tip:${tip.id}`] : [`tip:${tip.id}`, `scanner:${scanner.id}`];
  found(step, {
    kind: 'unsafe-tip',
    items,
    tip: tip.id,
    scanner: scanner?.id ?? null,
    site,
    by,
    reasons,
    cause: `${contact}|${keys.join()}`,
    again,
    dayOne,
  });
}

/** Held because this very contact was answered with "it reached a patient": no second cause. */
function isItsOutcome(tip: TipState, { why }: UnsafeReason): boolean {
  return why === 'held' && tip.holds.every(({ sort }) => sort === 'reached-patient');
}

/** Nothing is known against it but that nothing is known, and its site's tips have not been counted yet. */
function isDayOne(state: State, tip: TipState, reasons: readonly UnsafeReason[]): boolean {
  if (reasons.some((each) => each.why !== 'no-sterile-record')) return false;
  return tip.site === null || state.sites.get(tip.site)?.stocktake == null;
}

/** A tip goes on a scanner: the cover comes off, what was on it comes off, and it takes part in no open load. */
export function putOn(
  step: Step,
  tip: TipState,
  scanner: ScannerState,
  by: ContactBy,
  dropped: readonly UnsafeReason['why'][] = [],
): void {
  const { state, entry, mark } = step;
  if (tip.scanner !== null) takeOff(step, tip, 'fitted-elsewhere');
  const earlier = scanner.tip === null ? undefined : state.tips.get(scanner.tip);
  if (earlier !== undefined) {
    found(step, {
      kind: 'displaced',
      items: [`tip:${earlier.id}`, `scanner:${scanner.id}`],
      tip: earlier.id,
      scanner: scanner.id,
    });
    takeOff(step, earlier);
  }
  const reasons = reasonsAgainst(state, tip, mark.at).filter((each) => !dropped.includes(each.why));
  checkTip(step, tip, scanner, by, reasons, entry.id);
  isBack(tip, mark);
  leaveLoads(step, tip);
  tip.scanner = scanner.id;
  tip.fitted = mark;
  tip.usedSinceFitted = false;
  tip.bagged = null;
  tip.lastContact = mark;
  tip.loadsSinceUse = [];
  place(tip, scanner);
  setStage(tip, 'fitted', mark);
  scanner.tip = tip.id;
  scanner.tipFitted = mark;
  uncover(step, scanner);
  state.history.fittings.add(tip.id, {
    mark,
    tip: tip.id,
    scanner: scanner.id,
    site: scanner.site,
    room: scanner.room,
  });
}

export function uncover(step: Step, scanner: ScannerState): void {
  if (scanner.covered === null && scanner.uncovered !== null) return;
  scanner.covered = null;
  scanner.uncovered = step.mark;
}

function place(tip: TipState, scanner: ScannerState): void {
  tip.site = scanner.site;
  tip.room = scanner.room;
  tip.departed = null;
}

/** A tip comes off, said or worked out: used, whatever is said; a scan under way with it is over. */
export function takeOff(step: Step, tip: TipState, why: 'removed' | 'fitted-elsewhere' = 'removed'): void {
  const { state, mark } = step;
  const scanner = tip.scanner === null ? undefined : state.scanners.get(tip.scanner);
  tip.scanner = null;
  if (scanner !== undefined) {
    finishScan(step, scanner);
    scanner.tip = null;
    scanner.tipFitted = null;
    scanner.lastNoted = mark;
  }
  tip.lastContact = mark;
  tip.sent = null;
  tip.sterile = null;
  if (!tip.usedSinceFitted || scanner === undefined) addNeed(tip, why, mark);
  setStage(tip, 'used', mark);
}

/** Fitted, used, removed or spoilt while a load with it is open: not part of that load's pass. */
export function leaveLoads(step: Step, tip: TipState): void {
  const { state, mark } = step;
  for (const key of tip.openLoads) {
    const load = state.loads.get(key);
    if (load === undefined) continue;
    state.loads.set(key, { ...load, left: [...load.left, { tip: tip.id, mark }] });
    found(step, {
      kind: 'left-open-load',
      items: [`tip:${tip.id}`, `load:${load.number}`],
      tip: tip.id,
      load: key,
    });
  }
  tip.openLoads = [];
  if (tip.stage === 'in-load') addNeed(tip, 'reprocessing', mark);
}

/** A contact with a patient: a scan, or a note that it was used. */
export function addUse(step: Step, tip: TipState, scanner: ScannerState | null, samePatient: boolean): void {
  const { state, mark } = step;
  tip.uses += 1;
  tip.spoken = mark;
  tip.lastUse = mark;
  tip.useSaid = false;
  tip.lastContact = mark;
  tip.loadsSinceUse = [];
  state.history.uses.add(tip.id, {
    mark,
    tip: tip.id,
    scanner: scanner?.id ?? null,
    site: scanner?.site ?? tip.site,
    room: scanner?.room ?? tip.room,
    load: tip.load,
    samePatient,
  });
}
