import { existsSync, globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ruleTable } from '../../core/defaults/rule-table.ts';
import { loadSpeak } from '../../core/rules/loads/speak.ts';
import { scannerSpeak } from '../../core/rules/scanner/speak.ts';
import { tipSpeak } from '../../core/rules/tips/speak.ts';

const DEVELOPERS = readFileSync('DEVELOPERS.md', 'utf8');

/** The text of one section of DEVELOPERS.md, up to the next heading of its rank. */
function section(heading: string): string {
  return DEVELOPERS.split(`\n## ${heading}\n`)[1]?.split('\n## ')[0] ?? '';
}

/** Cells of the rows of the table that follows these words. */
function rowsBehind(words: string): readonly (readonly string[])[] {
  const [, behind = ''] = section('Rules, and their tests').split(words);
  const [table = ''] = behind.split('\n\n').filter((block) => block.startsWith('|'));
  return table
    .split('\n')
    .slice(2)
    .filter((row) => row.startsWith('|'))
    .map((row) => row.split('|').map((cell) => cell.trim()));
}

const TABLES = {
  waits: rowsBehind('**Rules that wait**'),
  findings: rowsBehind('**Rules that speak at once**'),
  replies: rowsBehind('**Replies that a kind of fact calls for.**'),
  readiness: rowsBehind('**Readiness**'),
  rights: rowsBehind('**Rights, corrections, look-back, supply**'),
};

function namesOf(rows: readonly (readonly string[])[]): readonly string[] {
  return rows.map((cells) => cells[1]?.replaceAll('`', '') ?? '');
}

/** "`tests/rules/x.test.ts`: its title". */
function testNamed(cell: string): { readonly file: string; readonly title: string } {
  const [, file = '', title = ''] = /^`([^`]+)`: (.+)$/.exec(cell) ?? [];
  return { file, title };
}

/** The title stands in that file as the name of a test, a describe or a case of one. */
function isTitleIn(file: string, title: string): boolean {
  const text = readFileSync(file, 'utf8');
  return (
    /\b(?:it|test)(?:\.each)?\(/.test(text) &&
    [`'${title}'`, `"${title}"`, `\`${title}\``].some((quoted) => text.includes(quoted))
  );
}

function found(pattern: RegExp, files: string): readonly string[] {
  const names = globSync(files).flatMap((file) =>
    [...readFileSync(file, 'utf8').matchAll(pattern)].flatMap(([, name]) => name ?? []),
  );
  return [...new Set(names)].sort();
}

describe('every rule has its row in DEVELOPERS.md', () => {
  test('those that wait', () => {
    const names = found(/\b(?:rule: |RULE = )'([a-z-]+)'[,;]$/gm, 'core/rules/**/*.ts');
    const test_due = found(/^\s+'((?:spore|leak)-test)',$/gm, 'core/rules/loads/test-due.ts');
    expect(
      [...new Set([...names, ...test_due])].filter((name) => !namesOf(TABLES.waits).includes(name)),
    ).toEqual([]);
    expect(names.length).toBeGreaterThan(10);
  });

  test('what the record finds', () => {
    const kinds = [scannerSpeak, tipSpeak, loadSpeak].flatMap((table) => Object.keys(table));
    expect([...namesOf(TABLES.findings)].sort()).toEqual(kinds.sort());
  });

  test('replies to a kind of fact', () => {
    const kinds = found(/^\s+case '([a-z-]+)':$/gm, 'core/desk/after/follow-up.ts');
    expect([...namesOf(TABLES.replies)].sort()).toEqual(kinds);
  });

  test('readiness words', () => {
    const words = found(/^\s+case '([a-z-]+)':$/gm, 'core/rules/scanner/reason-words.ts');
    expect([...namesOf(TABLES.readiness)].sort()).toEqual(words);
  });

  test('rights', () => {
    const rights = found(/^export function (may\w+)/gm, 'core/rules/rights.ts');
    expect(rights.filter((name) => !namesOf(TABLES.rights).includes(name))).toEqual([]);
    expect(rights.length).toBeGreaterThan(3);
  });
});

const ROWS = Object.values(TABLES).flat();

describe('each row of the rules', () => {
  test.each(ROWS.map((cells) => [cells[1] ?? '', cells[3] ?? '', cells[4] ?? '']))(
    '%s in %s is tested by %s',
    (_name, file, cell) => {
      expect(existsSync(file.replaceAll('`', ''))).toBe(true);
      const named = testNamed(cell);
      expect(existsSync(named.file)).toBe(true);
      expect(isTitleIn(named.file, named.title)).toBe(true);
    },
  );

  test('a title that no test has is found out', () => {
    expect(isTitleIn('tests/rules/table.test.ts', ['a title', 'of nothing'].join(' '))).toBe(false);
  });
});

const HAZARDS = section('What it is for, and hazards')
  .split('\n')
  .filter((line) => line.startsWith('|'))
  .slice(2)
  .map((row) => row.split('|').map((cell) => cell.trim()));

describe('each hazard', () => {
  test('there are some', () => expect(HAZARDS.length).toBeGreaterThan(10));

  test.each(HAZARDS.map((cells) => [cells[1] ?? '', cells[4] ?? '']))(
    '%s is shown by %s',
    (_hazard, cell) => {
      const { file, title } = testNamed(cell);
      expect(existsSync(file)).toBe(true);
      expect(isTitleIn(file, title)).toBe(true);
    },
  );
});

describe('each default', () => {
  const code = globSync(['core/**/*.ts', 'bot/**/*.ts'])
    .filter((file) => !file.startsWith('core/defaults/'))
    .map((file) => readFileSync(file, 'utf8'))
    .join('\n');

  test.each(Object.keys(ruleTable))('%s is asked for by the code', (key) => {
    expect(code.includes(`'${key}'`)).toBe(true);
  });
});
