import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { PlainError } from '../plain-error.ts';
import { backUp } from '../store/backup.ts';
import { machineFs } from '../store/fs-port.ts';
import { recordFolder } from '../store/which-folder.ts';
import type { CommandIo } from './verify.ts';

/**
 * `backup FILE [--store FOLDER]`: writes one archive of the whole record, also while the bot is running, and reads it
 * back. Exit code 0; what goes wrong is thrown in plain words and leaves no archive.
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    options: { store: { type: 'string' } },
    allowPositionals: true,
  });
  const [archive] = positionals;
  if (archive === undefined) throw new PlainError('backup needs the name of the archive: backup FILE.tar.gz');
  const folder = recordFolder(values.store);
  const { head } = await backUp(machineFs, folder, resolve(archive), Math.floor(Date.now() / 1000));
  io.out(`${archive}: ${head.n} lines of the record, read back and checked.`);
  io.out(`Head hash: ${head.hash}`);
  io.out(
    'It holds names and what was typed: keep it as safe as the record. What is forgotten later stays in it.',
  );
  return 0;
}
