import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { loadPractice } from '../../bot/commands/practice-file.ts';
import { run } from '../../bot/commands/rules.ts';
import { PlainError } from '../../bot/plain-error.ts';
import { ruleTable } from '../../core/defaults/rule-table.ts';
import { BASE, baseWith } from './base-file.ts';

const folder = mkdtempSync(join(tmpdir(), 'practice-file-'));
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

async function rules(...args: string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const code = await run(args, { out: (line) => out.push(line), err: (line) => err.push(line) });
  return { code, out, err: err.join('\n') };
}

describe('loading a practice file', () => {
  test('gives the practice and its text', () => {
    const { practice, text } = loadPractice(file('good.yaml', BASE));
    expect(practice.name).toBe('Ferngate Dental');
    expect(text).toBe(BASE);
  });

  test('a byte order mark is no mistake', () => {
    expect(loadPractice(file('mark.yaml', `\uFEFF${BASE}`)).text).toBe(BASE);
  });

  test.each([
    ['a missing file', () => join(folder, 'none.yaml'), 'does not exist'],
    ['a folder', () => folder, 'is a folder'],
    ['a file used as a folder', () => join(file('flat.yaml', BASE), 'x.yaml'), 'does not exist'],
    ['not UTF-8', () => file('latin.yaml', Uint8Array.of(0x70, 0xe9, 0xff)), 'is not plain text (UTF-8)'],
    ['too large', () => file('large.yaml', '#'.repeat(2_000_001)), 'over 2 MB'],
    [
      'mistakes',
      () => file('bad.yaml', baseWith(['home: quay}', 'home: quey}'])),
      'line 17, scanners.A.home',
    ],
  ])('%s: a plain message', (_, path, message) => {
    expect(() => loadPractice(path())).toThrow(PlainError);
    expect(() => loadPractice(path())).toThrow(message);
  });

  test.skipIf(process.getuid?.() === 0)('a file that may not be read (root may read all)', () => {
    const path = file('locked.yaml', BASE);
    chmodSync(path, 0);
    expect(() => loadPractice(path)).toThrow('may not be read');
  });
});

describe('the command that lists the rules', () => {
  test('prints every rule with where it comes from', async () => {
    const { code, out } = await rules('--practice', file('rules.yaml', BASE));
    expect(code).toBe(0);
    for (const key of Object.keys(ruleTable)) {
      const lines = out.filter((line) => line.startsWith(`  ${key}: `));
      expect(lines, key).toHaveLength(1);
      expect(lines[0]).toMatch(/\[(?:common practice|assumed|source: .+|this practice's own; default .+)\]/);
    }
  });

  test('shows what the practice, a site and a scanner set', async () => {
    const text = baseWith([
      'loadTable: uk',
      'loadTable: uk, sites: {north: {wipeAfterMinutes: 5}}, scanners: {A: {settleTauMinutes: 30}}',
    ]);
    const { out } = await rules('--practice', file('own.yaml', text));
    const lineAfter = (start: string) => out[out.findIndex((line) => line.startsWith(start)) + 1];
    expect(out.find((line) => line.includes('loadTable: uk'))).toContain(
      "[this practice's own; default none, assumed]",
    );
    expect(lineAfter('  wipeAfterMinutes: 10 min')).toBe("    North Clinic: 5 min [this practice's own]");
    expect(lineAfter('  settleTauMinutes: 20 min')).toBe("    blue scanner: 30 min [this practice's own]");
  });

  test('says where hours were assumed', async () => {
    const text = baseWith(['    hours: {mon: 09:00-17:00}\n', '']);
    const { out } = await rules('--practice', file('hours.yaml', text));
    expect(out.at(-1)).toBe('North Clinic: no hours in the file; Monday to Friday 09:00 to 17:00 [assumed]');
  });

  test('takes the example practice where none is named', async () => {
    const { code, out } = await rules();
    expect(code).toBe(0);
    expect(out[0]).toContain('example practice');
  });

  test.each([
    [['--practice', 'none.yaml'], 1, 'does not exist'],
    [['--prctice', 'x'], 2, 'Usage'],
    [['--practice'], 2, 'Usage'],
  ])('%j ends with %d', async (args, code, message) => {
    const ended = await rules(...args);
    expect(ended.code).toBe(code);
    expect(ended.err).toContain(message);
    expect(ended.out).toEqual([]);
  });
});
