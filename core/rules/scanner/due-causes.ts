import { ruleValue } from '../../defaults/rule-value.ts';
import { siteOf } from '../../practice/look-up.ts';
import type { CauseStanding, ScannerState } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { type Instant, MINUTE } from '../../time/instant.ts';
import { lastClosing, openDayFrom } from '../../time/opening.ts';
import { addDays, type LocalDate, localDateOf, startOfDay } from '../../time/zone.ts';
import { hasCome, today as todayIn } from '../clock.ts';
import { changesOf } from '../quiet.ts';
import { weeklyDue } from '../readiness/weekly-due.ts';
import { type CalibrationWord, type Moment, settlingUntil } from '../readiness.ts';
import { remembered } from '../watch/remembered.ts';
import { requestTime } from './request-time.ts';

/** One cause for which a scanner is to be calibrated, with when that is asked for. */
export interface DueCause {
  readonly word: CalibrationWord;
  /** Key of the matter: rule, item, cause, and the entry or local date that it comes from. */
  readonly key: string;
  /** Anything said of the scanner's calibration from here on has told of it too. */
  readonly tellable: Instant;
  /** Since when it holds. */
  readonly since: Instant;
  /** When it is first asked for, quiet hours left aside; settling comes first. */
  readonly askAt: Instant;
}

export const CALIBRATION_RULE = 'calibration';

export function calibrationKey(scanner: string, word: CalibrationWord, from: string): string {
  return `${CALIBRATION_RULE}|scanner:${scanner}|${word}|${from}`;
}

/** Everything for which the scanner at that site is due now, in the order of naming. */
export function dueCauses(moment: SinceWhen, scanner: ScannerState, site: string): readonly DueCause[] {
  return scanner.site === site ? causesDue(moment, scanner.id) : findDueCauses(moment, scanner, site);
}

const causesDue = remembered((moment: SinceWhen, id: string): readonly DueCause[] => {
  const scanner = moment.state.scanners.get(id);
  return scanner === undefined || scanner.site === null ? [] : findDueCauses(moment, scanner, scanner.site);
});

function findDueCauses(moment: SinceWhen, scanner: ScannerState, site: string): readonly DueCause[] {
  const settled = settlingUntil(moment, scanner) ?? Number.NEGATIVE_INFINITY;
  const causes = scanner.causes.map((standing) => standingCause(moment, scanner, site, standing));
  const weekly = weeklyDue(moment, scanner);
  if (weekly !== null) {
    const { base, at } = requestTime(moment, scanner, site, weekly.day);
    const word = scanner.lastPass === null ? 'never' : 'weekly';
    const askAt = word === 'never' ? neverAskedAt(moment, scanner, site, at) : at;
    const tellable = startOfDay(weekly.day, zoneOf(moment.practice, site));
    const key = calibrationKey(scanner.id, word, weekly.day);
    causes.push({ word, key, tellable, since: word === 'never' ? askAt : base, askAt });
  }
  return causes.map((cause) => ({ ...cause, askAt: Math.max(cause.askAt, settled) }));
}

function standingCause(
  { practice }: Moment,
  scanner: ScannerState,
  site: string,
  { cause, mark }: CauseStanding,
): DueCause {
  // A second failure does not ask anew: what is asked for is the pass that is missing since the last one.
  const from = cause === 'failed' ? `since ${scanner.lastPass?.mark.entry ?? 'the start'}` : mark.entry;
  const key = calibrationKey(scanner.id, cause, from);
  const common = { word: cause, key, tellable: mark.noted, since: mark.at };
  // The reply to a failure has just said what to do; asking comes when the usual time for asking again has gone by.
  if (cause === 'failed') {
    const wait = ruleValue(practice, 'calibrationRepeatMinutes', { site }) * MINUTE;
    return { ...common, askAt: mark.noted + wait };
  }
  if (cause === 'moved') return { ...common, askAt: scanner.arrived?.settledBy ?? mark.noted };
  return { ...common, askAt: mark.noted };
}

/** `said`, where it is known, tells since when the program runs. */
type SinceWhen = Moment & { readonly said?: { readonly upSince: Instant | null } };

/**
 * A record with no pass is asked for at the usual hour of the first open day there is: not looked for on a Monday before
 * it began, and not before anybody has typed a word where it begins later in the day.
 */
function neverAskedAt(moment: SinceWhen, scanner: ScannerState, siteId: string, at: Instant): Instant {
  const site = siteOf(moment.practice, siteId);
  if (site === undefined) return at;
  const today = todayIn(moment, site.timezone);
  const began = moment.said?.upSince ?? null;
  const beganLater = (instant: Instant) => {
    return began !== null && instant < began && localDateOf(began, site.timezone) === today;
  };
  if (localDateOf(at, site.timezone) === today && !beganLater(at)) return at;
  const changes = changesOf(moment.state, siteId);
  const closing = lastClosing(site, today, changes);
  const from = closing !== null && !hasCome(moment, closing + 1) ? today : addDays(today, 1);
  const asked = (first: LocalDate) => {
    const day = openDayFrom(site, first, changes);
    return day === null ? at : requestTime(moment, scanner, siteId, day).at;
  };
  return beganLater(asked(from)) ? asked(addDays(today, 1)) : asked(from);
}
