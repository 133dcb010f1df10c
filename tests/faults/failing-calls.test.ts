import { join } from 'node:path';
import { expect, it } from 'vitest';
import { temporaryFolders } from '../store/temp-folder.ts';
import { failEveryCall } from './failing-calls.ts';

const newFolder = temporaryFolders();

it('does nothing half, and says why, whichever file system call fails', () => {
  // Every call fails in turn under `npm run faults`; here every fifth.
  expect(failEveryCall(join(newFolder(), 'record'), 5)).toBeGreaterThan(100);
}, 120_000);
