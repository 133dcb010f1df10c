import { allowed, readOverride } from '../../defaults/override.ts';
import type { RuleDefault, Scope } from '../../defaults/rule-default.ts';
import { isRuleKey, ruleTable } from '../../defaults/rule-table.ts';
import type { Finding, Path } from '../mistakes.ts';
import type { RuleOverrides, RuleValue } from '../practice.ts';
import { shown } from './leaf.ts';
import { nearest } from './nearest.ts';
import { entriesOf, idOf, isFields } from './raw.ts';

/** The practice's own settings, and what is wrong with them: unknown, of the wrong type, out of bounds, for nothing there is. */
export function readRules(raw: unknown): {
  readonly rules: RuleOverrides;
  readonly findings: readonly Finding[];
} {
  const findings: Finding[] = [];
  const given = isFields(raw) ? raw.rules : undefined;
  const none: RuleOverrides = { practice: {}, bySite: {}, byScanner: {} };
  if (given === undefined) return { rules: none, findings };
  if (!isFields(given)) {
    findings.push({
      path: ['rules'],
      at: 'value',
      wrong: `${shown(given)} where rules belong`,
      right: '{loadTable: uk}',
    });
    return { rules: none, findings };
  }
  const { sites, scanners, ...own } = given;
  const rules = {
    practice: readLayer(own, ['rules'], 'practice', findings),
    bySite: readLayers(sites, ['rules', 'sites'], 'site', idsOf(raw, 'sites'), findings),
    byScanner: readLayers(scanners, ['rules', 'scanners'], 'scanner', idsOf(raw, 'scanners'), findings),
  };
  return { rules, findings };
}

function idsOf(raw: unknown, key: string): readonly string[] {
  return entriesOf(raw, key).flatMap((entry) => idOf(entry) ?? []);
}

type Layer = Readonly<Record<string, RuleValue>>;

function readLayers(
  given: unknown,
  path: Path,
  scope: Scope,
  ids: readonly string[],
  findings: Finding[],
): Readonly<Record<string, Layer>> {
  if (given === undefined) return {};
  if (!isFields(given)) {
    findings.push({
      path,
      at: 'value',
      wrong: `${shown(given)} where ${scope}s belong`,
      right: `{${ids[0] ?? 'id'}: {…}}`,
    });
    return {};
  }
  const layers = Object.entries(given).map(([id, layer]): [string, Layer] => {
    const inside = [...path, id];
    if (!ids.includes(id)) {
      const right = nearest(id, ids) ?? `one of ${ids.join(', ')}`;
      findings.push({ path: inside, at: 'key', wrong: `no ${scope} has the id "${id}"`, right });
    }
    if (isFields(layer)) return [id, readLayer(layer, inside, scope, findings)];
    findings.push({
      path: inside,
      at: 'value',
      wrong: `${shown(layer)} where rules belong`,
      right: '{wipeAfterMinutes: 5}',
    });
    return [id, {}];
  });
  return Object.fromEntries(layers);
}

function readLayer(
  given: Readonly<Record<string, unknown>>,
  path: Path,
  scope: Scope,
  findings: Finding[],
): Layer {
  const values: [string, RuleValue][] = [];
  for (const [key, value] of Object.entries(given)) {
    const read = readOne(key, value, scope);
    if ('value' in read) values.push([key, read.value]);
    else findings.push({ path: [...path, key], ...read });
  }
  return Object.fromEntries(values);
}

/** How narrow a scope is: a rule of scope `site` may be set for the practice and for a site, not for a scanner. */
const NARROWNESS: Readonly<Record<Scope, number>> = { practice: 0, site: 1, scanner: 2 };

function readOne(
  key: string,
  value: unknown,
  scope: Scope,
): { readonly value: RuleValue } | Omit<Finding, 'path'> {
  if (!isRuleKey(key)) {
    const near = nearest(key, Object.keys(ruleTable));
    return {
      at: 'key',
      wrong: `there is no rule "${key}"`,
      right: near ?? 'a rule that the command "rules" lists',
    };
  }
  const rule: RuleDefault = ruleTable[key];
  if (NARROWNESS[scope] > NARROWNESS[rule.scope]) {
    return {
      at: 'key',
      wrong: `${key} cannot differ by ${scope}`,
      right: `set it for the ${rule.scope === 'site' ? 'site or the practice' : 'practice'}`,
    };
  }
  const read = typeof value === 'string' ? readOverride(key, value) : null;
  if (read !== null) return { value: read };
  return { at: 'value', wrong: `${shown(value)} is not what ${key} may be`, right: allowed(rule) };
}
