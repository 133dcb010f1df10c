import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const DEVELOPERS = readFileSync('DEVELOPERS.md', 'utf8');
const named = [...DEVELOPERS.matchAll(/`(tests\/[\w/-]+\.test\.ts)`/g)].flatMap(([, file]) => file ?? []);

describe('the tests that DEVELOPERS.md names for hazards', () => {
  test('are named at all', () => expect(named.length).toBeGreaterThan(10));
  test.each(named)('%s exists', (file) => expect(existsSync(file)).toBe(true));
});
