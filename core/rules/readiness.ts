import type { Hold, Mark, Scan, ScannerState, TemperatureStep } from '../record/state.ts';
import type { Instant } from '../time/instant.ts';
import type { LocalDate } from '../time/zone.ts';
import { hasCome } from './clock.ts';
import { type Moment, type WeeklyDay, weeklyDue, weekMissed } from './readiness/weekly-due.ts';
import { remembered } from './watch/remembered.ts';

export type { Moment, WeeklyDay } from './readiness/weekly-due.ts';

/** Why calibration is due, in the order in which the first that holds is named. */
export type CalibrationWord =
  | 'failed'
  | 'dropped'
  | 'repaired'
  | 'moved'
  | 'temperature'
  | 'never'
  | 'weekly';

/** Stable short words: what `notReadyBecause` lists. */
export type ReadinessWord =
  | CalibrationWord
  | 'unknown-scanner'
  | 'in-transit'
  | 'missing'
  | 'held'
  | 'doubted'
  | 'settling'
  | 'not-wiped'
  | 'in-use';

/** One thing to know of a scanner before it is used. */
export interface Reason {
  readonly word: ReadinessWord;
  /** It makes the scanner not ready; else it is only shown (weekly until closing, a scan under way). */
  readonly blocks: boolean;
  /** The note that brought it about; `null` where none did. */
  readonly mark: Mark | null;
  /** `held`: the hold. */
  readonly hold?: Hold;
  /** `temperature`: both readings. */
  readonly step?: TemperatureStep;
  /** `settling`: when it is over. */
  readonly until?: Instant;
  /** `moved`: site it came from, `null` where that is not known. */
  readonly from?: string | null;
  /** `in-transit`: site it is for, `null` where that was not said. */
  readonly to?: string | null;
  /** `not-wiped`, `in-use`: the scan. */
  readonly scan?: Scan;
  /** `weekly`, `never`: local date on which it is asked for. */
  readonly day?: LocalDate;
  /** `failed`: failures with no pass between. */
  readonly times?: number;
}

/** Whether a scanner may be used now, and everything that speaks for or against it. */
export interface Readiness {
  readonly scanner: string;
  readonly ready: boolean;
  /** All that hold: what blocks first, then what is only shown. */
  readonly because: readonly Reason[];
  /** The first that holds; `null`: not due. */
  readonly calibrationDue: CalibrationWord | null;
  /** While it settles: when that is over. */
  readonly settledBy: Instant | null;
  /** The weekly calibration that is due, also where another cause is named before it. */
  readonly weekly: WeeklyDay | null;
}

/** Words of what blocks, in order: empty when it is ready. */
export function notReadyWords(readiness: Readiness): readonly ReadinessWord[] {
  return readiness.because.filter(({ blocks }) => blocks).map(({ word }) => word);
}

/**
 * The scanner itself: placed, calibrated, settled, clean, not held. Tips are no part of it. A weekly calibration that is due
 * leaves it ready until that day's closing, so that a Monday's first patients need not wait for 10:30.
 */
export const readinessOf: (moment: Moment, scannerId: string) => Readiness = remembered(findReadiness);

function findReadiness(moment: Moment, scannerId: string): Readiness {
  const scanner = moment.state.scanners.get(scannerId);
  if (scanner === undefined) {
    const because: readonly Reason[] = [{ word: 'unknown-scanner', blocks: true, mark: null }];
    return { scanner: scannerId, ready: false, because, calibrationDue: null, settledBy: null, weekly: null };
  }
  const weekly = weeklyDue(moment, scanner);
  const calibration = calibrationReasons(moment, scanner, weekly);
  const settledBy = settlingUntil(moment, scanner);
  const all = [
    ...placeReasons(scanner),
    ...calibration,
    ...(settledBy === null ? [] : [settling(scanner, settledBy)]),
    ...cleanReasons(scanner),
  ];
  const because = [...all.filter(({ blocks }) => blocks), ...all.filter(({ blocks }) => !blocks)];
  const [first] = calibration;
  return {
    scanner: scannerId,
    ready: !because.some(({ blocks }) => blocks),
    because,
    calibrationDue: first?.word ?? null,
    settledBy,
    weekly,
  };
}

function placeReasons(scanner: ScannerState): readonly Reason[] {
  const { departed, missing, holds, doubt, site } = scanner;
  const reasons: Reason[] = [];
  if (missing !== null) reasons.push({ word: 'missing', blocks: true, mark: missing });
  if (departed !== null)
    reasons.push({ word: 'in-transit', blocks: true, mark: departed.mark, to: departed.to });
  else if (site === null && missing === null) reasons.push({ word: 'missing', blocks: true, mark: null });
  for (const hold of holds) reasons.push({ word: 'held', blocks: true, mark: hold.mark, hold });
  if (doubt !== null) reasons.push({ word: 'doubted', blocks: true, mark: doubt });
  return reasons;
}

interface CalibrationReason extends Reason {
  readonly word: CalibrationWord;
}

function calibrationReasons(
  moment: Moment,
  scanner: ScannerState,
  weekly: WeeklyDay | null,
): readonly CalibrationReason[] {
  const reasons: CalibrationReason[] = scanner.causes.map(({ cause, mark, step }) => {
    const reason = { word: cause, blocks: true, mark };
    if (cause === 'failed') return { ...reason, times: scanner.failuresInRow };
    if (cause === 'moved') return { ...reason, from: scanner.arrived?.from ?? null };
    return step === null ? reason : { ...reason, step };
  });
  if (scanner.lastPass === null) {
    const day = weekly === null ? {} : { day: weekly.day };
    reasons.push({ word: 'never', blocks: true, mark: null, ...day });
  } else if (weekly !== null) {
    const missed = weekMissed(moment, scanner);
    const { day } = missed ?? weekly;
    reasons.push({ word: 'weekly', blocks: missed !== null, mark: scanner.lastPass.mark, day });
  }
  return reasons;
}

/** Settling is over once a pass counts: whoever was at the scanner knows best. */
export function settlingUntil(moment: Moment, scanner: ScannerState): Instant | null {
  const { arrived, causes, departed } = scanner;
  if (arrived === null || departed !== null || hasCome(moment, arrived.settledBy)) return null;
  return causes.some(({ cause }) => cause === 'moved') ? arrived.settledBy : null;
}

function settling(scanner: ScannerState, until: Instant): Reason {
  return { word: 'settling', blocks: true, mark: scanner.arrived?.mark ?? null, until };
}

function cleanReasons({ dirtySince, scan }: ScannerState): readonly Reason[] {
  const reasons: Reason[] = [];
  if (dirtySince !== null)
    reasons.push({
      word: 'not-wiped',
      blocks: true,
      mark: dirtySince.finished ?? dirtySince.started,
      scan: dirtySince,
    });
  if (scan !== null) reasons.push({ word: 'in-use', blocks: false, mark: scan.started, scan });
  return reasons;
}
