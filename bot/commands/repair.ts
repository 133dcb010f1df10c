import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { PlainError } from '../plain-error.ts';
import { machineFs } from '../store/fs-port.ts';
import { lockFolder } from '../store/lock.ts';
import { doMend } from '../store/mend/do.ts';
import { planMend } from '../store/mend/plan.ts';
import { doRepair, planRepair } from '../store/repair.ts';
import { plainly, StoreTrouble } from '../store/trouble.ts';
import { unpack } from '../store/unpack.ts';
import { type Verdict, verifyRecord } from '../store/verify.ts';
import { isRecord, recordFolder } from '../store/which-folder.ts';
import type { CommandIo } from './verify.ts';

const NOTHING_DONE =
  'Nothing was changed. Copy the folder somewhere safe, then run it again with --yes to do it.';

/**
 * `repair [--from BACKUP] [--store FOLDER] [--yes]`: says what is wrong with the record and what would be done; does it only
 * with `--yes`. `--from`: an archive of `backup`, or a copy of the folder, to take from it what is damaged or missing here.
 * The bot must not be running. Exit code: 0 when the record is whole or was made so, 1 when there is something to do.
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const text = { type: 'string' } as const;
  const { values } = parseArgs({ args, options: { store: text, from: text, yes: { type: 'boolean' } } });
  const folder = recordFolder(values.store);
  const lock = lockFolder(folder);
  try {
    const isMeant = values.yes === true;
    if (values.from === undefined) return repairAlone(folder, isMeant, io);
    return await withBackup(resolve(values.from), async (backup, of) =>
      repairFrom({ folder, backup, of, isMeant }, io),
    );
  } finally {
    lock.release();
  }
}

function repairAlone(folder: string, isMeant: boolean, io: CommandIo): number {
  const plan = plainly('The record could not be read', () => planRepair(machineFs, folder));
  for (const words of plan.words) io.out(words);
  if (plan.patches.length === 0 && plan.aside === null) {
    io.out(`Nothing to repair: ${plan.head.n} lines, and the chain is whole. "verify" checks the rest.`);
    return 0;
  }
  if (plan.aside !== null)
    io.out('With a backup more may be saved: "repair --from BACKUP" says what, and changes nothing either.');
  if (!isMeant) {
    io.out(NOTHING_DONE);
    return 1;
  }
  plainly('The repair stopped', () => doRepair(machineFs, folder, plan));
  io.out(`Done. The record stands with ${plan.head.n} lines. Head hash: ${plan.head.hash}`);
  if (plan.aside !== null) io.out('Look through the chat for what was noted after that, and note it again.');
  return 0;
}

interface FromBackup {
  readonly folder: string;
  readonly backup: string;
  readonly of: Verdict;
  readonly isMeant: boolean;
}

function repairFrom({ folder, backup, of, isMeant }: FromBackup, io: CommandIo): number {
  io.out(`The backup is whole: ${of.head.n} lines.`);
  const plan = plainly('The record could not be read', () => planMend(machineFs, folder, backup));
  for (const words of plan.words) io.out(words);
  const { people, texts, isFaulty } = plan.tables;
  if (!plan.changesJournal && !isFaulty && people.size + texts.size === 0) {
    io.out(
      `Nothing to take from it: ${plan.head.n} lines here, and the chain is whole. "verify" checks the rest.`,
    );
    return 0;
  }
  if (!isMeant) {
    io.out(`The record would stand with ${plan.head.n} lines. ${NOTHING_DONE}`);
    return 1;
  }
  plainly('The repair stopped', () => doMend(machineFs, folder, plan));
  io.out(`Done. The record stands with ${plan.head.n} lines. Head hash: ${plan.head.hash}`);
  io.out('What was changed is kept as it was in the folder set-aside. "verify" checks the whole.');
  if (plan.cutAfter !== null)
    io.out('Look through the chat for what was noted after that, and note it again.');
  return 0;
}

/** Works with a backup that is whole: an archive, unpacked for the while, or a folder. */
async function withBackup<T>(
  path: string,
  work: (folder: string, of: Verdict) => T | Promise<T>,
): Promise<T> {
  if (statSync(path, { throwIfNoEntry: false })?.isDirectory() === true) {
    if (!isRecord(path))
      throw new PlainError(
        `There is no record in ${path}: name an archive of "backup", or a copy of the folder.`,
      );
    return work(path, whole(verifyRecord(path)));
  }
  const draft = mkdtempSync(join(tmpdir(), 'scanward-repair-'));
  try {
    const folder = join(draft, 'backup');
    return await work(folder, whole(await unpack(machineFs, path, folder)));
  } finally {
    rmSync(draft, { recursive: true, force: true });
  }
}

/** A snapshot that does not fit is nothing that is taken from a backup. */
function whole(verdict: Verdict): Verdict {
  if (verdict.fault !== null && !verdict.fault.startsWith('snapshot.json'))
    throw new StoreTrouble(`The backup is not whole itself: ${verdict.fault}`);
  return verdict;
}
