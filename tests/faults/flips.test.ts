import { expect, it } from 'vitest';
import { temporaryFolders } from '../store/temp-folder.ts';
import { flipBits } from './flips.ts';

const newFolder = temporaryFolders();

it('verify finds flipped bits: each of a thousand or two spread over all files and all bits of a byte', () => {
  // 13 has no factor in common with 8, so every place in a byte comes up.
  const { flips, missed } = flipBits(newFolder(), 9, 13);
  expect(missed).toEqual([]);
  expect(flips).toBeGreaterThan(3000);
}, 120_000);
