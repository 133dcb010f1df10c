import type { ScannerState } from '../../record/state.ts';
import { type Instant, toIso } from '../../time/instant.ts';
import { eachScanner } from '../each.ts';
import type { Matter, View } from '../matter.ts';
import { missedWeeks, nextWeekly } from '../readiness/weekly-due.ts';
import { leadIds } from '../rights.ts';
import { chatRoomFor } from '../room-of.ts';
import { calibrationLine } from './calibration-words.ts';
import { CALIBRATION_RULE, calibrationKey, type DueCause, dueCauses } from './due-causes.ts';
import { requestTime } from './request-time.ts';
import { onlyOnce, threeStages } from './stages.ts';

/** Unanswered requests of so many weeks stay open; older posts are out of sight. */
const WEEKS_KEPT = 8;

/**
 * Calibration that is due: asked for where the scanner is now, with every cause in one post, three times at most; then the
 * briefs name it. A cause that is noted later begins a new asking in place of what was left of the one before.
 */
export const calibrationRule = eachScanner(calibrationMatters);

function calibrationMatters(view: View, scanner: ScannerState): readonly Matter[] {
  const { site } = scanner;
  if (site === null) return [];
  const room = chatRoomFor(view, site, () => scanner.lastNoted);
  if (room === null) return [];
  const matter = (key: string, since: Instant, stages: Matter['stages']): Matter => ({
    key,
    rule: CALIBRATION_RULE,
    about: 'calibration',
    site,
    room,
    items: [`scanner:${scanner.id}`],
    stages,
    since,
    group: `calibration@${site}`,
    get line() {
      return calibrationLine(view, scanner.id, site);
    },
    leads: leadIds(view.practice),
    tick: (at, by) => [{ kind: 'calibrated', when: toIso(at), by, scanner: scanner.id, outcome: 'passed' }],
  });
  const due = dueCauses(view, scanner, site);
  const told = due.filter(({ key }) => view.said.saidAt(key, 'first') !== null);
  const fresh = isAway(scanner) ? null : nextToTell(view, due, told);
  const running = fresh === null && !isAway(scanner) ? latestTold(view, told) : null;
  const matters = told.map((cause) => {
    const stages =
      cause === running
        ? threeStages(view, site, cause.key, cause.askAt)
        : onlyOnce(view, site, cause.key, cause.askAt);
    return matter(cause.key, cause.since, stages);
  });
  if (fresh !== null)
    matters.push(matter(fresh.key, fresh.since, threeStages(view, site, fresh.key, fresh.askAt)));
  const word = scanner.lastPass === null ? 'never' : 'weekly';
  // What was asked for in weeks before and never done stands until a pass: nobody has done it.
  for (const { day } of missedWeeks(view, scanner, WEEKS_KEPT).slice(1)) {
    const key = calibrationKey(scanner.id, word, day);
    const at = view.said.saidAt(key, 'first');
    if (at !== null) matters.push(matter(key, at, onlyOnce(view, site, key, at)));
  }
  const next = isAway(scanner) ? null : nextWeekly(view, scanner);
  if (next !== null) {
    const key = calibrationKey(scanner.id, word, next.day);
    const { at } = requestTime(view, scanner, site, next.day);
    matters.push(matter(key, at, onlyOnce(view, site, key, at)));
  }
  return matters;
}

/** On its way, missing, or held for another reason than calibration: asked for when that is over. */
function isAway({ departed, missing, holds }: ScannerState): boolean {
  return departed !== null || missing !== null || holds.some(({ ends }) => ends !== 'pass');
}

/** The cause to ask for next: of those of which no post has told, the one that is asked for first. */
function nextToTell(view: View, due: readonly DueCause[], told: readonly DueCause[]): DueCause | null {
  const last = lastTold(view, told);
  const untold = due.filter((cause) => !told.includes(cause) && cause.tellable > last);
  // While an asking still has stages to come, a failure goes on with it.
  const running = latestTold(view, told);
  const goesOn = running !== null && view.said.saidAt(running.key, 'lead') === null;
  const open = goesOn ? untold.filter(({ word }) => word !== 'failed') : untold;
  return open.toSorted((a, b) => a.askAt - b.askAt)[0] ?? null;
}

function latestTold({ said }: View, told: readonly DueCause[]): DueCause | null {
  const at = ({ key }: DueCause) => said.saidAt(key, 'first') ?? 0;
  return told.toSorted((a, b) => at(b) - at(a))[0] ?? null;
}

function lastTold({ said }: View, told: readonly DueCause[]): Instant {
  const stages = ['first', 'again', 'lead'] as const;
  const times = told.flatMap(({ key }) =>
    stages.map((stage) => said.saidAt(key, stage) ?? Number.NEGATIVE_INFINITY),
  );
  return Math.max(Number.NEGATIVE_INFINITY, ...times);
}
