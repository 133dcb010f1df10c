import { ruleValue } from '../defaults/rule-value.ts';
import type { Instant } from '../time/instant.ts';
import { dayRules } from './day/rules.ts';
import { incidentRules } from './incidents/rules.ts';
import { loadRules } from './loads/rules.ts';
import { OncePerLook } from './look.ts';
import type { Matter, Rule, Stage, View } from './matter.ts';
import { outOfQuiet, sayableOf } from './out-of-quiet.ts';
import { scannerRules } from './scanner/rules.ts';
import { tipRules } from './tips/rules.ts';

/** Every rule there is, in the order in which posts that fall due together are made: people first. */
const rules: readonly Rule[] = [...incidentRules, ...loadRules, ...scannerRules, ...tipRules, ...dayRules];

const matters = new OncePerLook<readonly Matter[]>();

/** Everything that is open or will fall due, said or not. A key is given once: the first rule that gives it has it. */
export function openMatters(view: View): readonly Matter[] {
  return matters.get(view, '', () => askEveryRule(view));
}

function askEveryRule(view: View): readonly Matter[] {
  const byKey = new Map<string, Matter>();
  for (const rule of rules)
    for (const matter of rule(view))
      if (!byKey.has(matter.key)) byKey.set(matter.key, outOfQuiet(view, matter));
  return [...byKey.values()];
}

/** A stage that was not said yet, with when it is to be said. */
export interface Unsaid {
  readonly stage: Stage;
  readonly at: Instant;
}

/**
 * Stages not said yet, in order, `postsPerMatter` (3) at most with those that were. What someone put off comes when it was put off to, sooner or later than it would have;
 * where everything was said already it is asked for once more then.
 */
export function unsaidStages(matter: Matter, view: View): readonly Unsaid[] {
  const { said } = view;
  const left =
    ruleValue(view.practice, 'postsPerMatter') -
    STAGES.filter((stage) => said.saidAt(matter.key, stage) !== null).length;
  const waiting = matter.stages
    .filter(({ stage }) => said.saidAt(matter.key, stage) === null)
    .slice(0, Math.max(0, left));
  const putOff = said.putOffUntil(matter.key);
  if (putOff === null) return waiting;
  const told = STAGES.map((stage) => said.saidAt(matter.key, stage) ?? Number.NEGATIVE_INFINITY);
  if (putOff <= Math.max(...told)) return waiting;
  const next = sayableOf(view, matter, putOff);
  if (waiting.length === 0) return [{ stage: 'again', at: next }];
  return waiting.map((one, index) =>
    index === 0 ? { ...one, at: next } : { ...one, at: Math.max(one.at, next + 1) },
  );
}

const STAGES: readonly Stage[] = ['first', 'again', 'lead'];

/** The earliest instant after now at which something that was not said yet falls due; `null` when nothing is waited for. */
export function nextDue(view: View): Instant | null {
  const times = openMatters(view).flatMap((matter) => unsaidStages(matter, view).map(({ at }) => at));
  const future = times.filter((at) => at > view.now);
  return future.length === 0 ? null : Math.min(...future);
}
