import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const table = readFileSync('DEVELOPERS.md', 'utf8').split('## Rules that wait')[1] ?? '';
const names = globSync('core/rules/**/*.ts').flatMap((file) => {
  const said = readFileSync(file, 'utf8').matchAll(/\b(?:rule: |RULE = )'([a-z-]+)',?;?$/gm);
  return [...said].flatMap(([, name]) => name ?? []);
});

describe('each rule that waits stands in the table of DEVELOPERS.md', () => {
  test('names are found', () => expect(names.length).toBeGreaterThan(10));
  test.each([...new Set(names)])('%s', (name) => expect(table).toContain(`\`${name}\``));
});
