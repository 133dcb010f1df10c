import type { DatabaseSync } from 'node:sqlite';
import type { Brought } from './listener.ts';

/** Which event was an edit of which note: taking the edit away is no deletion of the note. */
export class Edits {
  readonly #db: DatabaseSync;

  constructor(db: DatabaseSync) {
    this.#db = db;
  }

  keep(edits: Brought['edits']): void {
    const add = this.#db.prepare('INSERT OR IGNORE INTO edit (id, original) VALUES (?, ?)');
    for (const { id, original } of edits) add.run(id, original);
  }

  /** The note that an event was an edit of, or null. */
  originalOf(event: string): string | null {
    const original = this.#db.prepare('SELECT original FROM edit WHERE id = ?').get(event)?.original;
    return typeof original === 'string' ? original : null;
  }
}
