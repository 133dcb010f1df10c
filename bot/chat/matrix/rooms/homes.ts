import type { DatabaseSync } from 'node:sqlite';

/**
 * Which chat room stands for which of the practice file. A room that was upgraded has a new id; the record and the
 * practice file keep the old one (its home), and what is said goes to where people are now.
 */
export class RoomHomes {
  readonly #db: DatabaseSync;
  readonly #listed: ReadonlySet<string>;
  readonly #homeOf = new Map<string, string>();
  readonly #nowOf = new Map<string, string>();
  readonly #refused = new Set<string>();
  /** Direct messages: the room, and who asked for it. */
  readonly #private = new Map<string, string>();

  /** `listed`: chat rooms of the practice file; none listed means that any room it is asked into will do. */
  constructor(db: DatabaseSync, listed: readonly string[]) {
    this.#db = db;
    this.#listed = new Set(listed);
    for (const { now, home } of db.prepare('SELECT now, home FROM moved_room ORDER BY rowid').all()) {
      this.#link(String(now), String(home));
    }
    for (const { room, person } of db.prepare('SELECT room, person FROM private_room').all()) {
      this.#private.set(String(room), String(person));
    }
  }

  /** The id under which the practice knows a room, or null for a room that it does not list; a direct message's own. */
  homeOf(room: string): string | null {
    if (this.#private.has(room)) return room;
    const home = this.#homeOf.get(room) ?? room;
    return this.#listed.size === 0 || this.#listed.has(home) ? home : null;
  }

  /** Somebody of the practice file asked the program into a direct message. */
  addPrivate(room: string, person: string): void {
    this.#db.prepare('INSERT OR REPLACE INTO private_room (room, person) VALUES (?, ?)').run(room, person);
    this.#private.set(room, person);
  }

  /** It is none any more. */
  dropPrivate(room: string): void {
    this.#db.prepare('DELETE FROM private_room WHERE room = ?').run(room);
    this.#private.delete(room);
  }

  /** The newest direct message with a person, or null. */
  privateRoomOf(person: string): string | null {
    return [...this.#private].findLast(([, who]) => who === person)?.[0] ?? null;
  }

  isPrivate(room: string): boolean {
    return this.#private.has(room);
  }

  /** Where the people of a room are now. */
  nowOf(home: string): string {
    return this.#nowOf.get(home) ?? home;
  }

  /** Every id that leads to a home, oldest first. */
  idsOf(home: string): readonly string[] {
    return [home, ...[...this.#homeOf].filter(([, of]) => of === home).map(([id]) => id)];
  }

  /** Rooms that took another's place, with the home. */
  moved(): readonly (readonly [room: string, home: string])[] {
    return [...this.#homeOf];
  }

  /** A room was upgraded: `room` takes the place. */
  move(room: string, home: string): void {
    if (this.#homeOf.get(room) === home || room === home) return;
    this.#db.prepare('INSERT OR REPLACE INTO moved_room (now, home) VALUES (?, ?)').run(room, home);
    this.#link(room, home);
  }

  /** A room that claims to take another's place, of which the other knows nothing: it is a room like any other. */
  refuse(room: string): void {
    this.#db.prepare('DELETE FROM moved_room WHERE now = ?').run(room);
    const home = this.#homeOf.get(room);
    this.#homeOf.delete(room);
    this.#refused.add(room);
    if (home !== undefined && this.#nowOf.get(home) === room) this.#nowOf.delete(home);
  }

  refused(room: string): boolean {
    return this.#refused.has(room);
  }

  #link(room: string, home: string): void {
    this.#homeOf.set(room, home);
    this.#nowOf.set(home, room);
  }
}
