import { expect, it } from 'vitest';
import { temporaryFolders } from '../store/temp-folder.ts';
import { cutEverywhere } from './cuts.ts';

const newFolder = temporaryFolders();

it('starts on a journal cut at any of its last 1,000 bytes', () => {
  expect(cutEverywhere(newFolder(), 1000)).toBe(1000);
}, 120_000);
