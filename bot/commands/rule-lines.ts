import type { Origin, RuleDefault, Unit } from '../../core/defaults/rule-default.ts';
import { isRuleKey, type RuleKey } from '../../core/defaults/rule-table.ts';
import { ruleInForce, type SetBy } from '../../core/defaults/rule-value.ts';
import type { Practice } from '../../core/practice/practice.ts';

/** The lines of one section: each rule as it holds for the whole practice, then where a site or scanner differs. */
export function ruleLines(
  practice: Practice,
  section: Readonly<Record<string, RuleDefault>>,
): readonly string[] {
  return Object.entries(section).flatMap(([key, rule]) => {
    if (!isRuleKey(key)) return [];
    const { value, setBy } = ruleInForce(practice, key);
    const own = setBy === 'default' ? '' : `; default ${shown(rule.value, rule)}, ${originText(rule.origin)}`;
    const line = `  ${key}: ${shown(value, rule)} [${whence(setBy, rule)}${own}] ${rule.why}`;
    return [line, ...differing(practice, key, rule)];
  });
}

function differing(practice: Practice, key: RuleKey, rule: RuleDefault): readonly string[] {
  const places = [
    ...practice.sites.map(({ id, name }) => ({ at: { site: id }, name, setBy: 'site' })),
    ...practice.scanners.map(({ id, name }) => ({ at: { scanner: id }, name, setBy: 'scanner' })),
  ];
  return places.flatMap(({ at, name, setBy }) => {
    const here = ruleInForce(practice, key, at);
    return here.setBy === setBy ? [`    ${name}: ${shown(here.value, rule)} [this practice's own]`] : [];
  });
}

/** Sites whose hours were not given: said here, because every reminder hangs on them. */
export function siteLines(practice: Practice): readonly string[] {
  return practice.sites
    .filter((site) => site.hoursAssumed)
    .map((site) => `${site.name}: no hours in the file; Monday to Friday 09:00 to 17:00 [assumed]`);
}

function whence(setBy: SetBy, rule: RuleDefault): string {
  return setBy === 'default' ? originText(rule.origin) : "this practice's own";
}

function originText(origin: Origin): string {
  if (origin === 'practice') return 'common practice';
  return origin === 'assumed' ? 'assumed' : `source: ${origin.source}`;
}

const UNITS: Readonly<Record<Unit, string>> = {
  minutes: ' min',
  seconds: ' sec',
  hours: ' h',
  days: ' days',
  months: ' months',
  '°C': ' °C',
  '°C per hour': ' °C per hour',
  '%': ' %',
  share: '',
  count: '',
};

function shown(value: number | string | boolean, rule: RuleDefault): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (rule.type !== 'number') return String(value);
  const unit = UNITS[rule.unit];
  return `${value}${value === 1 ? unit.replace(/s$/, '') : unit}`;
}
