import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { filesOf } from './folder.ts';
import type { FsLike } from './fs-port.ts';
import { readAt, replaceFile } from './fs-whole.ts';
import { lookAtDb } from './look-at-db.ts';
import { listMonths } from './months.ts';
import { asideFolder } from './set-aside.ts';
import { type TarFile, writeTar } from './tar.ts';
import { asTrouble, StoreTrouble } from './trouble.ts';
import { listName, unpack } from './unpack.ts';
import type { Verdict } from './verify.ts';

/**
 * Writes everything of a folder that cannot be worked out again into one archive (tar, gzip), also while the bot is
 * running, and reads it back: unpacks it elsewhere and verifies that record. Throws StoreTrouble, leaving no archive,
 * where it does not verify. `now` gives the archive's date, in seconds since 1970.
 */
export async function backUp(fs: FsLike, folder: string, archive: string, now: number): Promise<Verdict> {
  if (fs.exists(archive)) throw new StoreTrouble(`${archive} is already there. Give another name.`);
  const work = mkdtempSync(join(tmpdir(), 'scanward-backup-'));
  try {
    const files = filesToKeep(fs, folder, work);
    replaceFile(fs, dirname(archive), archive, zipped(writeTar(withList(files), now)));
    const verdict = await unpack(fs, archive, join(work, 'again'));
    if (verdict.fault === null) return verdict;
    throw new StoreTrouble(`The archive does not verify when it is read back: ${verdict.fault}`);
  } catch (cause) {
    rmSync(archive, { force: true });
    throw asTrouble(`${archive} could not be written`, cause);
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}

/**
 * In this order so that a running bot cannot spoil it: the inbox first (a note still in it is found again in the
 * journal; the other way round it would be lost), then the journal, then what lies beside it (which is written first).
 */
function* filesToKeep(fs: FsLike, folder: string, work: string): Generator<TarFile> {
  const { about, people, texts, transport } = filesOf(folder);
  if (fs.exists(transport)) yield fileAt(fs, copyDatabase(transport, work), basename(transport));
  yield fileAt(fs, about, basename(about));
  for (const month of listMonths(fs, folder)) {
    yield { ...fileAt(fs, month.path, `journal/${basename(month.path)}`), ...wholeLines(fs, month.path) };
  }
  for (const path of [people, texts])
    if (fs.exists(path)) yield { ...fileAt(fs, path, basename(path)), ...wholeLines(fs, path) };
  const aside = asideFolder(folder);
  if (fs.exists(aside))
    for (const name of fs.list(aside)) yield fileAt(fs, join(aside, name), `set-aside/${name}`);
}

/** A database that may be written to meanwhile, as it is at one moment. */
function copyDatabase(path: string, work: string): string {
  const copy = join(work, basename(path));
  const db = lookAtDb(path);
  try {
    db.prepare('VACUUM INTO ?').run(copy);
  } finally {
    db.close();
  }
  return copy;
}

function fileAt(fs: FsLike, path: string, name: string): TarFile {
  const { size } = statSync(path);
  return { name, size, parts: partsOf(fs, path, size) };
}

/** A file that only grows, up to its last line end now. */
function wholeLines(fs: FsLike, path: string): { size: number; parts: Iterable<Uint8Array> } {
  const fd = fs.open(path, 'r');
  try {
    const size = fs.size(fd);
    let from = size;
    let end = -1;
    while (end === -1 && from > 0) {
      from = Math.max(0, from - (1 << 16));
      end = readAt(fs, fd, from, Math.min(1 << 16, size - from)).lastIndexOf(10);
    }
    const whole = end === -1 ? 0 : from + end + 1;
    return { size: whole, parts: partsOf(fs, path, whole) };
  } finally {
    fs.close(fd);
  }
}

function* partsOf(fs: FsLike, path: string, size: number): Generator<Uint8Array> {
  const fd = fs.open(path, 'r');
  try {
    for (let at = 0; at < size; at += 1 << 20) yield readAt(fs, fd, at, Math.min(1 << 20, size - at));
  } finally {
    fs.close(fd);
  }
}

/** The files, and after them a list of their sums, as `sha256sum --check` reads it. */
function* withList(files: Iterable<TarFile>): Generator<TarFile> {
  const sums: string[] = [];
  for (const file of files) {
    const sum = createHash('sha256');
    const parts = function* (): Generator<Uint8Array> {
      for (const part of file.parts) {
        sum.update(part);
        yield part;
      }
    };
    yield { ...file, parts: parts() };
    sums.push(`${sum.digest('hex')}  ${file.name}\n`);
  }
  const list = Buffer.from(sums.join(''));
  yield { name: listName, size: list.length, parts: [list] };
}

/** Parts zipped one by one: gzip allows members in a row (RFC 1952, 2.2), so nothing large is in memory. */
function* zipped(parts: Iterable<Uint8Array>): Generator<Uint8Array> {
  let held: Uint8Array[] = [];
  let size = 0;
  for (const part of parts) {
    held.push(part);
    size += part.length;
    if (size < 1 << 20) continue;
    yield gzipSync(Buffer.concat(held));
    held = [];
    size = 0;
  }
  if (size > 0) yield gzipSync(Buffer.concat(held));
}
