import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { factOf } from '../chat/matrix/matrix-db.ts';
import { asideFolder } from '../store/set-aside.ts';

/** Where what was erased in a folder still is, a line each, for whoever asked for it to be erased. */
export function stillHeld(folder: string): string[] {
  const words = ['Backups made before, and the chat itself, still hold it.'];
  const aside = asideFolder(folder);
  if (existsSync(aside) && readdirSync(aside).length > 0)
    words.push(`So may what an earlier repair put into ${aside}: look, and delete it there.`);
  if (hasLedger(folder))
    words.push(
      'The copy in the ledger room loses it when Scanward is next started on Matrix; the homeserver may keep what was taken out some days longer, as its owner has set it.',
    );
  return words;
}

function hasLedger(folder: string): boolean {
  const path = join(folder, 'matrix.db');
  if (!existsSync(path)) return false;
  const db = new DatabaseSync(path, { readOnly: true, timeout: 1000 });
  try {
    return factOf(db, 'ledger') !== null;
  } catch {
    return false; // of a version that had none
  } finally {
    db.close();
  }
}
