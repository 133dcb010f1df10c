import { join } from 'node:path';
import { filesOf } from '../folder.ts';
import type { FsLike } from '../fs-port.ts';
import { readFile, replaceFile, syncFolder } from '../fs-whole.ts';
import { hashOfLine } from '../line.ts';
import { journalFolder, listMonths, monthPath } from '../months.ts';
import { openTransport } from '../open-transport.ts';
import { readPerson } from '../people.ts';
import { readLines } from '../read-lines.ts';
import { dropSnapshot, keepBeside } from '../repair.ts';
import { asideFolder } from '../set-aside.ts';
import { readText } from '../texts.ts';
import { bytesOf, monthsOf } from './pieces.ts';
import type { MendPlan } from './plan.ts';

/**
 * Does what was planned. What is changed is first kept as it was in the folder set-aside. Each step lasts before the next;
 * after a crash between two, planning again gives the rest. The folder must be held.
 */
export function doMend(fs: FsLike, folder: string, plan: MendPlan): void {
  const { tables, cutAfter } = plan;
  dropSnapshot(fs, folder);
  if (cutAfter !== null) keepBeside(fs, folder, cutAfter);
  const { people, texts } = filesOf(folder);
  for (const { name, path, put, used, read } of [
    { name: 'people', path: people, put: tables.people, used: tables.used.people, read: personIn },
    { name: 'texts', path: texts, put: tables.texts, used: tables.used.texts, read: textIn },
  ]) {
    if (put.size === 0 && cutAfter === null && !tables.isFaulty) continue;
    keepAsItWas(fs, folder, path, name);
    replaceFile(fs, folder, path, tableParts(fs, path, { put, used, read, cutAfter }));
  }
  if (plan.changesJournal) writeMonths(fs, folder, plan);
  // What only the backup has was answered when it was made: it is not said again.
  const { transport } = openTransport(fs, filesOf(folder).transport, false);
  try {
    transport.enqueue(plan.head.n, []);
  } finally {
    transport.close();
  }
}

function writeMonths(fs: FsLike, folder: string, { pieces, patches }: MendPlan): void {
  const made = monthsOf(pieces);
  const before = listMonths(fs, folder);
  for (const [name, parts] of made) {
    const [only] = parts;
    const path = monthPath(folder, name);
    const isWhole = before.some((month) => month.path === path && only?.from === 0 && only.to === month.size);
    const isPatched = patches.some((patch) => patch.path === path);
    if (parts.length === 1 && only?.path === path && isWhole && !isPatched) continue;
    keepAsItWas(fs, folder, path, name);
    replaceFile(fs, journalFolder(folder), path, bytesOf(parts));
  }
  for (const { name, path } of before) {
    if (made.has(name)) continue;
    keepAsItWas(fs, folder, path, name);
    fs.remove(path);
  }
  syncFolder(fs, journalFolder(folder));
}

/** A copy beside, once: the same bytes give the same name. */
function keepAsItWas(fs: FsLike, folder: string, path: string, name: string): void {
  if (!fs.exists(path)) return;
  const bytes = readFile(fs, path);
  fs.makeFolder(asideFolder(folder));
  const copy = join(asideFolder(folder), `${name}-before-repair-${hashOfLine(bytes).slice(0, 8)}.txt`);
  if (!fs.exists(copy)) replaceFile(fs, asideFolder(folder), copy, [bytes]);
}

interface TableChange {
  readonly put: ReadonlyMap<number, object>;
  readonly used: ReadonlySet<number>;
  readonly read: (line: string) => { n: number; number: number } | null;
  readonly cutAfter: number | null;
}

/** In the order of their numbers; a line that does not read is left out, and so is what only lines speak of that are set aside. */
function* tableParts(
  fs: FsLike,
  path: string,
  { put, used, read, cutAfter }: TableChange,
): Generator<Uint8Array> {
  const waiting = [...put].sort(([one], [other]) => one - other);
  let last = 0;
  for (const { text } of fs.exists(path) ? readLines(fs, path) : []) {
    const entry = read(text);
    if (entry === null || entry.number <= last || put.has(entry.number)) continue;
    if (cutAfter !== null && entry.n > cutAfter && !used.has(entry.number)) continue;
    for (; waiting[0] !== undefined && waiting[0][0] < entry.number; waiting.shift())
      yield lineOf(waiting[0][1]);
    last = entry.number;
    yield Buffer.from(`${text}\n`);
  }
  for (const [, entry] of waiting) yield lineOf(entry);
}

function lineOf(entry: object): Buffer {
  return Buffer.from(`${JSON.stringify(entry)}\n`);
}

function personIn(line: string): { n: number; number: number } | null {
  const person = readPerson(line);
  return person === null ? null : { n: person.n, number: person.p };
}

function textIn(line: string): { n: number; number: number } | null {
  const text = readText(line);
  return text === null ? null : { n: text.n, number: text.k };
}
