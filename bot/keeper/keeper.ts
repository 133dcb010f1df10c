import { Desk } from '../../core/desk/desk.ts';
import type { Effect } from '../../core/desk/effect.ts';
import type { Turn } from '../../core/desk/turn.ts';
import type { Archive } from '../../core/record/archive.ts';
import { fromIso, HOUR, toIso } from '../../core/time/instant.ts';
import type { Chat } from '../chat/chat.ts';
import type { Store } from '../store/store.ts';
import { isTrouble } from '../store/trouble.ts';
import { ClockWatch } from './clock-watch.ts';
import { headPosts, nextHeadPost } from './head-posts.ts';
import type { Heard } from './heard.ts';
import { type MakeDesk, openDesk, turnOf } from './open-desk.ts';
import { type Kept, Snapshots } from './snapshots.ts';
import { toInput } from './to-input.ts';
import { Unwritten } from './unwritten.ts';

/** A note that makes the reader fail is tried this often, then set aside and said so: never a crash loop. */
const TRIES = 3;
/** What is heard so late may be told again by a chat whose inbox was lost: the whole record is asked whether it has it. */
const LATE_MS = 24 * HOUR;

export interface KeeperOptions {
  /** Milliseconds since some start that nobody sets; without it the clock is taken as it is, as in a rehearsal. */
  readonly count?: () => number;
  readonly makeDesk?: MakeDesk;
  /** A snapshot after so many turns. */
  readonly snapshotEvery?: number;
  /** Where to say, once, what happens to the program while it runs: for the owner of the machine. */
  readonly say?: (notice: string) => void;
}

/**
 * The one way through: inbox → desk → journal (synced) → outbox → chat. A note leaves the inbox only when its turn is in
 * the journal, and nothing is said before that; so a crash at any point loses nothing and says nothing twice. While
 * nothing can be written, notes wait, the chat rooms are told once, and questions are still answered.
 */
export class Keeper {
  readonly #store: Store;
  readonly #makeDesk: MakeDesk;
  readonly #count: (() => number) | null;
  readonly #say: (notice: string) => void;
  readonly #said = new Set<string>();
  readonly #watch: ClockWatch;
  readonly #unwritten: Unwritten;
  readonly #snapshots: Snapshots;
  #desk: Desk;
  /** What happened at the start, for the owner of the machine; to be said once. */
  readonly notices: readonly string[];
  /** The disk would not: the outbox may lack what the journal has. */
  #stumbled = false;

  constructor(store: Store, { count, makeDesk = deskOn, snapshotEvery, say }: KeeperOptions = {}) {
    this.#store = store;
    this.#makeDesk = makeDesk;
    this.#count = count ?? null;
    this.#say = say ?? (() => undefined);
    this.#unwritten = new Unwritten(store);
    const { desk, notice } = openDesk(store, makeDesk);
    this.#desk = desk;
    this.notices = notice === null ? [] : [notice];
    const saved = notice === null ? (store.snapshot()?.n ?? 0) : 0;
    this.#snapshots = new Snapshots(store, saved, snapshotEvery);
    const last = count === undefined ? null : store.line(store.head.n);
    this.#watch = new ClockWatch(last === null ? null : fromIso(last.at));
    if (store.readOnly !== null) return;
    this.#enqueueWhatACrashLeft();
    this.#ifSpent(this.#snapshots.afterTurn(this.#desk));
  }

  /** Takes the practice file into the record where it differs from the one in force; not while nothing can be written. */
  settle(practiceText: string, now: number): void {
    if (this.#store.readOnly !== null) return;
    const turn = this.#desk.settings(practiceText, now);
    if (turn !== null) this.#keep(turn, now);
  }

  /** Keeps what was heard before anything else happens to it; an event heard before changes nothing. */
  receive(heard: readonly Heard[], position?: string): void {
    const rows = heard.map((one) => ({ id: one.id, room: one.room, at: toIso(one.at), body: one }));
    this.#store.transport.receive(rows, position);
    this.#unwritten.heard(heard);
  }

  /** Works through the inbox, oldest first. */
  work(now: number): void {
    const { transport } = this.#store;
    this.#unlessUnwritten(now, () => {
      for (let row = transport.next(); row !== null; row = transport.next()) {
        // The inbox holds what was heard, as it came.
        const heard = row.body as Heard;
        if (this.#isKept(heard, now)) transport.done(row.id);
        else this.#turn(heard, now);
      }
    });
  }

  /** Says what has fallen due; writes a snapshot once a night. */
  wake(now: number): void {
    this.#unlessUnwritten(now, () => {
      if (this.#isHeld(now)) return;
      const turn = this.#desk.tick(now);
      if (turn !== null) this.#keep(turn, now);
      this.#postHeads(now);
      this.#ifSpent(this.#snapshots.nightly(this.#desk, now));
    });
  }

  /** The next instant after `after` at which something may fall due. */
  next(after: number): number | null {
    if (this.#store.readOnly !== null) return null;
    try {
      return this.#next(after);
    } catch (error) {
      if (!isTrouble(error)) throw error;
      this.#reopen();
      return this.#next(after);
    }
  }

  #next(after: number): number | null {
    const times = [
      this.#desk.next(after),
      this.#desk.turns === 0 ? null : nextHeadPost(this.#desk.view(after)),
    ];
    const next = Math.min(...times.flatMap((at) => at ?? []));
    return Number.isFinite(next) ? next : null;
  }

  /** No line of the journal has these: a key that was in the outbox before changes nothing. */
  #postHeads(now: number): void {
    if (this.#desk.turns === 0) return;
    const { transport, head } = this.#store;
    const posts = headPosts(this.#desk.view(now), head);
    if (posts.length > 0) transport.enqueue(transport.enqueuedThrough(), posts.map(toRow));
  }

  /** What the desk knows, for commands that show it. */
  get desk(): Desk {
    return this.#desk;
  }

  /** Hands everything unsent to the chat, in order; stops at the first that does not go out, to try again later. */
  async send(chat: Chat): Promise<void> {
    const { transport } = this.#store;
    for (const row of transport.unsent()) {
      const eventId = await chat.deliver(row.body as Effect, transport);
      transport.sent(row.key, eventId);
    }
  }

  /** Writes a snapshot for the next start. The store stays open: it is its opener's to close. */
  close(): void {
    this.#snapshots.save(this.#desk);
  }

  /**
   * Nothing is tried while the store is read-only; where the disk will not, what was half done in memory is given up, and
   * it is tried twice more before anybody is told: by then a damaged history is mended, or is in memory.
   */
  #unlessUnwritten(now: number, work: () => void, more = 2): void {
    const why = this.#store.readOnly;
    if (why !== null) {
      this.#unwritten.say(this.#desk, why, now);
      return;
    }
    try {
      if (this.#stumbled) this.#enqueueWhatACrashLeft();
      this.#stumbled = false;
      work();
      this.#unwritten.over();
    } catch (error) {
      if (!isTrouble(error)) throw error;
      this.#stumbled = true;
      this.#reopen();
      if (more === 0) this.#unwritten.say(this.#desk, error.message, now);
      else this.#unlessUnwritten(now, work, more - 1);
    }
  }

  /** What the journal says is the truth; why anything beside it was thrown away is said once. */
  #reopen(): void {
    const { desk, notice } = openDesk(this.#store, this.#makeDesk);
    this.#desk = desk;
    if (notice === null || this.#said.has(notice)) return;
    this.#said.add(notice);
    this.#say(notice);
  }

  #ifSpent(kept: Kept): void {
    if (kept === 'desk is spent') this.#reopen();
  }

  /** In the record already: a crash fell between journal and inbox, or a chat tells old things again. */
  #isKept({ id, at }: Heard, now: number): boolean {
    return this.#desk.knows(id) || (now - at > LATE_MS && this.#store.lineOfEvent(id) !== null);
  }

  /** Deals with one thing heard, or counts a failed try: it then stands in the inbox as before. */
  #turn(heard: Heard, now: number): void {
    const { transport } = this.#store;
    const input = toInput(
      heard,
      now,
      (id) => transport.keyOf(id),
      (id) => instantOrNull(transport.heardAt(id)),
    );
    try {
      const turn = this.#desk.take(input, now);
      if (turn === null) transport.done(heard.id);
      else this.#keep(turn, now, () => transport.done(heard.id));
    } catch (error) {
      if (!(error instanceof Error) || isTrouble(error)) throw error;
      // The desk may be half way through the note.
      this.#reopen();
      if (transport.tried(heard.id) < TRIES) return;
      const turn = this.#desk.setAside(heard.id, heard.room, error.message, now);
      this.#keep(turn, now, () => transport.setAside(heard.id, error.message));
    }
  }

  /** The clock was set back and is not believed yet. A jump is noted in the record. */
  #isHeld(now: number): boolean {
    if (this.#count === null) return false;
    const { hold, jumpedFrom } = this.#watch.look(now, this.#count());
    if (jumpedFrom !== null) this.#keep(this.#desk.clockJumped(jumpedFrom, now), now);
    return hold;
  }

  /** Journal first; then what is to be said and what becomes of the note (`dealtWith`), in one transaction. */
  #keep(turn: Turn, now: number, dealtWith: () => void = () => undefined): void {
    const { transport } = this.#store;
    const [line] = this.#store.append([{ at: toIso(now), turn }]);
    if (line === undefined) return;
    transport.together(() => {
      transport.enqueue(line.n, turn.effects.map(toRow));
      dealtWith();
    });
    this.#ifSpent(this.#snapshots.afterTurn(this.#desk));
  }

  #enqueueWhatACrashLeft(): void {
    const { transport } = this.#store;
    for (const line of this.#store.lines(transport.enqueuedThrough())) {
      transport.enqueue(line.n, turnOf(line).effects.map(toRow));
    }
  }
}

function deskOn(archive: Archive): Desk {
  return new Desk(undefined, { archive });
}

function toRow(effect: Effect) {
  return { key: effect.key, room: effect.room, body: effect };
}

function instantOrNull(iso: string | null): number | null {
  return iso === null ? null : fromIso(iso);
}
