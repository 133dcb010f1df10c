import type { Origin, RuleDefault, Unit } from '../defaults/rule-default.ts';
import { isRuleKey, type RuleKey, ruleSections } from '../defaults/rule-table.ts';
import { ruleInForce, type SetBy } from '../defaults/rule-value.ts';
import type { Practice } from '../practice/practice.ts';

/** Every rule in force for a practice, section by section, as lines of plain text: value, where it comes from, what it is for. */
export function ruleLines(practice: Practice): readonly string[] {
  const assumed = siteLines(practice);
  return [
    'Each line: rule, value, where it comes from, what it is for. "Assumed" is a default of ours: check that it suits you.',
    "Makers' instructions, the autoclave's validated cycles and local codes come first.",
    ...Object.entries(ruleSections).flatMap(([title, section]) => [
      '',
      title,
      ...sectionLines(practice, section),
    ]),
    ...(assumed.length > 0 ? ['', ...assumed] : []),
  ];
}

/** What the practice file sets otherwise than the default does, in the table's order: "loadTable: uk (default none)". */
export function ownRuleLines(practice: Practice): readonly string[] {
  return Object.values(ruleSections).flatMap((section) =>
    Object.entries<RuleDefault>(section).flatMap(([key, rule]) => {
      if (!isRuleKey(key)) return [];
      const { value, setBy } = ruleInForce(practice, key);
      const differs = setBy !== 'default' && value !== rule.value;
      const own = differs ? [`${key}: ${shown(value, rule)} (default ${shown(rule.value, rule)})`] : [];
      return [...own, ...differing(practice, key, rule).map(({ name, is }) => `${key} at ${name}: ${is}`)];
    }),
  );
}

/** The lines of one section: each rule as it holds for the whole practice, then where a site or scanner differs. */
function sectionLines(practice: Practice, section: Readonly<Record<string, RuleDefault>>): readonly string[] {
  return Object.entries(section).flatMap(([key, rule]) => {
    if (!isRuleKey(key)) return [];
    const { value, setBy } = ruleInForce(practice, key);
    const own = setBy === 'default' ? '' : `; default ${shown(rule.value, rule)}, ${originText(rule.origin)}`;
    const line = `  ${key}: ${shown(value, rule)} [${whence(setBy, rule)}${own}] ${rule.why}`;
    const others = differing(practice, key, rule).map(
      ({ name, is }) => `    ${name}: ${is} [this practice's own]`,
    );
    return [line, ...others];
  });
}

/** Where one site or scanner has a setting of its own. */
function differing(
  practice: Practice,
  key: RuleKey,
  rule: RuleDefault,
): readonly { readonly name: string; readonly is: string }[] {
  const places = [
    ...practice.sites.map(({ id, name }) => ({ at: { site: id }, name, setBy: 'site' })),
    ...practice.scanners.map(({ id, name }) => ({ at: { scanner: id }, name, setBy: 'scanner' })),
  ];
  return places.flatMap(({ at, name, setBy }) => {
    const here = ruleInForce(practice, key, at);
    return here.setBy === setBy ? [{ name, is: shown(here.value, rule) }] : [];
  });
}

/** Sites whose hours were not given: said here, because every reminder hangs on them. */
function siteLines(practice: Practice): readonly string[] {
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
