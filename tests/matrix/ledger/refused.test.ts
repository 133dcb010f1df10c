import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeEach, expect, test, vi } from 'vitest';
import { run as rebuild } from '../../../bot/commands/rebuild.ts';

const work = mkdtempSync(join(tmpdir(), 'scanward-refused-'));
const io = { out: () => undefined, err: () => undefined };

beforeEach(() => {
  for (const name of ['HOMESERVER', 'USER', 'PASSWORD', 'TOKEN', 'RECOVERY_KEY', 'SECRETS'])
    vi.stubEnv(`SCANWARD_${name}`, undefined);
});
afterEach(() => {
  vi.unstubAllEnvs();
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

test('without the recovery key it says which it needs', async () => {
  const folder = join(work, 'new');
  await expect(rebuild(['--room', '--store', folder], io)).rejects.toThrow(/SCANWARD_RECOVERY_KEY/);
});

test('without the name of a folder, or with a script as well, it says what it takes', async () => {
  await expect(rebuild(['--room'], io)).rejects.toThrow(/--store FOLDER/);
  const both = ['--room', '--store', join(work, 'new'), '--from', 'script'];
  await expect(rebuild(both, io)).rejects.toThrow(/no --from/);
});

test('a folder that has something in it is left as it is', async () => {
  vi.stubEnv('SCANWARD_RECOVERY_KEY', 'EsTx');
  writeFileSync(join(work, 'mine'), '');
  await expect(rebuild(['--room', '--store', work], io)).rejects.toThrow(/is not empty/);
  expect(readdirSync(work)).toEqual(['mine']);
});
