import type { Unclear } from '../reading/reading.ts';
import type { Gap } from './read.ts';

/** One entry that a frame makes, with where each slot came from: places of parts, or how it was filled in. */
export interface Made {
  readonly entry: Record<string, unknown> & { kind: string };
  readonly said: Record<string, readonly number[] | string>;
}

export interface Missing {
  readonly about: Unclear['about'];
  readonly choices?: readonly string[];
  readonly of?: string;
  readonly slot: string;
  readonly form: NonNullable<Gap['form']>;
  readonly words?: string;
}

/** What a frame finds in a clause. */
export interface Result {
  readonly made: readonly Made[];
  /** What is needed and was not said, or is none of the practice's. */
  readonly missing?: Missing;
  /** Holds though the clause denies, asks or commands: "don't use tip 4". */
  readonly anyMood?: true;
  /** What is said could mean less than this: it is asked. */
  readonly doubtful?: true;
  /** More evidence than the parts that it used show. */
  readonly bonus?: number;
  /** The part that says what happened, for mood. */
  readonly verb: number;
}
