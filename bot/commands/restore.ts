import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { PlainError } from '../plain-error.ts';
import { machineFs } from '../store/fs-port.ts';
import { restore } from '../store/restore.ts';
import type { CommandIo } from './verify.ts';

/**
 * `restore FILE --store FOLDER`: makes a new folder from an archive, checked before it is put in place. Exit code 0;
 * what goes wrong is thrown in plain words and leaves nothing behind.
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    options: { store: { type: 'string' } },
    allowPositionals: true,
  });
  const [archive] = positionals;
  if (archive === undefined || values.store === undefined) {
    throw new PlainError('restore needs an archive and a new folder: restore FILE.tar.gz --store FOLDER');
  }
  const { head } = await restore(machineFs, resolve(archive), values.store);
  io.out(`${values.store}: ${head.n} lines of the record, checked.`);
  io.out(`Head hash: ${head.hash}`);
  io.out('If Scanward still runs on the machine this came from, stop it there before you start it here.');
  return 0;
}
