import type { Practice } from '../practice/practice.ts';
import type { Reading, Unclear } from '../reading/reading.ts';
import type { Instant } from '../time/instant.ts';

/** What the reader knows besides the words: nothing of the record. */
export interface NoteContext {
  /** The note's own instant. */
  readonly at: Instant;
  /** Chat identity of who wrote it. */
  readonly from?: string;
  /** Chat room it was written in. */
  readonly room?: string;
}

/**
 * What is missing where something is unclear, so that an answer, or the record, can complete it:
 * `draft` with `slot` set to the answer is the fact (or ask) that was meant.
 */
export interface Gap {
  readonly unclear: Unclear;
  /** The entry as far as it was understood; absent where nothing could be. */
  readonly draft?: {
    readonly list: 'facts' | 'asks' | 'plans';
    readonly entry: Readonly<Record<string, unknown>>;
  };
  /** Slot of the draft that is missing, and how one answer is written into it: `tips` takes a list of ids, `items` items. */
  readonly slot?: string;
  readonly form?: 'id' | 'ids' | 'items' | 'item' | 'outcome' | 'confirm';
  /** The words that were not known ("big blue"), for learning them. */
  readonly words?: string;
}

/** Why one entry is there: the rule that made it and the words that gave each slot. */
export interface Why {
  readonly list: keyof Reading;
  /** Place in that list. */
  readonly index: number;
  /** Name of the rule. */
  readonly rule: string;
  /** Slot → the words as typed, or how it was filled in where the note did not say it ("the only scanner", "this chat room's site"). */
  readonly slots: Readonly<Record<string, { readonly said: string } | { readonly filledIn: string }>>;
}

/** A note as read: what `read` prints, with what stays inside the program beside it. */
export interface NoteRead {
  readonly reading: Reading;
  /** One for each entry of `reading.unclear`, in order. */
  readonly gaps: readonly Gap[];
  readonly why: readonly Why[];
}

/** A reader made once for a practice (and the words it has learned): names and lexicon are compiled into one table. */
export type Reader = (text: string, context: NoteContext) => NoteRead;

/** Words a practice has taught ("the gun" for scanner A): word → item, site or room. */
export interface LearnedWord {
  readonly words: string;
  readonly means: string;
}

export type MakeReader = (practice: Practice, learned?: readonly LearnedWord[]) => Reader;
