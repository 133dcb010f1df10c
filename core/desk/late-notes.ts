import { type Instant, MINUTE } from '../time/instant.ts';
import type { Turn, TurnEntry } from './turn.ts';

/** A note that waited longer than this (the program was away, a phone had no signal) is history: nobody stands there any more. */
export const STALE_MS = 10 * MINUTE;

/** What notes of one chat room that waited have brought, to be summed up once. */
export interface LateHere {
  readonly entries: readonly TurnEntry[];
  /** Questions that were not answered any more: who asked, and when. */
  readonly asks: readonly { readonly from: string; readonly noted: Instant }[];
}

/** Key under which a summary is remembered as said. */
export function summaryKey(room: string): string {
  return `caught-up|${room}`;
}

/** Notes that were taken long after they were typed and that no summary has told of, by chat room. */
export class LateNotes {
  readonly #rooms = new Map<string, LateHere>();

  /** Folds a turn: `at` and `noted` are when it was made and when its note was typed. */
  fold(turn: Turn, at: Instant, noted: Instant): void {
    if (turn.cause.sort !== 'note' || at - noted <= STALE_MS) return;
    const { room, from } = turn.cause;
    const { entries, asks } = this.#rooms.get(room) ?? { entries: [], asks: [] };
    const unanswered = turn.unanswered === true ? [{ from, noted }] : [];
    const more = turn.entries ?? [];
    if (more.length + unanswered.length === 0) return;
    this.#rooms.set(room, { entries: [...entries, ...more], asks: [...asks, ...unanswered] });
  }

  /** Forgets what a turn's summaries told of. */
  toldIn({ said }: Turn): void {
    for (const room of this.#rooms.keys())
      if (said?.some(({ matter }) => matter === summaryKey(room)) === true) this.#rooms.delete(room);
  }

  waiting(): readonly (readonly [room: string, late: LateHere])[] {
    return [...this.#rooms];
  }
}
