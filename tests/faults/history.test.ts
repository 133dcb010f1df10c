import { expect, it } from 'vitest';
import { temporaryFolders } from '../store/temp-folder.ts';
import { failHistory, spoilHistory } from './history.ts';

const newFolder = temporaryFolders();

it('answers as ever, and says one thing at most, whatever was done to history.db', async () => {
  // Every 401st byte under `npm run faults`.
  const { runs, noticed } = await spoilHistory(newFolder(), 30_011);
  expect(runs).toBeGreaterThan(8);
  expect(noticed).toBeGreaterThan(4);
}, 120_000);

it('answers as ever whichever of SQLite’s calls on history.db fails, once or for good', async () => {
  // Every fifth under `npm run faults`.
  expect(await failHistory(newFolder(), 149)).toBeGreaterThan(20);
}, 240_000);
