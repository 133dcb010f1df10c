import { ruleValue } from '../../defaults/rule-value.ts';
import { siteOf } from '../../practice/look-up.ts';
import type { Weekday } from '../../practice/practice.ts';
import type { ScannerState } from '../../record/state.ts';
import type { Instant } from '../../time/instant.ts';
import { lastClosing, openDayFrom } from '../../time/opening.ts';
import { addDays, type LocalDate, localDateOf, weekdayOf } from '../../time/zone.ts';
import { hasCome, today as todayIn } from '../clock.ts';
import type { Moment } from '../moment.ts';
import { changesOf } from '../quiet.ts';
import { remembered } from '../watch/remembered.ts';

export type { Moment } from '../moment.ts';

/** One week's calibration of a scanner, by the calendar of the site where it is now. */
export interface WeeklyDay {
  /** The week's own day (Monday): a pass on it or later counts, even where the site is closed on it. */
  readonly nominal: LocalDate;
  /** The day it is asked for: the same, or the next open one. */
  readonly day: LocalDate;
  /** Closing of that day: from then on a scanner that has not passed is not ready. */
  readonly closing: Instant | null;
}

/** Weeks that are looked back through for a due day: a site closed for longer asks when it opens. */
const WEEKS_BACK = 60;

/**
 * The weekly calibration that is due: the latest whose day has come and since whose nominal day no pass counts.
 * `null`: done, or no such day has come.
 */
export function weeklyDue(moment: Moment, scanner: ScannerState): WeeklyDay | null {
  return latest(moment, scanner.id);
}

const latest = remembered((moment: Moment, id: string): WeeklyDay | null => {
  const scanner = moment.state.scanners.get(id);
  return scanner === undefined ? null : (missedWeeks(moment, scanner, 1)[0] ?? null);
});

/**
 * The latest week whose day has closed without a pass: it keeps the scanner from being ready until there is one, on the
 * next week's Monday too. `null`: none.
 */
export function weekMissed(moment: Moment, scanner: ScannerState): WeeklyDay | null {
  const due = weeklyDue(moment, scanner);
  const isOver = ({ closing }: WeeklyDay) => closing !== null && hasCome(moment, closing);
  if (due === null || isOver(due)) return due;
  return missedWeeks(moment, scanner, WEEKS_BACK).find(isOver) ?? null;
}

/** The weekly calibrations that have come and not been done, the latest first, so many at most. */
export function missedWeeks(moment: Moment, scanner: ScannerState, most: number): readonly WeeklyDay[] {
  const site = scanner.site === null ? undefined : siteOf(moment.practice, scanner.site);
  if (site === undefined) return [];
  const today = todayIn(moment, site.timezone);
  const changes = changesOf(moment.state, site.id);
  const missed: WeeklyDay[] = [];
  let nominal = onOrBefore(today, ruleValue(moment.practice, 'calibrationWeekday', { site: site.id }));
  for (let week = 0; week < WEEKS_BACK && missed.length < most; week++) {
    const day = openDayFrom(site, nominal, changes);
    if (day !== null && day <= today) {
      if (hasPassed(scanner, site.timezone, nominal)) break;
      missed.push({ nominal, day, closing: lastClosing(site, day, changes) });
    }
    nominal = addDays(nominal, -7);
  }
  return missed;
}

/** The next weekly calibration whose day is still to come and that no pass has done yet; `null` where the site never opens. */
export function nextWeekly(moment: Moment, scanner: ScannerState): WeeklyDay | null {
  const site = scanner.site === null ? undefined : siteOf(moment.practice, scanner.site);
  if (site === undefined) return null;
  const today = todayIn(moment, site.timezone);
  const changes = changesOf(moment.state, site.id);
  const first = onOrBefore(today, ruleValue(moment.practice, 'calibrationWeekday', { site: site.id }));
  for (const nominal of [first, addDays(first, 7), addDays(first, 14)]) {
    const day = openDayFrom(site, nominal, changes);
    if (day !== null && day > today && !hasPassed(scanner, site.timezone, nominal))
      return { nominal, day, closing: lastClosing(site, day, changes) };
  }
  return null;
}

function hasPassed(scanner: ScannerState, zone: string, nominal: LocalDate): boolean {
  return scanner.lastPass !== null && localDateOf(scanner.lastPass.mark.at, zone) >= nominal;
}

function onOrBefore(date: LocalDate, weekday: Weekday): LocalDate {
  let day = date;
  while (weekdayOf(day) !== weekday) day = addDays(day, -1);
  return day;
}
