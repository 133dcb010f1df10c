import { parseArgs } from 'node:util';
import { machineFs } from '../store/fs-port.ts';
import { lockFolder } from '../store/lock.ts';
import { doRepair, planRepair } from '../store/repair.ts';
import { plainly } from '../store/trouble.ts';
import { recordFolder } from '../store/which-folder.ts';
import type { CommandIo } from './verify.ts';

/**
 * `repair [--store FOLDER] [--yes]`: says what is wrong with the record and what would be done; does it only with
 * `--yes`. The bot must not be running. Exit code: 0 when the record is whole or was made so, 1 when there is
 * something to do.
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const { values } = parseArgs({ args, options: { store: { type: 'string' }, yes: { type: 'boolean' } } });
  const folder = recordFolder(values.store);
  const lock = lockFolder(folder);
  try {
    const plan = plainly('The record could not be read', () => planRepair(machineFs, folder));
    for (const words of plan.words) io.out(words);
    if (plan.patches.length === 0 && plan.aside === null) {
      io.out(`Nothing to repair: ${plan.head.n} lines, and the chain is whole. "verify" checks the rest.`);
      return 0;
    }
    if (values.yes !== true) {
      io.out('Nothing was changed. Copy the folder somewhere safe, then run "repair --yes" to do it.');
      return 1;
    }
    plainly('The repair stopped', () => doRepair(machineFs, folder, plan));
    io.out(`Done. The record stands with ${plan.head.n} lines. Head hash: ${plan.head.hash}`);
    if (plan.aside !== null)
      io.out('Look through the chat for what was noted after that, and note it again.');
    return 0;
  } finally {
    lock.release();
  }
}
