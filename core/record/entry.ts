import type { Fact } from '../reading/fact.ts';
import type { Instant } from '../time/instant.ts';
import type { Decision } from './decision.ts';
import type { Vouched } from './vouched.ts';

/** What an entry says: a fact of a note, or a decision of the program or of a person answering it. */
export type Said = Fact | Decision;
export type SaidKind = Said['kind'];
/** The same by kind, so that a table of kinds can be told to the compiler. */
export type SaidMap = { [K in SaidKind]: Extract<Said, { kind: K }> };
export type SaidOf<K extends SaidKind> = Extract<Said, { kind: K }>;

/** One thing that the record keeps. `tips` of a fact are ids, never `which`: what a set meant is settled when it is noted. */
export interface Entry {
  /** `turn.index`: the same after an edit, so that what was asked because of it is not asked twice. */
  readonly id: string;
  /** Number of the turn of the ORIGINAL note: what stands in its place keeps it. */
  readonly turn: number;
  /** Place within the note. */
  readonly index: number;
  /** When it happened; never after `noted`. */
  readonly when: Instant;
  /** Start of the stretch, where the time said is one. */
  readonly earliest?: Instant;
  readonly fact: Said;
  /** When the note was typed. */
  readonly noted: Instant;
  /** Who did it: named in the note, else its author; `null` for the program. */
  readonly by: string | null;
  /** Author's chat id; empty for the program. */
  readonly from: string;
  /** Chat room where it was noted. */
  readonly room: string;
  /** How far the chat vouches for its author; kept where it matters, left out where the chat cannot know. */
  readonly vouched?: Vouched;
}

/** Id of the entry that a decision is about; it holds only as long as that one does. */
export function aboutOf({ fact }: Entry): string | null {
  return 'of' in fact ? fact.of : null;
}
