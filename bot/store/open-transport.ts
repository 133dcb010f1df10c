import { basename, dirname, join } from 'node:path';
import type { DatabaseSync } from 'node:sqlite';
import type { FsLike } from './fs-port.ts';
import { removeIfThere } from './fs-whole.ts';
import { lookAtDb } from './look-at-db.ts';
import { asideFolder } from './set-aside.ts';
import { type Transport, transportOn } from './transport.ts';
import { openTransportDb } from './transport-schema.ts';
import { sqliteKind, sqliteTrouble } from './trouble.ts';

/** SQLite's codes for a file that is not, or no longer, a database. */
const damaged: ReadonlySet<number> = new Set([11, 26]);

/**
 * Opens what belongs to the chat. A damaged file is set aside and a new one begun, which is said: the chat then
 * starts from now. Looking only, a missing file reads as an empty one.
 */
export function openTransport(
  fs: FsLike,
  path: string,
  looking: boolean,
): { transport: Transport; notices: string[] } {
  if (looking) return { transport: transportOn(lookAt(fs, path)), notices: [] };
  try {
    return { transport: open(fs, path), notices: [] };
  } catch (cause) {
    const kind = sqliteKind(cause);
    if (kind === null || !damaged.has(kind)) throw sqliteTrouble(`${path} could not be opened`, cause);
    const name = moveAside(fs, path);
    const notice = `${basename(path)} was damaged and is now in ${name}. Notes typed while Scanward was away may have to be typed again.`;
    return { transport: open(fs, path), notices: [notice] };
  }
}

function open(fs: FsLike, path: string): Transport {
  // Made by us first: SQLite would let every account of the machine read it.
  if (!fs.exists(path)) fs.close(fs.open(path, 'a'));
  const db = openTransportDb(path);
  try {
    return transportOn(db);
  } catch (cause) {
    db.close();
    throw cause;
  }
}

function lookAt(fs: FsLike, path: string): DatabaseSync {
  return fs.exists(path) ? lookAtDb(path) : openTransportDb(':memory:');
}

function moveAside(fs: FsLike, path: string): string {
  const aside = asideFolder(dirname(path));
  fs.makeFolder(aside);
  let number = 1;
  while (fs.exists(join(aside, `${number}-${basename(path)}`))) number++;
  fs.rename(path, join(aside, `${number}-${basename(path)}`));
  for (const end of ['-wal', '-shm']) removeIfThere(fs, `${path}${end}`);
  return join('set-aside', `${number}-${basename(path)}`);
}
