import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { dirname, join } from 'node:path';
import { createGunzip } from 'node:zlib';
import type { FsLike } from './fs-port.ts';
import { syncFolder, writeAll } from './fs-whole.ts';
import { readTar } from './tar.ts';
import { asTrouble, StoreTrouble } from './trouble.ts';
import { type Verdict, verifyRecord } from './verify.ts';

/** The name in the archive of the list of its files with their SHA-256. */
export const listName = 'files.sha256';

/** The names that an archive of ours may hold: nothing that could be put outside the folder. */
const ours = /^(?:(?:journal|set-aside)\/)?[0-9A-Za-z][0-9A-Za-z._-]*$/;

/**
 * Unpacks an archive into a new folder, each file held against its sum, then verifies the record in it. Throws
 * StoreTrouble where the archive does not read.
 */
export async function unpack(fs: FsLike, archive: string, folder: string): Promise<Verdict> {
  const sums = new Map<string, string>();
  const list: Uint8Array[] = [];
  fs.makeFolder(folder);
  try {
    const unzipped = createGunzip();
    createReadStream(archive)
      .on('error', (cause) => unzipped.destroy(cause))
      .pipe(unzipped);
    await readTar(unzipped, (name) => {
      // A folder's own entry, as other packers write it: made when something is in it.
      if (name === 'journal/' || name === 'set-aside/') return { write: () => {}, end: () => {} };
      if (!ours.test(name)) throw new Error(`it holds ${name}, which is none of ours`);
      if (name === listName) return { write: (part) => void list.push(Buffer.from(part)), end: () => {} };
      return intoFile(fs, join(folder, name), (sum) => sums.set(name, sum));
    });
  } catch (cause) {
    throw whyNot(archive, cause);
  }
  checkSums(archive, Buffer.concat(list).toString('utf8'), sums);
  for (const name of ['', 'journal', 'set-aside'])
    if (fs.exists(join(folder, name))) syncFolder(fs, join(folder, name));
  return verifyRecord(folder, { fs });
}

function intoFile(
  fs: FsLike,
  path: string,
  done: (sum: string) => void,
): { write(part: Uint8Array): void; end(): void } {
  fs.makeFolder(dirname(path));
  const fd = fs.open(path, 'w');
  const sum = createHash('sha256');
  return {
    write: (part) => {
      sum.update(part);
      writeAll(fs, fd, part);
    },
    end: () => {
      fs.sync(fd);
      fs.close(fd);
      done(sum.digest('hex'));
    },
  };
}

function whyNot(archive: string, cause: unknown): unknown {
  const trouble = asTrouble(`${archive} could not be read`, cause);
  if (trouble !== cause || !(cause instanceof Error)) return trouble;
  return new StoreTrouble(`${archive} could not be read: ${cause.message}.`, { cause });
}

function checkSums(archive: string, list: string, sums: ReadonlyMap<string, string>): void {
  const lines = list.split('\n').filter((line) => line !== '');
  const wrong = lines.find((line) => sums.get(line.slice(66)) !== line.slice(0, 64));
  if (lines.length === 0 || lines.length !== sums.size || wrong !== undefined) {
    throw new StoreTrouble(
      `${archive} is damaged: ${wrong?.slice(66) ?? 'its list of files'} is not as it was packed.`,
    );
  }
}
