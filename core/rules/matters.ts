import { ruleValue } from '../defaults/rule-value.ts';
import type { Instant } from '../time/instant.ts';
import { dayRules } from './day/rules.ts';
import { incidentRules } from './incidents/rules.ts';
import { loadRules } from './loads/rules.ts';
import type { Matter, Rule, Stage, View } from './matter.ts';
import { outOfQuiet, sayableOf } from './out-of-quiet.ts';
import { scannerRules } from './scanner/rules.ts';
import { tipRules } from './tips/rules.ts';
import { atThisLook, remembered } from './watch/remembered.ts';

/** Every rule there is, in the order in which posts that fall due together are made: people first. */
const rules: readonly Rule[] = [...incidentRules, ...loadRules, ...scannerRules, ...tipRules, ...dayRules];

/** A matter, and the stages of it that were not said yet. */
export interface Waiting {
  readonly matter: Matter;
  readonly unsaid: readonly Unsaid[];
}

/** A stage that was not said yet, with when it is to be said. */
export interface Unsaid {
  readonly stage: Stage;
  readonly at: Instant;
}

/** Everything that is open or will fall due, said or not. A key is given once: the first rule that gives it has it. */
export function waitingMatters(view: View): readonly Waiting[] {
  return atThisLook(view, askEveryRule);
}

function askEveryRule(view: View): readonly Waiting[] {
  const byKey = new Map<string, Waiting>();
  for (const ask of asked)
    for (const waiting of ask(view, ''))
      if (!byKey.has(waiting.matter.key)) byKey.set(waiting.matter.key, waiting);
  return [...byKey.values()];
}

/** The same without what is still to be said of it. */
export function openMatters(view: View): readonly Matter[] {
  return waitingMatters(view).map(({ matter }) => matter);
}

const asked = rules.map((rule) => {
  return remembered((view: View): readonly Waiting[] => {
    return rule(view).map((found) => {
      const matter = outOfQuiet(view, found);
      return { matter, unsaid: unsaidStages(matter, view) };
    });
  });
});

/**
 * Stages not said yet, in order, `postsPerMatter` (3) at most with those that were. What someone put off comes when it was put off to, sooner or later than it would have;
 * where everything was said already it is asked for once more then.
 */
export function unsaidStages(matter: Matter, view: View): readonly Unsaid[] {
  const said = view.said.of(matter.key);
  if (said === undefined) return matter.stages.slice(0, ruleValue(view.practice, 'postsPerMatter'));
  const left =
    ruleValue(view.practice, 'postsPerMatter') - STAGES.filter((stage) => said[stage] !== null).length;
  const waiting = matter.stages.filter(({ stage }) => said[stage] === null).slice(0, Math.max(0, left));
  const { putOff } = said;
  if (putOff === null) return waiting;
  const told = STAGES.map((stage) => said[stage] ?? Number.NEGATIVE_INFINITY);
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
  let next: Instant | null = null;
  for (const { unsaid } of waitingMatters(view))
    for (const { at } of unsaid) if (at > view.now && (next === null || at < next)) next = at;
  return next;
}
