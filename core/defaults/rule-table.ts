import { betweenPatientsRules } from './between-patients.ts';
import { calibrationRules } from './calibration.ts';
import { dayRules } from './day.ts';
import { faultRules } from './faults.ts';
import { loadRules } from './loads.ts';
import { recordRules } from './record.ts';
import { rightsRules } from './rights.ts';
import type { NumberRule, RuleDefault, SwitchRule } from './rule-default.ts';
import { settlingRules } from './settling.ts';
import { supplyRules } from './supply.ts';
import { tipRules } from './tips.ts';
import { warmUpRules } from './warm-up.ts';

/** The defaults by section, in the order in which they are shown. */
export const ruleSections = {
  Calibration: calibrationRules,
  Settling: settlingRules,
  'Warm-up': warmUpRules,
  'Between patients': betweenPatientsRules,
  Tips: tipRules,
  Loads: loadRules,
  Supply: supplyRules,
  Faults: faultRules,
  'The day': dayRules,
  'Whose word is taken': rightsRules,
  'The record': recordRules,
} as const satisfies Record<string, Record<string, RuleDefault>>;

/** The one table of every default: key → value, unit, bounds, why, and where it comes from. */
export const ruleTable = {
  ...calibrationRules,
  ...settlingRules,
  ...warmUpRules,
  ...betweenPatientsRules,
  ...tipRules,
  ...loadRules,
  ...supplyRules,
  ...faultRules,
  ...dayRules,
  ...rightsRules,
  ...recordRules,
} as const satisfies Record<string, RuleDefault>;

export type RuleKey = keyof typeof ruleTable;

/** The type of a rule's value: a number stays a number, a choice one of its choices. */
export type RuleValueOf<K extends RuleKey> = (typeof ruleTable)[K] extends infer R
  ? R extends { readonly type: 'choice'; readonly choices: readonly (infer C)[] }
    ? C
    : R extends Pick<NumberRule, 'type'>
      ? number
      : R extends Pick<SwitchRule, 'type'>
        ? boolean
        : string
  : never;

export function isRuleKey(key: string): key is RuleKey {
  return Object.hasOwn(ruleTable, key);
}
