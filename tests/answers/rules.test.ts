import { describe, expect, test } from 'vitest';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { answerTo, textOf } from './ask.ts';

const RULES = { kind: 'rules' } as const;
const NOW = '2026-11-25 09:00';

/** The rules of that practice file's own. */
function withRules(rules: string): Given {
  return new Given(`${FERNGATE.replace(/^rules:.*$/m, '')}\nrules: ${rules}\n`);
}

describe('which rules are in force', () => {
  test('given a file that sets some, then those with their defaults', () => {
    expect(textOf(withRules('{loadTable: uk, questionMinutes: 45}'), RULES, NOW).split('\n')).toEqual([
      'Rules in force: every one is in the file, with its value and where it comes from.',
      'Your practice file sets:',
      '• loadTable: uk (default none)',
      '• questionMinutes: 45 min (default 30 min)',
      'Makers’ instructions, the autoclave’s validated cycles and local codes come first.',
    ]);
  });

  test('given one that repeats a default, then it changes none', () => {
    expect(textOf(withRules('{questionMinutes: 30}'), RULES, NOW)).toContain('changes none of the defaults');
  });

  test('the file names every rule with its value and its source', () => {
    const { file } = answerTo(withRules('{questionMinutes: 45}'), RULES, NOW);
    expect(file).toMatchObject({ name: 'rules.txt', type: 'text/plain' });
    expect(file?.content).toMatch(/questionMinutes: 45 min \[this practice's own; default 30 min, assumed\]/);
    expect(file?.content).toMatch(/settleDelta|settleCelsius|within 3/);
    expect(file?.content.split('\n').filter((line) => /^ {2}\w+: /.test(line)).length).toBeGreaterThan(40);
  });
});
