import { ruleValue } from '../defaults/rule-value.ts';
import { DAY, type Instant } from '../time/instant.ts';
import { dateOfDayNumber } from '../time/local-date.ts';
import { dateInKey } from './load-key.ts';
import type { IncidentState, LoadState, State } from './state.ts';

/** What the rules look at day by day reaches back eight weeks (`core/rules/day/order`); the rest is asked for by people. */
const DAYS_KEPT = 60;
/** Of each tip at least so many rows stay, however old: the last is asked for at every look. */
const ROWS_KEPT = 4;

/**
 * Hands what is only history to the archive: rows, loads that have their result, their numbers, and incidents that are over,
 * older than `days` before `now`. Whatever is asked for later is read from there, so nothing but speed depends on how much stays. What is handed over
 * follows from the rows and values themselves, so that a state folded anew, with other stops on the way, keeps the same.
 */
export function retire(state: State, now: Instant, days = DAYS_KEPT): void {
  const { history, loads, loadsByNumber, incidents } = state;
  const since = now - days * DAY;
  const date = dateOfDayNumber(Math.floor(since / DAY));
  const isOld = ({ mark }: { readonly mark: { readonly at: Instant } }) => mark.at < since;
  history.uses.retire(isOld, ROWS_KEPT);
  history.fittings.retire(isOld, ROWS_KEPT);
  history.findings.retire(isOld, ROWS_KEPT);
  history.tipLoads.retire((key) => dateInKey(key) < date, ROWS_KEPT);
  loads.settle();
  // Rules ask of one with no result for so long; what comes of it later is found in the archive.
  const asked = now - Math.max(days, ruleValue(state.practice, 'openLoadDays')) * DAY;
  loads.retire((load) => isSettled(load, since) || isLeftOpen(load, asked));
  loadsByNumber.settle();
  loadsByNumber.retire((refs) => refs.every(({ key }) => dateInKey(key) < date));
  incidents.settle();
  incidents.retire((incident) => isOver(incident, since));
}

/** It has its result, nobody doubts it, and nothing was said of it since. */
function isSettled(
  { status, started, finished, results, released, recalled }: LoadState,
  since: Instant,
): boolean {
  if (status !== 'passed' && status !== 'failed') return false;
  const marks = [started, finished, released?.mark ?? null, recalled, results.at(-1)?.mark ?? null];
  return marks.every((mark) => mark === null || mark.at < since);
}

/** Nobody has said how it came out, and nobody is asked any more. */
function isLeftOpen({ status, started, finished }: LoadState, since: Instant): boolean {
  if (status !== 'open' && status !== 'needs-release') return false;
  const told = started ?? finished;
  return told !== null && told.at < since;
}

/** It was closed, or its tip reached nobody, and that was long ago. */
function isOver({ opened, answered, closed }: IncidentState, since: Instant): boolean {
  if (closed === null && answered?.reached !== false) return false;
  return [opened, answered?.mark, closed?.mark].every((mark) => mark === undefined || mark.at < since);
}
