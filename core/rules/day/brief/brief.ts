import { siteOf } from '../../../practice/look-up.ts';
import type { AutoclaveState, LoadState } from '../../../record/state.ts';
import type { LocalDate } from '../../../time/zone.ts';
import { type OpenIncident, openIncidents } from '../../incidents/open-incidents.ts';
import type { View } from '../../matter.ts';
import { type Readiness, readinessOf } from '../../readiness.ts';
import { type CountDue, countDue } from '../count/count-due.ts';
import { dayTimes } from '../day-times.ts';
import { openLoads } from '../open-loads.ts';
import { type QuietTip, quietTips } from '../quiet-tips.ts';
import { type SiteSupply, supplyFor } from '../supply/supply-for.ts';
import { type DueToday, dueToday } from './due-today.ts';
import { type TestsToday, testsToday } from './tests-today.ts';
import { type TipsShown, tipsByState } from './tips-by-state.ts';

/** Everything that a site's brief says, as data. */
export interface Brief {
  readonly site: string;
  readonly date: LocalDate;
  /** Scanners that are here, have left from here, or are on their way here, in the file's order. */
  readonly scanners: readonly Readiness[];
  readonly tips: readonly { readonly state: TipsShown; readonly tips: readonly string[] }[];
  readonly supply: SiteSupply | null;
  readonly due: readonly DueToday[];
  readonly tests: readonly TestsToday[];
  /** Held or out of service. */
  readonly autoclaves: readonly AutoclaveState[];
  readonly loads: readonly LoadState[];
  readonly incidents: readonly OpenIncident[];
  readonly quietTips: readonly QuietTip[];
  readonly count: CountDue | null;
}

/** The brief of a site for one of its open dates, as things stand now. */
export function buildBrief(view: View, siteId: string, date: LocalDate): Brief {
  const site = siteOf(view.practice, siteId);
  const times = site === undefined ? null : dayTimes(view, site, date);
  const here = [...view.state.scanners.values()].filter((scanner) => {
    return scanner.site === siteId || scanner.departed?.to === siteId;
  });
  return {
    site: siteId,
    date,
    scanners: here.map(({ id }) => readinessOf(view, id)),
    tips: tipsByState(view, siteId),
    supply: supplyFor(view, siteId, date),
    due: times === null ? [] : dueToday(view, siteId, times.shut),
    tests: testsToday(view, siteId, date),
    autoclaves: [...view.state.autoclaves.values()].filter(
      ({ site: at, holds }) => at === siteId && holds.length > 0,
    ),
    loads: openLoads(view, siteId),
    incidents: openIncidents(view, siteId),
    quietTips: quietTips(view, siteId),
    count: countDue(view, siteId, date),
  };
}

/** Nothing that anybody has to do or to know: one line is enough. */
export function isUneventful(brief: Brief): boolean {
  const { scanners, tips, supply, due, tests, autoclaves, loads, incidents, quietTips: quiet, count } = brief;
  const lists = [due, tests, autoclaves, loads, incidents, quiet];
  return (
    scanners.every(({ because }) => because.length === 0) &&
    tips.every(({ state }) => state === 'sterile') &&
    supply?.short == null &&
    supply?.outlook.ifSlow === undefined &&
    count === null &&
    lists.every((list) => list.length === 0)
  );
}
