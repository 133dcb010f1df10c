import { dirname, join } from 'node:path';
import type { FsLike } from './fs-port.ts';
import { readFile, replaceFile, syncFolder } from './fs-whole.ts';
import { journalFolder } from './months.ts';
import { StoreTooNew, StoreTrouble } from './trouble.ts';

/** The layout of the folder that this program writes. */
const folderVersion = 1;

/** The files of a practice's folder, by what they hold. */
export function filesOf(
  folder: string,
): Record<'about' | 'people' | 'texts' | 'snapshot' | 'transport' | 'index' | 'history', string> {
  return {
    about: join(folder, 'scanward.json'),
    people: join(folder, 'people.jsonl'),
    texts: join(folder, 'texts.jsonl'),
    snapshot: join(folder, 'snapshot.json'),
    transport: join(folder, 'transport.db'),
    index: join(folder, 'index.db'),
    history: join(folder, 'history.db'),
  };
}

/** Makes the folder where it is not there yet. */
export function makeFolders(fs: FsLike, folder: string): void {
  if (!fs.exists(folder)) {
    fs.makeFolder(folder);
    syncFolder(fs, dirname(folder));
  }
  fs.makeFolder(journalFolder(folder));
}

/** Marks a new folder with the version of its layout; refuses one of a newer layout. */
export function checkVersion(fs: FsLike, folder: string, readOnly: boolean): void {
  const path = filesOf(folder).about;
  if (!fs.exists(path)) {
    if (!readOnly) replaceFile(fs, folder, path, [Buffer.from(`{"folder":${folderVersion}}\n`)]);
    return;
  }
  const version = versionIn(readFile(fs, path).toString('utf8'));
  if (version === null)
    throw new StoreTrouble(`${path} cannot be read. Put {"folder":1} in it and start again.`);
  if (version > folderVersion) {
    throw new StoreTooNew(
      `The folder ${folder} was written by a newer Scanward (folder version ${version}; this one reads up to ${folderVersion}). Use the newer one.`,
    );
  }
}

function versionIn(text: string): number | null {
  try {
    const read: unknown = JSON.parse(text);
    if (typeof read !== 'object' || read === null || !('folder' in read)) return null;
    return typeof read.folder === 'number' ? read.folder : null;
  } catch {
    return null;
  }
}
