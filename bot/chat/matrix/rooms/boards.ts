import type { DatabaseSync } from 'node:sqlite';
import { board, boardWithout } from '../../../../core/answers/board.ts';
import type { Effect } from '../../../../core/desk/effect.ts';
import type { View } from '../../../../core/rules/matter.ts';
import type { Transport } from '../../../store/transport.ts';
import { factOf, setFact } from '../matrix-db.ts';

/** A board is edited at most this often, in ms: each edit is an event that every phone fetches. */
const LEAST_MS = 20_000;
/** With nothing new it is edited this often, so that its "as of" shows that somebody is there. */
const FRESH_MS = 15 * 60_000;
/** Posted anew for devices that came later at most this often, in ms: each time phones are told that the pin changed. */
const ANEW_MS = 60 * 60_000;

interface Kept {
  /** Number of the post; a new one is begun where the last never went out. */
  readonly number: number;
  readonly text: string;
  readonly at: number;
  /** Where it stands: a room that was upgraded needs a new one. */
  readonly place: string;
  /** Devices that were there when it was posted; left out until that is known. */
  readonly readers?: readonly string[];
  /** When it was last posted anew for a device that came later. */
  readonly anew?: number;
}

/**
 * One pinned post a chat room that shows how things stand, edited in place. It is worked out from the record at each look
 * and is no part of it: the outbox alone has it.
 */
export class Boards {
  readonly #db: DatabaseSync;
  readonly #transport: Transport;
  readonly #rooms: readonly string[];
  readonly #nowOf: (room: string) => string;
  readonly #readersOf: (room: string) => Promise<ReadonlySet<string> | null>;
  #looked = 0;
  #timer: NodeJS.Timeout | undefined;

  constructor(
    db: DatabaseSync,
    transport: Transport,
    rooms: readonly string[],
    nowOf: (room: string) => string,
    readersOf: (room: string) => Promise<ReadonlySet<string> | null>,
  ) {
    this.#nowOf = nowOf;
    this.#readersOf = readersOf;
    this.#db = db;
    this.#transport = transport;
    this.#rooms = rooms;
  }

  /** Puts the boards right, now or as soon as they may be edited again; `changed` is told when there is something to send. */
  look(now: () => number, view: (now: number) => View, changed: () => void): void {
    const at = now();
    const wait = this.#looked + LEAST_MS - at;
    if (wait > 0) {
      this.#timer ??= setTimeout(() => {
        this.#timer = undefined;
        this.look(now, view, changed);
      }, wait);
      return;
    }
    this.#looked = at;
    const present = view(at);
    for (const room of this.#rooms) {
      this.#lookAt(room, present, at);
      void this.#seeReaders(room, present, at).then(changed);
    }
    changed();
  }

  #lookAt(room: string, view: View, at: number): void {
    const text = JSON.stringify(boardWithout(view, room));
    const kept = this.#kept(room);
    const place = this.#nowOf(room);
    if (kept === null || kept.place !== place) {
      this.#begin(room, view, { number: (kept?.number ?? 0) + 1, text, at, place });
      return;
    }
    if (kept.text === text && at - kept.at < FRESH_MS) return;
    const key = keyOf(room, kept.number);
    // Not sent yet: it will be put right when it is there.
    if (this.#transport.unsent().some((row) => row.key === key || row.key.startsWith(`${key}/edit/`))) return;
    if (this.#transport.eventIdOf(key) === null) {
      this.#begin(room, view, { number: kept.number + 1, text, at, place });
      return;
    }
    this.#enqueue({ does: 'edit', key: `${key}/edit/${at}`, room, post: key, message: board(view, room) });
    this.#keep(room, { ...kept, text, at });
  }

  /** A device that came later could never read the post: it stands anew below, and the old one is taken away. */
  async #seeReaders(room: string, view: View, at: number): Promise<void> {
    const sent = this.#kept(room);
    // Whom it went to is known once it is there, from a look of after that.
    if (sent === null || this.#transport.eventIdOf(keyOf(room, sent.number)) === null) return;
    const readers = await this.#readersOf(sent.place);
    const kept = this.#kept(room);
    if (kept === null || readers === null || kept.number !== sent.number) return;
    if (kept.readers === undefined) {
      this.#keep(room, { ...kept, readers: [...readers] });
      return;
    }
    const before = new Set(kept.readers);
    if ([...readers].every((one) => before.has(one)) || at - (kept.anew ?? 0) < ANEW_MS) return;
    const old = keyOf(room, kept.number);
    const text = JSON.stringify(boardWithout(view, room));
    this.#begin(room, view, { number: kept.number + 1, text, at, place: kept.place, anew: at }, old);
  }

  #begin(room: string, view: View, kept: Kept, instead?: string): void {
    const key = keyOf(room, kept.number);
    const message = board(view, room);
    this.#enqueue({ does: 'post', key, room, message, about: 'board', items: [], mentions: [] });
    const place = instead === undefined ? {} : { instead };
    this.#enqueue({ does: 'pin', key: `${key}/pin`, room, post: key, ...place });
    if (instead !== undefined) this.#enqueue({ does: 'redact', key: `${instead}/gone`, room, post: instead });
    this.#keep(room, kept);
  }

  #enqueue(effect: Effect): void {
    this.#transport.enqueue(0, [{ key: effect.key, room: effect.room, body: effect }]);
  }

  #kept(room: string): Kept | null {
    const text = factOf(this.#db, `board/${room}`);
    return text === null ? null : JSON.parse(text);
  }

  #keep(room: string, kept: Kept): void {
    setFact(this.#db, `board/${room}`, JSON.stringify(kept));
  }
}

function keyOf(room: string, number: number): string {
  return `board/${room}/${number}`;
}
