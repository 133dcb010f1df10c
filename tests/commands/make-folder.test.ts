import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { makeFolder } from '../../bot/commands/make-folder.ts';
import { PlainError } from '../../bot/plain-error.ts';

let here = '';
beforeEach(() => {
  here = mkdtempSync(join(tmpdir(), 'scanward-folder-'));
});
afterEach(() => rmSync(here, { recursive: true }));

test('makes the folder and those above it, and lets stand what is there', () => {
  makeFolder(join(here, 'a', 'b'));
  makeFolder(join(here, 'a', 'b'));
  expect(statSync(join(here, 'a', 'b')).isDirectory()).toBe(true);
});

test('a file in the way is told plainly', () => {
  writeFileSync(join(here, 'file'), '');
  expect(() => makeFolder(join(here, 'file'))).toThrow(PlainError);
  expect(() => makeFolder(join(here, 'file', 'deeper'))).toThrow('is a file, not a folder');
});
