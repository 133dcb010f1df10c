import type { DatabaseSync } from 'node:sqlite';
import type { Heard } from '../../../keeper/heard.ts';
import type { Brought, Listener } from './listener.ts';
import type { RawEvent } from './read-event.ts';
import { fields } from './to-heard.ts';

/** A key often comes a moment after its note: only what is locked for longer is spoken of, ms. */
export const PATIENCE_MS = 10_000;

/** Notes whose key has not come: kept over restarts, and read as soon as it does. */
export class LockedNotes {
  readonly #db: DatabaseSync;

  constructor(db: DatabaseSync) {
    this.#db = db;
  }

  keep(locked: Brought['locked'], now: number): void {
    const add = this.#db.prepare(
      'INSERT INTO unread (id, room, seen, event) VALUES (?, ?, ?, ?) ON CONFLICT (id) DO NOTHING',
    );
    for (const { id, room, event } of locked) add.run(id, room, now, JSON.stringify(event));
  }

  get count(): number {
    return Number(this.#db.prepare('SELECT count(*) AS n FROM unread').get()?.n ?? 0);
  }

  /** Tries all again; `taken` keeps what can be read now before it is forgotten here. */
  async retry(listener: Listener, taken: (heard: readonly Heard[]) => void): Promise<void> {
    for (const { id, room, event } of this.#all()) {
      const heard = await listener.retry(room, event);
      if (heard === 'locked') continue;
      if (heard !== null) taken([heard]);
      this.#db.prepare('DELETE FROM unread WHERE id = ?').run(id);
    }
  }

  /** The first note of each room that has been locked for longer than a moment. */
  overdue(now: number): readonly { readonly id: string; readonly room: string; readonly seen: number }[] {
    const first = new Map<string, { id: string; room: string; seen: number }>();
    for (const { id, room, seen } of this.#all()) {
      if (now - seen >= PATIENCE_MS && !first.has(room)) first.set(room, { id, room, seen });
    }
    return [...first.values()];
  }

  #all(): readonly { id: string; room: string; seen: number; event: RawEvent }[] {
    const rows = this.#db.prepare('SELECT id, room, seen, event FROM unread ORDER BY seq').all();
    return rows.map(({ id, room, seen, event }) => ({
      id: String(id),
      room: String(room),
      seen: Number(seen),
      event: fields(JSON.parse(String(event))),
    }));
  }
}
