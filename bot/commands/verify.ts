import { parseArgs } from 'node:util';
import { isSavedDesk } from '../../core/desk/saved-desk.ts';
import { refoldTo } from '../keeper/refold.ts';
import { PlainError } from '../plain-error.ts';
import { type Expected, expectedIn, type Found } from '../store/expected-hash.ts';
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
 * `verify [--expect [N:]HASH] [--store FOLDER]`: checks the whole record and prints its head hash. Everything that the snapshot holds is
 * worked out again from the journal's first line and held against it, and every row of history.db. `--expect`: whether
 * the record still has a hash that was posted or written down. Exit code: 0, or 1 with the first fault.
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const text = { type: 'string' } as const;
  const { values } = parseArgs({ args, options: { store: text, expect: text } });
  const expected = values.expect === undefined ? undefined : expectedOf(values.expect);
  const folder = recordFolder(values.store);
  const refold = refoldFor(folder);
  const verdict = verifyRecord(folder, { refold: refold ?? undefined, expected });
  if (verdict.fault !== null) {
    io.err(`Not whole: ${verdict.fault}`);
    io.err(`Lines 1 to ${verdict.head.n} stand. "repair" shows what can be done.`);
    return 1;
  }
  for (const line of goodNews(verdict)) io.out(line);
  if (verdict.expected === null) return 0;
  const { what, words } = aboutExpected(verdict.expected, verdict.head.n);
  io[what](words);
  return what === 'out' ? 0 : 1;
}

function expectedOf(text: string): Expected {
  const expected = expectedIn(text);
  if (expected === null)
    throw new PlainError(
      '--expect takes the hash as it was posted or written down, with or without its number: 1234:5f2c… (16 characters of the hash at least).',
    );
  return expected;
}

function aboutExpected({ what, at, hash }: Found, lines: number): { what: 'out' | 'err'; words: string } {
  switch (what) {
    case 'stands':
      return {
        what: 'out',
        words: `Line ${at} has the hash that you gave: no line up to it was changed since.`,
      };
    case 'is another':
      return {
        what: 'err',
        words: `Line ${at} has another hash now: ${hash}. A line up to it was changed since, or the hash is mistyped.`,
      };
    case 'is gone':
      return {
        what: 'err',
        words: `There is no line ${at} any more: the record has ${lines} lines. Lines are gone.`,
      };
    case 'is nowhere':
      return {
        what: 'err',
        words:
          'No line has that hash: a line up to where it was taken was changed since, or the hash is mistyped.',
      };
  }
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
    `Write it down: "npm run verify -- --expect ${head.n}:HASH" shows later whether it still fits.`,
  ];
  const beside = history ? 'The snapshot and every row of history.db were' : 'The snapshot was';
  if (snapshot !== 'none') lines.push(`${beside} held against ${snapshot}.`);
  if (forgotten > 0) lines.push(`${forgotten} names and texts were forgotten, as somebody asked.`);
  return lines;
}
