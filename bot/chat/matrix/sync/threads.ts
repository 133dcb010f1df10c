import type { DatabaseSync } from 'node:sqlite';
import type { RawEvent } from './read-event.ts';
import { fields } from './to-heard.ts';

/** A note in a thread, and the event that the thread hangs on. */
export interface InThread {
  readonly id: string;
  readonly root: string;
}

/** Whether an event is in a thread: its relation stands in clear, in an encrypted room too. */
export function threadOf(event: RawEvent): readonly InThread[] {
  const { rel_type, event_id: root } = fields(fields(event.content)['m.relates_to']);
  return rel_type === 'm.thread' && typeof root === 'string' ? [{ id: String(event.event_id), root }] : [];
}

/** Which notes were typed in a thread: an answer belongs where it was asked for. */
export class Threads {
  readonly #db: DatabaseSync;

  constructor(db: DatabaseSync) {
    this.#db = db;
  }

  keep(threads: readonly InThread[]): void {
    const add = this.#db.prepare('INSERT OR IGNORE INTO thread (id, root) VALUES (?, ?)');
    for (const { id, root } of threads) add.run(id, root);
  }

  /** What the thread of a note hangs on, or null where it stands in the room itself. */
  rootOf(note: string): string | null {
    const root = this.#db.prepare('SELECT root FROM thread WHERE id = ?').get(note)?.root;
    return typeof root === 'string' ? root : null;
  }
}
