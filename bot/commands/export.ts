import { parseArgs } from 'node:util';
import { parsePractice } from '../../core/practice/parse.ts';
import type { Practice } from '../../core/practice/practice.ts';
import { isLocalDate } from '../../core/time/local-date.ts';
import { PlainError } from '../plain-error.ts';
import { csvOf } from '../store/export/csv.ts';
import { practiceIn } from '../store/export/kept-entry.ts';
import { namesIn } from '../store/export/names.ts';
import { rowOf } from '../store/export/row.ts';
import { rowsOf, wantedEntries } from '../store/export/rows.ts';
import { openStore, type Store } from '../store/store.ts';
import { recordFolder } from '../store/which-folder.ts';
import { loadPractice } from './practice-file.ts';
import type { CommandIo } from './verify.ts';

/**
 * `export [--json] [--from DATE] [--to DATE] [--site ID] [--item tip:4] [--store FOLDER] [--practice FILE]`: prints what
 * was recorded, as CSV for a spreadsheet or as JSON lines, also while the bot is running. Times are on each site's
 * clock with its offset, and in UTC. Exit code 0.
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const text = { type: 'string' } as const;
  const { values } = parseArgs({
    args,
    options: {
      store: text,
      practice: text,
      from: text,
      to: text,
      site: text,
      item: text,
      json: { type: 'boolean' },
    },
  });
  const wanted = {
    from: date('--from', values.from),
    to: date('--to', values.to),
    site: values.site ?? null,
    item: values.item?.trim().replace(/\s+/, ':') ?? null,
  };
  const store = openStore(recordFolder(values.store), { readOnly: true });
  try {
    const practice =
      values.practice === undefined ? practiceOf(store) : loadPractice(values.practice).practice;
    if (wanted.site !== null && !practice.sites.some((site) => site.id === wanted.site)) {
      throw new PlainError(
        `There is no site "${wanted.site}". There are: ${practice.sites.map((site) => site.id).join(', ')}.`,
      );
    }
    const names = namesIn(practice);
    const lines = () => store.lines();
    if (values.json === true) {
      for (const { entry, correction } of wantedEntries(lines, wanted, names)) {
        io.out(JSON.stringify({ ...rowOf(entry, correction, names), entry: entry.what }));
      }
      return 0;
    }
    // The line end is in the CSV; the printer adds its own, so only that one is taken off.
    for (const line of csvOf(rowsOf(lines, wanted, names))) io.out(line.replace(/\n$/, ''));
    return 0;
  } finally {
    store.close();
  }
}

function date(option: string, value: string | undefined): string | null {
  if (value === undefined) return null;
  if (isLocalDate(value)) return value;
  throw new PlainError(`${option} wants a date such as 2026-11-23, not "${value}".`);
}

/** The practice as the record has it last. Throws PlainError where it holds none that reads. */
export function practiceOf(store: Store): Practice {
  let file: string | null = null;
  for (const line of store.lines()) file = practiceIn(line) ?? file;
  const parsed = file === null ? null : parsePractice(file);
  if (parsed !== null && 'practice' in parsed) return parsed.practice;
  throw new PlainError('The record holds no practice file that reads. Name one with --practice FILE.');
}
