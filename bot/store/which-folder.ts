import { existsSync, readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { plainly, StoreTrouble } from './trouble.ts';

/** Where the record is kept when no folder is named: a practice's own, else the example's. */
const usual = ['data/practice', 'data/example'];

/** The folder of a record that is there: the one named with `--store`, else the usual one. Throws StoreTrouble. */
export function recordFolder(named: string | undefined): string {
  const folder = named ?? usual.find(isRecord);
  if (folder !== undefined && isRecord(folder)) return resolve(folder);
  if (named !== undefined && existsSync(named))
    plainly(`${named} could not be read`, () => readdirSync(named));
  if (named === undefined)
    throw new StoreTrouble('There is no record here yet. Name its folder with --store FOLDER.');
  throw new StoreTrouble(`There is no record in ${named}. Name its folder with --store FOLDER.`);
}

/** Whether a folder is that of a record. */
export function isRecord(folder: string): boolean {
  return existsSync(join(folder, 'scanward.json')) || existsSync(join(folder, 'journal'));
}
