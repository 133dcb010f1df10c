import { ruleValue } from '../../defaults/rule-value.ts';
import type { ScannerState } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import type { Instant } from '../../time/instant.ts';
import { type LocalDate, startOfDay, toInstant } from '../../time/zone.ts';
import { hasCome } from '../clock.ts';
import type { Moment } from '../moment.ts';
import { type RoomTrend, roomTrend } from './room-unsteady.ts';

/** When the weekly calibration of one day is asked for, and what puts it off. */
export interface RequestTime {
  /** 10:30 on the site's clock. */
  readonly base: Instant;
  readonly at: Instant;
  /** The room still changes: readings, and until when that is waited for. */
  readonly waitsFor: { readonly trend: RoomTrend; readonly until: Instant } | null;
}

/** Asked at 10:30; a scan under way then puts it off until 11:00 at most, an unsteady room until 12:00 at most. */
export function requestTime(
  moment: Moment,
  scanner: ScannerState,
  site: string,
  day: LocalDate,
): RequestTime {
  const { practice } = moment;
  const zone = zoneOf(practice, site);
  const base = toInstant(day, ruleValue(practice, 'calibrationAskAt', { site }), zone);
  const until = toInstant(day, ruleValue(practice, 'settleUnsteadyUntil', { site }), zone);
  const afterScan = scanOver(moment, scanner, site, day, base);
  const trend = roomTrend(moment, site, scanner.room, startOfDay(day, zone), until);
  if (trend === null || until <= base) return { base, at: afterScan, waitsFor: null };
  if (trend.unsteady) {
    const waitsFor = hasCome(moment, until) ? null : { trend, until };
    return { base, at: Math.max(afterScan, until), waitsFor };
  }
  // A calmer reading ends the wait when it is noted, not at the 10:30 that has gone by.
  const calmer = Math.min(trend.later.mark.noted, until);
  return { base, at: Math.max(afterScan, calmer), waitsFor: null };
}

function scanOver(
  { practice }: Moment,
  { lastScan }: ScannerState,
  site: string,
  day: LocalDate,
  base: Instant,
): Instant {
  if (lastScan === null || lastScan.started.at > base) return base;
  const zone = zoneOf(practice, site);
  if (lastScan.started.at < startOfDay(day, zone)) return base;
  const latest = toInstant(day, ruleValue(practice, 'calibrationLatestAskAt', { site }), zone);
  const over = lastScan.finished?.at ?? latest;
  return Math.max(base, Math.min(over, latest));
}
