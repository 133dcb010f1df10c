import { type Instant, MINUTE } from '../time/instant.ts';
import type { Turn } from './turn.ts';

/** A note that waited longer than this (the program was away, a phone had no signal) is history: nobody stands there any more. */
export const STALE_MS = 10 * MINUTE;

/** What notes of one chat room that waited have brought, to be summed up once. */
export interface LateHere {
  /** Turns of the notes: what they tell is looked up when it is said, since some may be corrected by then. */
  readonly turns: readonly number[];
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

  /** Folds the turn of that number: `at` and `noted` are when it was made and when its note was typed. */
  fold(turn: Turn, number: number, at: Instant, noted: Instant): void {
    if (turn.cause.sort !== 'note' || at - noted <= STALE_MS) return;
    const { room, from } = turn.cause;
    const { turns, asks } = this.#rooms.get(room) ?? { turns: [], asks: [] };
    const unanswered = turn.unanswered === true ? [{ from, noted }] : [];
    const told = (turn.entries ?? []).length > 0 ? [number] : [];
    if (told.length + unanswered.length === 0) return;
    this.#rooms.set(room, { turns: [...turns, ...told], asks: [...asks, ...unanswered] });
  }

  /** Forgets what a turn's summaries told of. */
  toldIn({ said }: Turn): void {
    for (const room of this.#rooms.keys())
      if (said?.some(({ matter }) => matter === summaryKey(room)) === true) this.#rooms.delete(room);
  }

  /** Takes in what `waiting` gave; nothing must be waiting here yet. */
  restore(waiting: readonly (readonly [room: string, late: LateHere])[]): void {
    for (const [room, late] of waiting) this.#rooms.set(room, late);
  }

  waiting(): readonly (readonly [room: string, late: LateHere])[] {
    return [...this.#rooms];
  }
}
