import type { Instant } from '../time/instant.ts';
import { dayRules } from './day/rules.ts';
import { incidentRules } from './incidents/rules.ts';
import { loadRules } from './loads/rules.ts';
import type { Matter, Rule, View } from './matter.ts';
import { outOfQuiet } from './out-of-quiet.ts';
import { scannerRules } from './scanner/rules.ts';
import { tipRules } from './tips/rules.ts';

/** Every rule there is, in the order in which posts that fall due together are made: people first. */
const rules: readonly Rule[] = [...incidentRules, ...loadRules, ...scannerRules, ...tipRules, ...dayRules];

/** Everything that is open or will fall due, said or not. A key is given once: the first rule that gives it has it. */
export function openMatters(view: View): readonly Matter[] {
  const matters = new Map<string, Matter>();
  for (const rule of rules)
    for (const matter of rule(view))
      if (!matters.has(matter.key)) matters.set(matter.key, outOfQuiet(view, matter));
  return [...matters.values()];
}

/** The earliest instant after now at which something that was not said yet falls due; `null` when nothing is waited for. */
export function nextDue(view: View): Instant | null {
  let next: Instant | null = null;
  for (const matter of openMatters(view)) {
    const putOff = view.said.putOffUntil(matter.key) ?? Number.NEGATIVE_INFINITY;
    for (const { stage, at } of matter.stages) {
      const falls = Math.max(at, putOff);
      if (view.said.saidAt(matter.key, stage) !== null || falls <= view.now) continue;
      if (next === null || falls < next) next = falls;
    }
  }
  return next;
}
