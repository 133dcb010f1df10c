import type { Instant } from '../../time/instant.ts';
import type { Leaning } from './told.ts';

/** People and chat rooms remembered: each keeps its latest only. */
const KEPT = 500;

/**
 * When each person last typed something in a chat room that names a thing of ours and was not recorded ("haven't done
 * white yet"): what leans on the note before it is asked then, not taken. Not in the journal, since talk leaves no line
 * there; after a restart nothing is remembered, and only what was told counts.
 */
export class Passing {
  readonly #latest = new Map<string, Instant>();

  said({ room, from, at }: Leaning): void {
    const key = keyOf(room, from);
    this.#latest.delete(key);
    this.#latest.set(key, at);
    const [oldest] = this.#latest.keys();
    if (this.#latest.size > KEPT && oldest !== undefined) this.#latest.delete(oldest);
  }

  /** Whether something of the kind stands between that instant and this note. */
  since({ room, from, at }: Leaning, told: Instant): boolean {
    const last = this.#latest.get(keyOf(room, from));
    return last !== undefined && last >= told && last <= at;
  }
}

function keyOf(room: string, from: string): string {
  return `${room}\n${from}`;
}
