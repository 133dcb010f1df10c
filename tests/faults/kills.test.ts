import { expect, it } from 'vitest';
import { temporaryFolders } from '../store/temp-folder.ts';
import { killAgainAndAgain } from './kills.ts';
import { seeded } from './random.ts';

const newFolder = temporaryFolders();

it('keeps every entry that was answered, none twice, over two dozen kill -9', async () => {
  // The full thousand: npm run faults.
  const { kills, answered, entries } = await killAgainAndAgain(newFolder(), 24, seeded(24));
  expect(kills).toBe(24);
  expect(answered).toBeGreaterThan(24);
  expect(entries).toBeGreaterThanOrEqual(answered);
}, 120_000);

it('keeps every note that the bot answered, none twice, with history.db beside, over six kill -9', async () => {
  const { answered, entries } = await killAgainAndAgain(newFolder(), 6, seeded(6), 'bot');
  expect(answered).toBeGreaterThan(6);
  expect(entries).toBeGreaterThanOrEqual(answered);
}, 240_000);
