import { rmdirSync, rmSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import type { FsLike } from './fs-port.ts';
import { syncFolder } from './fs-whole.ts';
import { asTrouble, StoreTrouble } from './trouble.ts';
import { unpack } from './unpack.ts';
import type { Verdict } from './verify.ts';

/**
 * Makes a practice's folder again from an archive: unpacked beside it, verified, and put in place at one stroke.
 * Throws StoreTrouble, leaving nothing, where there is something in the folder or the record does not verify.
 */
export async function restore(fs: FsLike, archive: string, folder: string): Promise<Verdict> {
  const place = resolve(folder);
  const there = fs.exists(place);
  if (there && fs.list(place).length > 0) {
    throw new StoreTrouble(`${folder} is not empty. Name a new folder, or move what is there away first.`);
  }
  const draft = `${place}.unpacking`;
  rmSync(draft, { recursive: true, force: true });
  try {
    const verdict = await unpack(fs, archive, draft);
    if (verdict.fault !== null)
      throw new StoreTrouble(`The record in ${archive} is not whole: ${verdict.fault}`);
    if (there) rmdirSync(place);
    fs.rename(draft, place);
    syncFolder(fs, dirname(place));
    return verdict;
  } catch (cause) {
    rmSync(draft, { recursive: true, force: true });
    throw asTrouble(`${folder} could not be made`, cause);
  }
}
