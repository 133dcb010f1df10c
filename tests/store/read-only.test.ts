import { chmodSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { backUp } from '../../bot/store/backup.ts';
import { machineFs } from '../../bot/store/fs-port.ts';
import { openStore } from '../../bot/store/store.ts';
import { keepMorning } from '../faults/old-things.ts';
import { verifyAll } from '../faults/verify-all.ts';
import { temporaryFolders } from './temp-folder.ts';

const newFolder = temporaryFolders();
const ROOT = process.getuid?.() === 0;
const NOBODY = 65_534;

afterEach(() => {
  if (ROOT) process.seteuid?.(0);
});

/** Makes a folder and what is in it something that can only be read; for root, somebody else looks at it. */
function onlyRead(folder: string): void {
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
    const path = join(folder, name);
    chmodSync(path, statSync(path).isDirectory() ? 0o555 : 0o444);
  }
  chmodSync(folder, 0o555);
  if (ROOT) process.seteuid?.(NOBODY);
}

// A folder on a disk that is only read, or of another account: an inspector's copy.
test.skipIf(process.platform === 'win32')(
  'a folder that can only be read is verified with its history, looked at and backed up',
  async () => {
    const folder = newFolder();
    const archives = newFolder();
    await keepMorning(folder);
    chmodSync(archives, 0o777);
    onlyRead(folder);
    expect(verifyAll(folder)).toMatchObject({ fault: null, history: true });
    const store = openStore(folder, { readOnly: true });
    expect([...store.lines()]).toHaveLength(store.head.n);
    expect(store.transport.unsent()).toEqual([]);
    store.close();
    const verdict = await backUp(machineFs, folder, join(archives, 'copy.tar.gz'), 0);
    expect(verdict.head).toEqual(store.head);
    expect(() => openStore(folder)).toThrow(/this account may not use it|can only be read/);
    if (ROOT) process.seteuid?.(0);
    chmodSync(folder, 0o755);
  },
);
