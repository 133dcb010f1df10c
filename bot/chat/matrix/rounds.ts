import type { MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import { type Clock, startClock } from '../../clock/clock.ts';
import type { BotParts } from './bot-parts.ts';
import type { Health } from './health/health.ts';
import type { Pulse } from './health/pulse.ts';
import type { Ledger } from './ledger/ledger.ts';
import type { Outbox } from './out/outbox.ts';
import type { Boards } from './rooms/boards.ts';
import { dropOldTimelines } from './rooms/drop-old-timelines.ts';
import type { Rooms } from './rooms/tend.ts';
import type { LockedNotes } from './sync/locked-notes.ts';
import { sayLocked } from './sync/say-locked.ts';

/** How long after notes it is looked at what falls due, ms: by then their answers are with the homeserver. */
const LATER_MS = 20;

/** What is looked after in turn. */
export interface RoundsParts extends Pick<BotParts, 'keeper' | 'store' | 'now' | 'failed'> {
  readonly client: MatrixClient;
  readonly outbox: Outbox;
  readonly rooms: Rooms;
  readonly boards: Boards;
  readonly locked: LockedNotes;
  readonly pulse: Pulse;
  readonly health: Health;
}

/**
 * The order in which things are looked at: answers first, then what falls due, then boards, rooms and the ledger. A failure
 * that nobody can wait out ends the process.
 */
export class Rounds {
  readonly #parts: RoundsParts;
  #clock: Clock | null = null;
  #ledger: Ledger | null = null;
  #due = false;
  #heard = false;
  #later: NodeJS.Timeout | undefined;

  constructor(parts: RoundsParts) {
    this.#parts = parts;
  }

  /** Begins to look by itself: at what falls due, and once a minute. */
  begin(): void {
    const { keeper, now } = this.#parts;
    const round = () => {
      this.work();
      this.#wake();
    };
    this.#clock = startClock(round, () => keeper.next(now()));
  }

  /** The copy of the record is looked after from now on. */
  keepLedger(ledger: Ledger): void {
    this.#ledger = ledger;
  }

  /** Works once the present sync is out of the way, however many came together; `heard`: there is something for the desk. */
  soon(heard: boolean): void {
    this.#heard ||= heard;
    if (this.#due) return;
    this.#due = true;
    setImmediate(() => {
      this.#due = false;
      if (this.#heard) this.work();
      else this.#tend();
      this.#heard = false;
    });
  }

  /** Answers first: they are on their way before anything else is looked at. */
  work(): void {
    const { keeper, now, failed, outbox } = this.#parts;
    try {
      keeper.work(now());
      outbox.kick();
    } catch (error) {
      failed(error);
      return;
    }
    this.#later ??= setTimeout(() => {
      this.#wake();
      this.#clock?.reset();
    }, LATER_MS);
  }

  /** Says what has fallen due, and puts the boards right. */
  #wake(): void {
    const { keeper, now, failed, locked, store, boards, outbox } = this.#parts;
    clearTimeout(this.#later);
    this.#later = undefined;
    try {
      keeper.wake(now());
      sayLocked(locked, store.transport, now());
      boards.look(
        now,
        (at) => keeper.desk.view(at),
        () => outbox.kick(),
      );
    } catch (error) {
      failed(error);
      return;
    }
    this.#tend();
  }

  /** What every sync may have to do with: rooms, the ledger, what is unsent. */
  #tend(): void {
    const { client, outbox, pulse, rooms, health, now, failed } = this.#parts;
    outbox.kick();
    this.#ledger?.look();
    pulse.beat(now());
    dropOldTimelines(client);
    void Promise.all([rooms.look(), health.look()]).then(() => outbox.kick(), failed);
  }
}
