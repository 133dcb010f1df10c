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
): RuleInForce<K> {
  let kept = inForce.get(practice);
  if (kept === undefined) {
    kept = {};
    inForce.set(practice, kept);
  }
  let byPlace: Kept[K] = kept[key];
  if (byPlace === undefined) {
    byPlace = new Map();
    kept[key] = byPlace;
  }
  const place = placeOf(key, at);
  const known = byPlace.get(place);
  if (known !== undefined) return known;
  const found = lookUp(practice, key, at);
  byPlace.set(place, found);
  return found;
}

export interface RuleInForce<K extends RuleKey> {
  readonly value: RuleValueOf<K>;
  readonly setBy: SetBy;
}

type Kept = { [K in RuleKey]?: Map<string, RuleInForce<K>> };

/** Rules are looked up some hundred times a turn; a practice is never changed, only replaced. */
const inForce = new WeakMap<Practice, Kept>();

/** As much of the place as can make a difference. A line break stands in no id. */
function placeOf(key: RuleKey, { site = '', scanner = '' }: RulePlace): string {
  const { scope } = ruleTable[key];
  if (scope === 'practice') return '';
  return scope === 'scanner' && scanner !== '' ? `${site}\n${scanner}` : site;
}

function lookUp<K extends RuleKey>(practice: Practice, key: K, at: RulePlace): RuleInForce<K> {
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
