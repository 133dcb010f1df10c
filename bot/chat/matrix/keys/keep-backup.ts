import type { DatabaseSync } from 'node:sqlite';
import type { MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import { setFact } from '../matrix-db.ts';
import { newRecoveryKey, useBackup, type Vault } from './key-backup.ts';

/** What the backup of the keys works with. */
export interface BackupParts {
  readonly db: DatabaseSync;
  readonly vault: Vault;
  readonly say: (line: string) => void;
  /** Makes a new recovery key and shows it, once, by this; null where none is asked for. */
  readonly showRecoveryKey: ((key: string) => void) | null;
}

/**
 * Sees to it that the keys are backed up: without that a lost folder takes the keys of the rooms with it. Gives the
 * version of the backup, or null where there is none, which is told.
 */
export async function keepBackup(
  { db, vault, say, showRecoveryKey }: BackupParts,
  client: MatrixClient,
): Promise<string | null> {
  try {
    if (showRecoveryKey !== null) showRecoveryKey(await newRecoveryKey(client, vault));
    const { version, restored } = await useBackup(client, vault);
    if (restored > 0) say(`${restored} keys of what was said before came back.`);
    if (version === null) db.exec("DELETE FROM fact WHERE name = 'backup'");
    else setFact(db, 'backup', `version ${version}`);
    if (version === null)
      say('The keys are not backed up. Start once with --new-recovery-key, in a terminal.');
    return version;
  } catch (error) {
    say(`The keys could not be backed up: ${error instanceof Error ? error.message : String(error)}`);
    return null;
  }
}
