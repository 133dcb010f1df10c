import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { backUp } from '../../bot/store/backup.ts';
import { machineFs } from '../../bot/store/fs-port.ts';
import { openStore } from '../../bot/store/store.ts';
import { verifyRecord } from '../../bot/store/verify.ts';
import { temporaryFolders } from '../store/temp-folder.ts';

const newFolder = temporaryFolders();
const writer = fileURLToPath(new URL('writer.ts', import.meta.url));

it('verifies, looks and backs up while another process writes, and never sees a line half way', async () => {
  const folder = newFolder();
  const archives = newFolder();
  const child = spawn(process.execPath, [writer, folder, '150'], { stdio: ['ignore', 'ignore', 'inherit'] });
  const closed = once(child, 'close');
  const faults: string[] = [];
  let looks = 0;
  while (child.exitCode === null) {
    await setImmediate();
    if (!existsSync(join(folder, 'journal', '2026-11.jsonl'))) continue;
    const { fault } = verifyRecord(folder);
    if (fault !== null) faults.push(fault);
    const store = openStore(folder, { readOnly: true });
    expect([...store.lines()]).toHaveLength(store.head.n);
    store.close();
    if (looks++ % 10 === 0) await backUp(machineFs, folder, join(archives, `${looks}.tar.gz`), 0);
  }
  await closed;
  expect(faults).toEqual([]);
  expect(looks).toBeGreaterThan(1);
  expect(verifyRecord(folder)).toMatchObject({ fault: null, head: { n: 151 } });
}, 120_000);
