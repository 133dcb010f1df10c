import { buildPractice } from './file/build.ts';
import { missingZones } from './file/missing-zones.ts';
import { pathByNames } from './file/path-by-names.ts';
import { isFields } from './file/raw.ts';
import { brokenReferences } from './file/references.ts';
import { readRules } from './file/rule-overrides.ts';
import { practiceFile } from './file/schema.ts';
import { findingsOf } from './file/schema-findings.ts';
import { sharedNames } from './file/shared-names.ts';
import { readYaml } from './file/yaml-text.ts';
import type { Finding, Mistake } from './mistakes.ts';
import type { Practice } from './practice.ts';

/**
 * The practice that a file's text describes, or every mistake in it at once, in the file's order. Where the text is not
 * even YAML, that is said alone: what would be found behind it depends on how the fault is mended.
 */
export function parsePractice(
  text: string,
): { readonly practice: Practice } | { readonly mistakes: readonly Mistake[] } {
  const yaml = readYaml(text);
  if (yaml.mistakes.length > 0) return { mistakes: inOrder(yaml.mistakes) };
  if (!isFields(yaml.raw)) {
    const wrong = text.trim() === '' ? 'the file is empty' : 'this is not a practice file';
    return { mistakes: [{ line: 1, column: 1, path: '', wrong, right: 'practice: NAME on the first line' }] };
  }
  // Compiling the schema pays from thousands of values on; for one file it costs 10 ms of the start.
  const read = practiceFile.safeParse(yaml.raw, { jitless: true });
  const { rules, findings } = readRules(yaml.raw);
  const all: readonly Finding[] = [
    ...(read.success ? [] : findingsOf(read.error, yaml.raw)),
    ...missingZones(yaml.raw),
    ...sharedNames(yaml.raw),
    ...brokenReferences(yaml.raw),
    ...findings,
  ];
  if (read.success && all.length === 0) return { practice: buildPractice(read.data, rules) };
  const mistakes = all.map(({ path, at, wrong, right }) => {
    return { ...yaml.place(path, at), path: pathByNames(path, yaml.raw), wrong, right };
  });
  return { mistakes: inOrder(mistakes) };
}

function inOrder(mistakes: readonly Mistake[]): readonly Mistake[] {
  return mistakes.toSorted((a, b) => a.line - b.line || a.column - b.column);
}
