import type { Practice, RuleValue } from '../practice/practice.ts';
import { accepts } from './override.ts';
import { type RuleKey, type RuleValueOf, ruleTable } from './rule-table.ts';

/** Where a rule is looked up: the site, the scanner, both, or neither. */
export interface RulePlace {
  readonly site?: string | undefined;
  readonly scanner?: string | undefined;
}

/** What sets the value that holds: the default, the practice, one site or one scanner. */
export type SetBy = 'default' | 'practice' | 'site' | 'scanner';

/**
 * The value in force: a scanner's own setting before its site's, that before the practice's, that before the default.
 * Units are the rule's; times are local `HH:MM`.
 */
export function ruleValue<K extends RuleKey>(practice: Practice, key: K, at: RulePlace = {}): RuleValueOf<K> {
  return ruleInForce(practice, key, at).value;
}

/** As `ruleValue`, with what set it. A kept override that no longer fits the table's bounds is passed over. */
export function ruleInForce<K extends RuleKey>(
  practice: Practice,
  key: K,
  at: RulePlace = {},
): { readonly value: RuleValueOf<K>; readonly setBy: SetBy } {
  const { rules } = practice;
  const { scope } = ruleTable[key];
  const layers: readonly (readonly [SetBy, RuleValue | undefined])[] = [
    ['scanner', scope === 'scanner' ? own(own(rules.byScanner, at.scanner), key) : undefined],
    ['site', scope !== 'practice' ? own(own(rules.bySite, at.site), key) : undefined],
    ['practice', own(rules.practice, key)],
  ];
  for (const [setBy, value] of layers) if (accepts(key, value)) return { value, setBy };
  const value: unknown = ruleTable[key].value;
  if (!accepts(key, value)) throw new Error(`the default of ${key} is outside its own bounds`);
  return { value, setBy: 'default' };
}

/** A key of the record's own: ids such as `constructor` are just ids. */
function own<T>(record: Readonly<Record<string, T>> | undefined, key: string | undefined): T | undefined {
  return record !== undefined && key !== undefined && Object.hasOwn(record, key) ? record[key] : undefined;
}
