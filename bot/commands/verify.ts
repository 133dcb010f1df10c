import { parseArgs } from 'node:util';
import { isSavedDesk } from '../../core/desk/saved-desk.ts';
import { refoldTo } from '../keeper/refold.ts';
import type { Refold } from '../store/refold-check.ts';
import { openStore } from '../store/store.ts';
import { type Verdict, verifyRecord } from '../store/verify.ts';
import { recordFolder } from '../store/which-folder.ts';

/** What a command prints to. */
export interface CommandIo {
  readonly out: (line: string) => void;
  readonly err: (line: string) => void;
}

/**
 * `verify [--store FOLDER]`: checks the whole record and prints its head hash. Everything that the snapshot holds is
 * worked out again from the journal's first line and held against it, and every row of history.db. Exit code: 0, or 1 with the first fault.
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const { values } = parseArgs({ args, options: { store: { type: 'string' } } });
  const folder = recordFolder(values.store);
  const refold = refoldFor(folder);
  const verdict = verifyRecord(folder, refold === null ? {} : { refold });
  if (verdict.fault !== null) {
    io.err(`Not whole: ${verdict.fault}`);
    io.err(`Lines 1 to ${verdict.head.n} stand. "repair" shows what can be done.`);
    return 1;
  }
  for (const line of goodNews(verdict)) io.out(line);
  return 0;
}

/** More entries in memory than a running desk keeps, so that the fold never goes past the snapshot's place before it is cut there. */
const BEHIND = { keep: 8_000, most: 16_000 };

/** `null` where there is no snapshot that this version would start from. */
function refoldFor(folder: string): Refold | null {
  const store = openStore(folder, { readOnly: true });
  try {
    const value = store.snapshot()?.value;
    if (!isSavedDesk(value)) return null;
    return refoldTo(value, BEHIND);
  } finally {
    store.close();
  }
}

function goodNews({ head, months, forgotten, snapshot, history }: Verdict): string[] {
  const lines = [
    `The record is whole: ${head.n} lines in ${months} monthly ${months === 1 ? 'file' : 'files'}.`,
    `Head hash: ${head.hash}`,
    'Write it down or post it: if the record is changed later, this hash no longer fits.',
  ];
  const beside = history ? 'The snapshot and every row of history.db were' : 'The snapshot was';
  if (snapshot !== 'none') lines.push(`${beside} held against ${snapshot}.`);
  if (forgotten > 0) lines.push(`${forgotten} names and texts were forgotten, as somebody asked.`);
  return lines;
}
