import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { readCredentials } from '../../bot/chat/matrix/sign-in/credentials.ts';

describe('secrets', () => {
  const folder = mkdtempSync(join(tmpdir(), 'scanward-secrets-'));
  const path = join(folder, 'secrets');
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test('a file that others can read is refused, with the way out', () => {
    writeFileSync(path, 'SCANWARD_USER=scanward\n');
    chmodSync(path, 0o644);
    expect(() => readCredentials({}, path)).toThrow(/chmod 600/);
  });

  test('a file of the owner’s is read; the environment wins', () => {
    writeFileSync(
      path,
      '# ours\nSCANWARD_HOMESERVER = matrix.example.org/\nSCANWARD_USER="scanward"\nSCANWARD_PASSWORD=a=b\n',
    );
    chmodSync(path, 0o600);
    expect(readCredentials({ SCANWARD_USER: 'other' }, path)).toEqual({
      homeserver: 'https://matrix.example.org',
      user: 'other',
      password: 'a=b',
      token: null,
      recoveryKey: null,
    });
  });

  test('a line that is no secret of ours is named', () => {
    writeFileSync(path, 'SCANWARD_USER=a\nPASSWORD=b\n');
    chmodSync(path, 0o600);
    expect(() => readCredentials({}, path)).toThrow(/Line 2/);
  });
});
