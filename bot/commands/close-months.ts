import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { PlainError } from '../plain-error.ts';
import { csvOf } from '../store/export/csv.ts';
import { namesIn } from '../store/export/names.ts';
import { rowsOf } from '../store/export/rows.ts';
import { machineFs } from '../store/fs-port.ts';
import { readFile, replaceFile } from '../store/fs-whole.ts';
import { openStore, type Store } from '../store/store.ts';
import { plainly } from '../store/trouble.ts';
import { recordFolder } from '../store/which-folder.ts';
import { practiceOf } from './export.ts';
import { stillHeld } from './still-held.ts';
import type { CommandIo } from './verify.ts';

const everything = { from: null, to: null, site: null, item: null };

/**
 * `close-months --before 2019-01 --to FILE.csv [--store FOLDER] [--yes]`: exports the months before that one to a file,
 * reads it back, then erases what was typed in them and the names of people who are named no more. Without `--yes` it
 * only says how much there is. The bot must not be running. Exit code: 0, or 1 when nothing was done.
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const text = { type: 'string' } as const;
  const { values } = parseArgs({
    args,
    options: { before: text, to: text, store: text, yes: { type: 'boolean' } },
  });
  const { before, to } = values;
  if (before === undefined || to === undefined || !/^\d{4}-(?:0[1-9]|1[0-2])$/.test(before)) {
    throw new PlainError(
      'close-months needs a month and a file: close-months --before 2019-01 --to FILE.csv',
    );
  }
  // What is typed this month is still worked with, and so are the names in it.
  const month = new Date().toISOString().slice(0, 7);
  if (before > month) throw new PlainError(`${month} is not over yet: close months up to --before ${month}.`);
  const store = openStore(recordFolder(values.store));
  try {
    const rows = [...csvOf(rowsOf(() => linesBefore(store, before), everything, namesIn(practiceOf(store))))];
    if (rows.length === 1) io.out(`Nothing was recorded before ${before}.`);
    else if (values.yes === true) return closeNow(store, before, to, rows, io);
    else io.out(`${rows.length - 1} entries before ${before}. Nothing was changed: run it again with --yes.`);
    return 1;
  } finally {
    store.close();
  }
}

function* linesBefore(store: Store, month: string): Generator<ReturnType<Store['append']>[number]> {
  const last = store.lastBefore(month);
  for (const line of store.lines()) {
    if (line.n > last) return;
    yield line;
  }
}

function closeNow(store: Store, before: string, to: string, rows: readonly string[], io: CommandIo): number {
  const file = resolve(to);
  if (machineFs.exists(file)) throw new PlainError(`${to} is already there. Give another name.`);
  const bytes = Buffer.from(rows.join(''));
  plainly(`${to} could not be written`, () => replaceFile(machineFs, resolve(file, '..'), file, [bytes]));
  if (!readFile(machineFs, file).equals(bytes)) throw new PlainError(`${to} does not read back as written.`);
  io.out(`${to}: ${rows.length - 1} entries, written and read back. Keep it safe.`);
  const { through, texts, people } = store.closeMonths(before);
  io.out(`Lines 1 to ${through} are closed: ${texts} texts and ${people} names were erased.`);
  io.out('The lines stay, with pseudonyms, and the record still verifies.');
  for (const line of stillHeld(store.folder)) io.out(line);
  return 0;
}
