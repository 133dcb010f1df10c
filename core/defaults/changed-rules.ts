import type { Practice } from '../practice/practice.ts';
import { isRuleKey, type RuleKey, ruleTable } from './rule-table.ts';
import { type RulePlace, ruleInForce, type SetBy } from './rule-value.ts';

/** A rule that holds differently from a new practice file on: for the practice, one site or one scanner. */
export interface ChangedRule {
  readonly name: RuleKey;
  readonly site?: string;
  readonly scanner?: string;
  readonly from: number | string | boolean;
  readonly to: number | string | boolean;
}

/**
 * What a new practice file changes of the rules, in the table's order: of the practice, then of each site and scanner that
 * has or had a setting of its own. A setting written down that holds anyhow is no change.
 */
export function changedRules(before: Practice, after: Practice): readonly ChangedRule[] {
  const changes: ChangedRule[] = [];
  for (const name of Object.keys(ruleTable).filter(isRuleKey)) {
    changes.push(...changeAt(before, after, name, {}, 'practice'));
    for (const { id: site } of after.sites) changes.push(...changeAt(before, after, name, { site }, 'site'));
    for (const { id: scanner } of after.scanners)
      changes.push(...changeAt(before, after, name, { scanner }, 'scanner'));
  }
  return changes;
}

function changeAt(
  before: Practice,
  after: Practice,
  name: RuleKey,
  place: RulePlace,
  level: SetBy,
): readonly ChangedRule[] {
  const was = ruleInForce(before, name, place);
  const is = ruleInForce(after, name, place);
  const isOwn = level === 'practice' || was.setBy === level || is.setBy === level;
  if (!isOwn || was.value === is.value) return [];
  const { site, scanner } = place;
  return [
    {
      name,
      ...(site === undefined ? {} : { site }),
      ...(scanner === undefined ? {} : { scanner }),
      from: was.value,
      to: is.value,
    },
  ];
}
