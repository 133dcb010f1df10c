import { filesOf, makeFolders } from '../../../store/folder.ts';
import { machineFs } from '../../../store/fs-port.ts';
import { replaceFile } from '../../../store/fs-whole.ts';
import { headOf, parseLine } from '../../../store/line.ts';
import { journalFolder, monthPath } from '../../../store/months.ts';
import type { Person } from '../../../store/people.ts';
import type { Text } from '../../../store/texts.ts';
import { valueAt } from '../../../store/unseal.ts';
import type { FoldedLedger } from './fold-ledger.ts';

/**
 * Writes the files of a practice's folder as the ledger has them: the lines by their months, and beside them texts and
 * people. What was taken out of the ledger is written as forgotten.
 */
export function writeFolder(folder: string, { lines, texts, people }: FoldedLedger): void {
  makeFolders(machineFs, folder);
  const write = (path: string, rows: Iterable<string>) => replaceFile(machineFs, folder, path, bytesOf(rows));
  const files = filesOf(folder);
  write(files.about, ['{"folder":1}']);
  const beside = besideOf(lines);
  write(files.people, inOrder(people, beside.people));
  write(files.texts, inOrder(texts, beside.texts));
  for (const [month, rows] of byMonth(lines)) {
    replaceFile(machineFs, journalFolder(folder), monthPath(folder, month), bytesOf(rows));
  }
}

/** By the month in which a line was made; a clock that was set back does not go back to an earlier file. */
function byMonth(lines: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const months = new Map<string, string[]>();
  let present = '';
  for (const text of lines) {
    const month = headOf(text)?.at.slice(0, 7) ?? '';
    if (month > present) present = month;
    const rows = months.get(present);
    if (rows === undefined) months.set(present, [text]);
    else rows.push(text);
  }
  return months;
}

/** What the lines say that stands beside them, as it would be written were it forgotten. */
function besideOf(lines: readonly string[]): { people: Map<number, string>; texts: Map<number, string> } {
  const people = new Map<number, string>();
  const texts = new Map<number, string>();
  for (const text of lines) {
    const line = parseLine(text);
    if (line === null) continue;
    const { n } = line;
    for (const pseudonym of Object.keys(line.people ?? {})) {
      const gone: Person = { p: Number(pseudonym.slice(1)), n, name: null, salt: null };
      people.set(gone.p, JSON.stringify(gone));
    }
    for (const pointer of line.sealed ?? []) {
      const k = valueAt(line.turn, `${pointer}/ref`);
      if (typeof k !== 'number') continue;
      const json = valueAt(line.turn, `${pointer}/json`) === true;
      const gone: Text = { k, n, json, text: null, salt: null };
      texts.set(k, JSON.stringify(gone));
    }
  }
  return { people, texts };
}

/** Those that the lines speak of, each as it is kept, by their numbers. */
function* inOrder(kept: ReadonlyMap<number, string>, meant: ReadonlyMap<number, string>): Generator<string> {
  for (const [number, gone] of [...meant].sort(([a], [b]) => a - b)) yield kept.get(number) ?? gone;
}

function* bytesOf(rows: Iterable<string>): Generator<Uint8Array> {
  for (const row of rows) yield Buffer.from(`${row}\n`);
}
