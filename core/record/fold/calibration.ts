import { ruleValue } from '../../defaults/rule-value.ts';
import { readingAt } from '../settling.ts';
import type { Pass, Reading, ScannerState } from '../state.ts';
import { siteOfRoom } from '../where.ts';
import { settleAnew } from './arrive.ts';
import { stand } from './causes.ts';
import { finishScan } from './scan-end.ts';
import { addReading } from './site.ts';
import { found, type Step, type Steps, scannerOf } from './step.ts';

export const calibrationSteps = {
  calibrated: (step, said) => {
    const scanner = scannerOf(step, said.scanner);
    if (scanner === undefined) return;
    finishScan(step, scanner);
    if (scanner.missing !== null) scanner.available = step.mark;
    scanner.missing = null;
    if (said.outcome === 'failed') fail(step, scanner);
    else pass(step, scanner);
  },
  'pass-confirmed': (step, said) => {
    const scanner = step.state.scanners.get(said.scanner);
    const early = scanner?.earlyPass;
    if (scanner === undefined || early == null || early.pass.mark.entry !== said.of) return;
    scanner.earlyPass = null;
    count(scanner, early.pass);
  },
  'pass-doubted': (step, said) => {
    const scanner = step.state.scanners.get(said.scanner);
    const early = scanner?.earlyPass;
    if (scanner === undefined || early == null || early.pass.mark.entry !== said.of) return;
    scanner.earlyPass = { ...early, status: 'doubted' };
  },
  repaired: (step, said) => {
    for (const item of said.items) repair(step, item);
  },
  temperature: (step, said) => {
    const site = said.site ?? siteOfRoom(step.state.practice, step.entry.room);
    if (site === null) return;
    const reading: Reading = { mark: step.mark, celsius: said.celsius, room: said.room ?? null };
    if (!addReading(step, site, reading)) return;
    for (const scanner of step.state.scanners.values()) {
      if (scanner.site !== site || scanner.departed !== null) continue;
      settleAnew(step.state, scanner, step.mark, said.celsius);
      checkTemperature(step, scanner, reading);
    }
  },
} satisfies Steps;

function fail(step: Step, scanner: ScannerState): void {
  scanner.lastFailure = step.mark;
  scanner.failuresInRow += 1;
  scanner.earlyPass = null;
  stand(scanner, { cause: 'failed', mark: step.mark, step: null });
}

function pass(step: Step, scanner: ScannerState): void {
  const { state, mark } = step;
  const { site, room } = scanner;
  const passed: Pass = { mark, site, reading: readingAt(state, site, room, mark.at) };
  const settledBy = settlingUntil(scanner);
  if (scanner.departed !== null || (settledBy !== null && mark.at < settledBy)) {
    scanner.earlyPass = {
      pass: passed,
      settledBy: scanner.departed === null ? settledBy : null,
      status: 'asked',
    };
    const items = [`scanner:${scanner.id}`];
    found(step, { kind: 'pass-before-settling', items, scanner: scanner.id, settledBy });
    return;
  }
  scanner.earlyPass = null;
  count(scanner, passed);
  // It was done with the calibration tip, which therefore is here.
  if (site !== null && scanner.calibrationTip.site !== site)
    scanner.calibrationTip = { site, room, mark, missing: null };
  else if (scanner.calibrationTip.missing !== null)
    scanner.calibrationTip = { ...scanner.calibrationTip, mark, missing: null };
}

/** When settling is over, while the move that began it is not settled by a pass; else `null`. */
function settlingUntil(scanner: ScannerState): number | null {
  const moved = scanner.causes.some((each) => each.cause === 'moved');
  return moved && scanner.arrived !== null ? scanner.arrived.settledBy : null;
}

/** The pass counts from its own time: what came later still stands. */
function count(scanner: ScannerState, passed: Pass): void {
  const { at } = passed.mark;
  const before = scanner.lastPass;
  if (before === null || before.mark.at <= at) scanner.lastPass = passed;
  scanner.causes = scanner.causes.filter((each) => each.mark.at > at);
  const held = scanner.holds.length;
  scanner.holds = scanner.holds.filter((each) => each.ends !== 'pass' || each.mark.at > at);
  if (held > 0 && scanner.holds.length === 0) scanner.available = passed.mark;
  if (scanner.lastFailure === null || scanner.lastFailure.at <= at) scanner.failuresInRow = 0;
  if (scanner.doubt !== null && scanner.doubt.at <= at) scanner.doubt = null;
}

/** Repaired, lent out or given new software: due. An autoclave that is mended may go on to its three clear cycles. */
function repair(step: Step, item: string): void {
  if (item.startsWith('scanner:')) {
    const scanner = scannerOf(step, item.slice('scanner:'.length));
    if (scanner !== undefined) stand(scanner, { cause: 'repaired', mark: step.mark, step: null });
    return;
  }
  const autoclave = item.startsWith('autoclave')
    ? step.state.autoclaves.get(item.slice('autoclave:'.length))
    : undefined;
  if (autoclave === undefined) return;
  autoclave.repaired = step.mark;
  autoclave.clearCycles = 0;
  autoclave.clearSporeTests = 0;
}

/** Far enough from the reading that held at its last pass: due, and still due if the temperature comes back. */
function checkTemperature(step: Step, scanner: ScannerState, reading: Reading): void {
  const atPass = scanner.lastPass?.reading ?? null;
  if (atPass === null) return;
  const place = { site: scanner.site ?? undefined, scanner: scanner.id };
  const least = ruleValue(step.state.practice, 'temperatureChangeCelsius', place);
  // Readings carry one decimal: 22.1 - 17.1 is 5 whatever the binary fractions do.
  if (Math.abs(reading.celsius - atPass.celsius) < least - 1e-9) return;
  if (scanner.causes.some((each) => each.cause === 'temperature')) return;
  const cause = { cause: 'temperature', mark: step.mark, step: { atPass, now: reading } } as const;
  stand(scanner, cause);
  found(step, { kind: 'temperature-due', items: [`scanner:${scanner.id}`], scanner: scanner.id, cause });
}

/** A scan begins on a scanner that must not be relied on. Weekly past its closing time is for the rules to see. */
export function checkReady(step: Step, scanner: ScannerState): void {
  const never = scanner.lastPass === null;
  const { causes, holds, departed, missing, doubt } = scanner;
  const settled = causes.length === 0 && !never;
  if (settled && holds.length === 0 && departed === null && missing === null && doubt === null) return;
  found(step, {
    kind: 'not-ready-scanner',
    items: [`scanner:${scanner.id}`],
    scanner: scanner.id,
    causes,
    never,
    holds,
    inTransit: departed !== null,
    missing: missing !== null,
    doubted: doubt !== null,
  });
}
