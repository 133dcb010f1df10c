import type { DatabaseSync } from 'node:sqlite';
import { RowDamage } from './row-damage.ts';
import { checked, type Summed } from './rows.ts';

const TABLES: readonly Summed[] = ['row', 'value', 'entry', 'item', 'base'];

/**
 * Holds every row against its sum, and has SQLite look through its trees and indexes: a row that cannot be found any more
 * shows there alone. Some 10 ms a MiB. Throws RowDamage, or what SQLite throws.
 */
export function checkAll(db: DatabaseSync): void {
  for (const table of TABLES)
    for (const row of db.prepare(`SELECT * FROM ${table}`).iterate()) checked(table, row);
  const [found] = db.prepare('PRAGMA integrity_check(1)').all();
  if (found?.integrity_check !== 'ok') throw new RowDamage(String(found?.integrity_check));
}
