import type { Practice, RuleOverrides, RuleValue } from '../practice/practice.ts';
import type { Setting } from './state.ts';

type Values = Record<string, RuleValue>;

/** The practice with the settings made in chat put over its file's own. */
export function withSettings(file: Practice, settings: ReadonlyMap<string, Setting>): Practice {
  const practice: Values = { ...file.rules.practice };
  const bySite = copyOf(file.rules.bySite);
  const byScanner = copyOf(file.rules.byScanner);
  for (const { name, site, scanner, value } of settings.values()) {
    if (value === null) continue;
    if (scanner !== null) byScanner[scanner] = { ...byScanner[scanner], [name]: value };
    else if (site !== null) bySite[site] = { ...bySite[site], [name]: value };
    else practice[name] = value;
  }
  const rules: RuleOverrides = { practice, bySite, byScanner };
  return { ...file, rules };
}

function copyOf(values: RuleOverrides['bySite']): Record<string, Values> {
  return Object.fromEntries(Object.entries(values).map(([id, own]) => [id, { ...own }]));
}
