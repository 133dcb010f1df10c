import type { Instant } from '../time/instant.ts';

/** When something happened, who did it and which entry says so: enough for "since when and by whom" and to key a matter. */
export interface Mark {
  /** When it happened. */
  readonly at: Instant;
  /** Start of the stretch where the time said is one ("this morning"); else the same as `at`. */
  readonly earliest: Instant;
  /** When the note was typed. */
  readonly noted: Instant;
  /** Who did it: a person's name said in the note, else the author's chat id; `null` where the program did. */
  readonly by: string | null;
  /** Chat id of the author; empty for the program. */
  readonly from: string;
  /** Chat room in which it was noted. */
  readonly room: string;
  /** Id of the entry, `turn.index`. */
  readonly entry: string;
}
