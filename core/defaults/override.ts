import { isLocalTime } from '../time/local-time.ts';
import type { RuleDefault } from './rule-default.ts';
import { type RuleKey, type RuleValueOf, ruleTable } from './rule-table.ts';

/** True where the value is of the rule's type and within its bounds. */
export function accepts<K extends RuleKey>(key: K, value: unknown): value is RuleValueOf<K> {
  return fits(ruleTable[key], value);
}

function fits(rule: RuleDefault, value: unknown): boolean {
  switch (rule.type) {
    case 'number':
      if (typeof value !== 'number' || !(value >= rule.min && value <= rule.max)) return false;
      return rule.whole !== true || Number.isInteger(value);
    case 'time':
      return (
        typeof value === 'string' && isLocalTime(value) && value >= rule.earliest && value <= rule.latest
      );
    case 'choice':
      return typeof value === 'string' && rule.choices.includes(value);
    case 'switch':
      return typeof value === 'boolean';
  }
}

/** What a value of that rule may be, in words: "a whole number from 1 to 7 (days)". */
export function allowed(rule: RuleDefault): string {
  switch (rule.type) {
    case 'number': {
      const unit = rule.unit === 'count' || rule.unit === 'share' ? '' : ` (${rule.unit})`;
      return `a ${rule.whole === true ? 'whole ' : ''}number from ${rule.min} to ${rule.max}${unit}`;
    }
    case 'time':
      return `a time from ${rule.earliest} to ${rule.latest}`;
    case 'choice':
      return `one of ${rule.choices.join(', ')}`;
    case 'switch':
      return 'true or false';
  }
}

/** The value that a text from the practice file gives to a rule, or `null` when it is of the wrong type or out of bounds. */
export function readOverride(key: RuleKey, text: string): number | string | boolean | null {
  const rule: RuleDefault = ruleTable[key];
  const value =
    rule.type === 'number' ? numberOf(text) : rule.type === 'switch' ? switchOf(text) : textOf(rule, text);
  return accepts(key, value) ? value : null;
}

function numberOf(text: string): number {
  return /^[+-]?\d+(?:\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
}

/** `yes` and `no` are what people write; YAML 1.2 itself knows `true` and `false` alone. */
function switchOf(text: string): boolean | null {
  if (/^(?:true|yes|on)$/i.test(text)) return true;
  return /^(?:false|no|off)$/i.test(text) ? false : null;
}

function textOf(rule: RuleDefault, text: string): string {
  if (rule.type === 'time') return /^\d:/.test(text) ? `0${text}` : text;
  return text.toLowerCase();
}
