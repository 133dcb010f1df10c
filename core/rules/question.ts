import type { HowTopic } from '../reading/ask.ts';
import type { Fact } from '../reading/fact.ts';
import type { Item } from '../reading/slots.ts';
import type { Instant } from '../time/instant.ts';

/** One answer that is offered: typed as its number or its label, or tapped. */
export interface Choice {
  /** What is shown. */
  readonly label: string;
  /** What it means: an id, an item, an outcome, `yes`, `no`. */
  readonly value: string;
}

/** The two answers to a plain question. */
export const YES_NO: readonly Choice[] = [
  { label: 'yes', value: 'yes' },
  { label: 'no', value: 'no' },
];

/**
 * Something the bot asked and still waits for. Remembered for the person and the chat room, in the record, so that a
 * restart asks nothing twice and a second note meanwhile loses neither.
 */
export interface Question {
  /** Key of the post that asks. */
  readonly key: string;
  readonly room: string;
  /** Chat identity asked; `null` when anyone in the room may answer. */
  readonly person: string | null;
  readonly asked: Instant;
  /** When it lapses; `null` when it stays until it is answered. */
  readonly until: Instant | null;
  readonly choices: readonly Choice[];
  readonly items: readonly Item[];
  readonly purpose: Purpose;
}

/** What an answer is for. */
export type Purpose =
  /** Completes a note in which something was missing: `draft` with `slot` set is the fact or ask that was meant. */
  | {
      readonly sort: 'complete';
      readonly turn: number;
      readonly list: 'facts' | 'asks' | 'plans';
      readonly draft: Readonly<Record<string, unknown>>;
      readonly about: string;
      readonly slot: string;
      readonly form: 'id' | 'ids' | 'items' | 'item' | 'outcome' | 'confirm';
      /** The word that was not known, for learning it. */
      readonly words?: string;
      readonly author: string;
      /** Event id of the note. */
      readonly note: string;
      readonly noted: Instant;
    }
  /** A short note that leans on what was told before it ("6 as well", "binned it"): which of these facts it meant, none on no. */
  | {
      readonly sort: 'meant';
      readonly turn: number;
      readonly options: readonly { readonly value: string; readonly facts: readonly Fact[] }[];
      readonly author: string;
      /** Event id of the note. */
      readonly note: string;
      readonly noted: Instant;
    }
  /** Completes an entry that is kept already, in its own place: the answer is an autoclave's id, or a load's key. */
  | {
      readonly sort: 'complete-entry';
      readonly entry: string;
      readonly kind: string;
      readonly slot: 'autoclave' | 'load';
    }
  /** Keep a word that an answer explained? */
  | { readonly sort: 'learn'; readonly words: string; readonly means: string }
  /** Did the unsafe tip reach a patient? */
  | {
      readonly sort: 'reached-patient';
      readonly tip: string;
      readonly entry: string;
      readonly incident: string;
    }
  /** A lead, deputy or manager says that a load with no published value passed: is that its release? */
  | { readonly sort: 'release-load'; readonly load: string }
  /** A pass before settling was over: had it sat at room temperature? */
  | { readonly sort: 'settled'; readonly scanner: string; readonly entry: string }
  /** What was done about these incidents, by id: it closes them. Typed in reply. */
  | { readonly sort: 'close-reason'; readonly incidents: readonly string[] }
  /** A tick where several things are open: which of them? By keys of matters. */
  | { readonly sort: 'which-done'; readonly matters: readonly string[] }
  /** A correction that would loosen something, kept for the lead. */
  | { readonly sort: 'allow-correction'; readonly correction: Correction }
  /** Leads a person through a topic; `step` is the number of steps told, 0 where it is only offered. */
  | { readonly sort: 'walk'; readonly topic: HowTopic; readonly step: number }
  /** The stocktake of day one. */
  | { readonly sort: 'stocktake'; readonly site: string };

/** A correction as it was asked for, so that the lead's yes can carry it out later. */
export interface Correction {
  readonly why: 'edited' | 'removed' | 'undone' | 'amended';
  /** Event id of the note that is corrected. */
  readonly note: string;
  /** Its turn: the place where other entries would stand. */
  readonly place: number;
  readonly facts: readonly Fact[];
  readonly author: string;
}
