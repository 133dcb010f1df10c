import type { DatabaseSync } from 'node:sqlite';
import { sqliteTrouble } from './trouble.ts';

/** A note, reaction or the like as it came from the chat. */
interface Incoming {
  id: string;
  room: string;
  at: string;
  body: unknown;
}

/** Something to be done in the chat; `key` is derived from what caused it. */
interface Effect {
  key: string;
  room: string;
  body: unknown;
}

/** What belongs to the chat: what came in, how far the chat was read, what is to go out. */
export interface Transport {
  /** Keeps events and the sync position in one transaction; an id seen before, ever, changes nothing. */
  receive(events: readonly Incoming[], position?: string): void;
  /** The oldest that is neither done nor set aside. */
  next(): (Incoming & { tries: number }) | null;
  /** Counts a failed try; returns the tries so far. */
  tried(id: string): number;
  setAside(id: string, why: string): void;
  /** What was set aside, with why, oldest first. */
  asideList(): readonly { id: string; room: string; at: string; why: string }[];
  done(id: string): void;
  /** How far the chat was read, or null at the start. */
  position(): string | null;
  /** Puts effects of a turn in the outbox; a key seen before changes nothing. Remembers the highest turn. */
  enqueue(turn: number, effects: readonly Effect[]): void;
  /** The highest turn whose effects are in the outbox; 0 at the start. */
  enqueuedThrough(): number;
  /** What is still to go out, in order. */
  unsent(): readonly Effect[];
  sent(key: string, eventId: string | null): void;
  /** The chat's id of a post of ours, or null. */
  eventIdOf(key: string): string | null;
  /** When an event was typed, as its chat said; null where it was never received. */
  heardAt(eventId: string): string | null;
  /** Which of our own posts an event is, or null. */
  keyOf(eventId: string): string | null;
  /** Runs several calls as one transaction: all of them last, or none. */
  together<T>(work: () => T): T;
  /** The journal was found to end at line `n`: turns after it count as not enqueued. */
  endsAt(n: number): void;
  close(): void;
}

type Row = Record<string, unknown>;

/** Transport on an open database (see transport-schema.ts). Disk trouble comes out as StoreTrouble. */
export function transportOn(db: DatabaseSync): Transport {
  const get = (sql: string): ((...values: (string | number | null)[]) => Row | undefined) => {
    const statement = db.prepare(sql);
    return (...values) => statement.get(...values);
  };
  const receiveOne = db.prepare(
    'INSERT INTO inbox (id, room, at, body) VALUES (?, ?, ?, ?) ON CONFLICT (id) DO NOTHING',
  );
  const enqueueOne = db.prepare(
    'INSERT INTO outbox (key, turn, room, body) VALUES (?, ?, ?, ?) ON CONFLICT (key) DO NOTHING',
  );
  const setFact = db.prepare(
    'INSERT INTO fact (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value',
  );
  const nextOne = get(
    "SELECT id, room, at, body, tries FROM inbox WHERE state = 'open' ORDER BY seq LIMIT 1",
  );
  const triedOne = get('UPDATE inbox SET tries = tries + 1 WHERE id = ? RETURNING tries');
  const aside = db.prepare("UPDATE inbox SET state = 'aside', why = ? WHERE id = ?");
  const asideAll = db.prepare("SELECT id, room, at, why FROM inbox WHERE state = 'aside' ORDER BY seq");
  const doneOne = db.prepare("UPDATE inbox SET state = 'done', body = NULL WHERE id = ?");
  const factOf = get('SELECT value FROM fact WHERE name = ?');
  const unsentAll = db.prepare('SELECT key, room, body FROM outbox WHERE body IS NOT NULL ORDER BY seq');
  const sentOne = db.prepare('UPDATE outbox SET body = NULL, event = ? WHERE key = ?');
  const eventOf = get('SELECT event FROM outbox WHERE key = ?');
  const heardOf = get('SELECT at FROM inbox WHERE id = ?');
  const keyOf = get('SELECT key FROM outbox WHERE event = ?');

  let depth = 0;
  const together = <T>(work: () => T): T => {
    if (depth > 0) return work();
    depth++;
    try {
      db.exec('BEGIN IMMEDIATE');
      const result = work();
      db.exec('COMMIT');
      return result;
    } catch (cause) {
      if (db.isTransaction) db.exec('ROLLBACK');
      throw sqliteTrouble('What came from the chat could not be kept', cause);
    } finally {
      depth--;
    }
  };
  const enqueuedThrough = (): number => Number(factOf('enqueued')?.value ?? 0);

  return {
    receive: (events, position) =>
      together(() => {
        for (const each of events) receiveOne.run(each.id, each.room, each.at, asText(each.body));
        if (position !== undefined) setFact.run('position', position);
      }),
    next: () => {
      const row = nextOne();
      return row === undefined ? null : { ...incomingOf(row), tries: Number(row.tries) };
    },
    tried: (id) => together(() => Number(triedOne(id)?.tries ?? 0)),
    setAside: (id, why) => together(() => void aside.run(why, id)),
    asideList: () =>
      asideAll.all().map((row) => ({
        id: str(row, 'id'),
        room: str(row, 'room'),
        at: str(row, 'at'),
        why: str(row, 'why'),
      })),
    done: (id) => together(() => void doneOne.run(id)),
    position: () => nullable(factOf('position'), 'value'),
    enqueue: (turn, effects) =>
      together(() => {
        for (const each of effects) enqueueOne.run(each.key, turn, each.room, asText(each.body));
        if (turn > enqueuedThrough()) setFact.run('enqueued', String(turn));
      }),
    enqueuedThrough,
    unsent: () =>
      unsentAll.all().map((row) => ({ key: str(row, 'key'), room: str(row, 'room'), body: bodyOf(row) })),
    sent: (key, eventId) => together(() => void sentOne.run(eventId, key)),
    eventIdOf: (key) => nullable(eventOf(key), 'event'),
    heardAt: (eventId) => nullable(heardOf(eventId), 'at'),
    keyOf: (eventId) => nullable(keyOf(eventId), 'key'),
    together,
    endsAt: (n) => {
      if (enqueuedThrough() > n) together(() => void setFact.run('enqueued', String(n)));
    },
    close: () => db.close(),
  };
}

function asText(body: unknown): string {
  return JSON.stringify(body ?? null);
}

function incomingOf(row: Row): Incoming {
  return { id: str(row, 'id'), room: str(row, 'room'), at: str(row, 'at'), body: bodyOf(row) };
}

function bodyOf(row: Row): unknown {
  return JSON.parse(nullable(row, 'body') ?? 'null');
}

function str(row: Row, column: string): string {
  return nullable(row, column) ?? '';
}

function nullable(row: Row | undefined, column: string): string | null {
  const value = row?.[column];
  return typeof value === 'string' ? value : null;
}
