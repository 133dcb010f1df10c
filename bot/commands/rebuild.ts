import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { Desk } from '../../core/desk/desk.ts';
import { wholeDesk } from '../keeper/open-desk.ts';
import { keepSnapshot } from '../keeper/snapshots.ts';
import { stateHash } from '../keeper/state-hash.ts';
import { PlainError } from '../plain-error.ts';
import { openStore } from '../store/store.ts';
import { recordFolder } from '../store/which-folder.ts';
import { makeFolder } from './make-folder.ts';
import { loadPractice } from './practice-file.ts';
import { Rehearsal } from './rehearse.ts';
import { parseScriptLine } from './script-line.ts';
import type { CommandIo } from './verify.ts';

/**
 * `rebuild [--store FOLDER]`: works the state out from the journal's first line and writes the snapshot anew.
 * `rebuild --from SCRIPT --practice FILE --store FOLDER`: makes the journal itself from the notes of a chat, one JSON
 * object a line as `rehearse` takes them, in a folder that has none. The bot must not be running.
 * `rebuild --room --store FOLDER [--secrets FILE]`: makes the folder from the ledger room, with account and recovery key.
 * Exit code: 0.
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const text = { type: 'string' } as const;
  const options = {
    store: text,
    from: text,
    practice: text,
    secrets: text,
    room: { type: 'boolean' },
  } as const;
  const { values } = parseArgs({ args, options });
  if (values.room === true) {
    if (values.store === undefined || values.from !== undefined)
      throw new PlainError('rebuild --room needs the name of a new folder: --store FOLDER, and no --from');
    // The encryption is loaded only where it is needed.
    const { rebuildFromRoom } = await import('./rebuild-room.ts');
    return rebuildFromRoom({ folder: values.store, secrets: values.secrets }, io);
  }
  if (values.from === undefined) return snapshotAnew(recordFolder(values.store), io);
  if (values.practice === undefined || values.store === undefined)
    throw new PlainError('rebuild --from SCRIPT needs --practice FILE and a new folder: --store FOLDER');
  const { practice, store } = values;
  return journalAnew({ script: values.from, practice: loadPractice(practice).text, folder: store }, io);
}

function snapshotAnew(folder: string, io: CommandIo): number {
  const store = openStore(folder);
  try {
    if (store.readOnly !== null) throw new PlainError(store.readOnly);
    store.history.clear();
    const desk = wholeDesk(store.lines(), () => new Desk(undefined, { archive: store.history }));
    keepSnapshot(store, desk);
    io.out(
      `${store.head.n} lines were read from the first one. The snapshot is what they give; nothing else was changed.`,
    );
    io.out(`Head hash: ${store.head.hash}`);
    io.out(`State hash: ${stateHash(desk)}`);
    return 0;
  } finally {
    store.close();
  }
}

interface FromChat {
  readonly script: string;
  readonly practice: string;
  readonly folder: string;
}

async function journalAnew({ script, practice, folder }: FromChat, io: CommandIo): Promise<number> {
  makeFolder(resolve(folder));
  mustBeEmpty(resolve(folder));
  const lines = scriptText(script)
    .split('\n')
    .flatMap((line, index) => (line.trim() === '' ? [] : [parseScriptLine(line, index + 1)]));
  // What it would have said then was said, or is of no use now: nothing of it goes out.
  const rehearsal = new Rehearsal(resolve(folder), practice, () => undefined);
  try {
    for (const line of lines) if (!('end' in line)) await rehearsal.play(line);
  } finally {
    rehearsal.close();
  }
  const store = openStore(resolve(folder), { readOnly: true });
  const { n, hash } = store.head;
  store.close();
  io.out(`${lines.length} lines of the script gave ${n} lines of the record. Head hash: ${hash}`);
  io.out(
    'They were read by this version, and nothing was posted. Look through what is due before you go on.',
  );
  return 0;
}

function mustBeEmpty(folder: string): void {
  const store = openStore(folder);
  const { n } = store.head;
  store.close();
  if (n > 0)
    throw new PlainError(`${folder} holds a record of ${n} lines already. Give the name of a new folder.`);
}

function scriptText(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    throw new PlainError(`${path} could not be read: ${error instanceof Error ? error.message : error}`);
  }
}
