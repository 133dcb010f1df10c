import type { Fact } from '../reading/fact.ts';
import type { Reading } from '../reading/reading.ts';
import type { Decision } from '../record/decision.ts';
import type { Vouched } from '../record/vouched.ts';
import type { Stage } from '../rules/matter.ts';
import type { Question } from '../rules/question.ts';
import type { Effect } from './effect.ts';

/**
 * One line of the journal: what one note, one tick or one change of settings brought, with what is to be said about it.
 * Folding turns in order gives everything the desk knows; nothing in here is ever re-derived by a newer grammar or rule.
 */
export interface Turn {
  readonly cause: Cause;
  /** ISO instant at which it was made. */
  readonly at: string;
  /** What the note said, as it was read then. */
  readonly reading?: Reading;
  readonly entries?: readonly TurnEntry[];
  /** It asked something that is not answered any more: it waited too long. */
  readonly unanswered?: true;
  /** Places (turns of original notes) whose entries no longer hold from here on; `entries` may put others there. */
  readonly setsAside?: readonly number[];
  /** Why they were set aside. */
  readonly correction?: 'edited' | 'removed' | 'undone' | 'amended';
  /** Event id of the note that is corrected. */
  readonly of?: string;
  /** What the note said was taken from an earlier one: from the note of that turn, as the same of other items or as what "it" meant. */
  readonly leans?: Leans;
  /** It named a thing of ours and was not recorded, soon after the same person told something: what follows may lean on it. */
  readonly passed?: true;
  readonly asked?: readonly Question[];
  /** Keys of questions that were answered or have lapsed. */
  readonly answered?: readonly string[];
  readonly said?: readonly SaidMatter[];
  /** Keys of posts that were struck through because what they asked for is settled. */
  readonly settled?: readonly string[];
  /** Keys of struck posts that a correction made true again. */
  readonly reopened?: readonly string[];
  readonly putOff?: readonly { readonly matter: string; readonly until: string }[];
  readonly learned?: readonly { readonly words: string; readonly means: string | null }[];
  /** Finding keys that were warned of: never again for the same cause. */
  readonly warned?: readonly { readonly finding: string; readonly post: string | null }[];
  readonly effects: readonly Effect[];
  /** Everything this turn concerns, for the index of what is only history. */
  readonly items: readonly string[];
  readonly made: Versions;
}

export interface Leans {
  readonly on: number;
  readonly how: 'same' | 'meant';
}

/** What brought the turn about. */
export type Cause =
  | {
      readonly sort: 'note';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly noted: string;
      readonly text?: string;
    }
  | {
      readonly sort: 'edit' | 'redaction' | 'reaction';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly noted: string;
      readonly of: string;
      readonly text?: string;
    }
  | { readonly sort: 'tick' }
  /** The machine's clock jumped: it would have stood at `was`. */
  | { readonly sort: 'clock'; readonly was: string }
  | { readonly sort: 'practice'; readonly file: string }
  | { readonly sort: 'set-aside'; readonly id: string; readonly room: string; readonly why: string };

/** A fact or a decision with everything the record needs to place it. */
export interface TurnEntry {
  readonly what: Fact | Decision;
  readonly noted: string;
  /** Who did it, where the note says so, else who wrote it; `null` for the program. */
  readonly by: string | null;
  readonly from: string;
  readonly room: string;
  /** How far the chat vouches for whoever typed it: kept with what may loosen something. */
  readonly vouched?: Vouched;
  /** Turn of the original note, in whose place it stands: with `index` it keeps its identity through edits and answers. */
  readonly place: number;
  readonly index: number;
}

export interface SaidMatter {
  readonly matter: string;
  readonly stage: Stage;
  /** Key of the post that said it. */
  readonly post: string;
  /** What its tick would record ("wiped A"), so that whoever notes that is named for it. */
  readonly marks?: readonly string[];
}

/** What the turn was made under. */
export interface Versions {
  readonly grammar: string;
  readonly rules: string;
}
