const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

/** Clocks that are put right over the network step back by less than this. */
const BACK_MS = MINUTE;
/** A step forward of less than this is a nap of the machine; reminders then come late by themselves. */
const FORWARD_MS = 6 * HOUR;
/** A clock that was set back is believed once it has run so long, or has passed the last instant of the record. */
const BELIEVED_AFTER_MS = 10 * MINUTE;

/** What a look at the clock found. */
export interface ClockLook {
  /** The clock is not believed yet: nothing may fall due by it. */
  readonly hold: boolean;
  /** It jumped just now: where it would have stood. To be noted in the record. */
  readonly jumpedFrom: number | null;
}

/**
 * Watches the clock of the machine for jumps: against a count of milliseconds that nobody sets, and at the start against
 * the last instant of the record. It knows no clock itself; both are arguments.
 */
export class ClockWatch {
  #before: { readonly now: number; readonly count: number } | null = null;
  /** Set back at that count; believed again from that instant on at the latest. */
  #back: { readonly at: number; readonly until: number } | null = null;
  readonly #last: number | null;

  /** `last`: the last instant of the record, `null` where there is none. */
  constructor(last: number | null) {
    this.#last = last;
  }

  /** `now`: what the clock says; `count`: milliseconds since some start, never set. */
  look(now: number, count: number): ClockLook {
    const before = this.#before;
    const expected = before === null ? this.#last : before.now + (count - before.count);
    const back = expected !== null && now < expected - BACK_MS;
    // The program may have been away for any time: only a running one can tell a step forward.
    const forward = before !== null && expected !== null && now > expected + FORWARD_MS;
    if (back) this.#back = { at: count, until: Math.max(expected, this.#back?.until ?? expected) };
    else if (this.#back !== null && (now >= this.#back.until || count - this.#back.at >= BELIEVED_AFTER_MS))
      this.#back = null;
    this.#before = { now, count };
    return { hold: this.#back !== null, jumpedFrom: back || forward ? expected : null };
  }
}
