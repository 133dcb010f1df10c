import type { TipSet } from '../reading/slots.ts';
import type { Sense } from './table.ts';
import type { TimeSpan } from './times/time-span.ts';

/** Tips as said: ids, ids that are none of the practice's, a set that only the record can tell. */
export interface TipsSaid {
  readonly is: 'tips';
  readonly ids: readonly string[];
  /** Said like an id, but none of this practice's. */
  readonly unknown: readonly string[];
  /** For an id that several tips could be ("3" where there are N3 and Q3). */
  readonly choices: readonly string[];
  readonly which?: TipSet;
  readonly except: readonly string[];
  /** "All the other tips", "the rest of the used ones": without those that the note named before. */
  readonly rest?: true;
  /** True where the word "tip" (or an id with its letters) stands there, so that it cannot be another number. */
  readonly named: boolean;
}

/** What a run of words stands for. */
export type Entity =
  | TipsSaid
  /** No ids: "the scanner", "it" said of one. */
  | {
      readonly is: 'scanner';
      readonly ids: readonly string[];
      readonly named: 'noun' | 'name' | 'bare' | 'letter';
    }
  | { readonly is: 'no-scanner'; readonly said: string }
  | { readonly is: 'site'; readonly id: string; readonly bare: boolean }
  | { readonly is: 'room'; readonly rooms: readonly string[]; readonly said: string }
  | { readonly is: 'autoclave'; readonly id: string | null }
  | {
      readonly is: 'load';
      readonly ids: readonly string[];
      readonly named: boolean;
      readonly autoclave?: string;
    }
  /** What an autoclave ran: "134 for 3.5 min". */
  | { readonly is: 'cycle'; readonly celsius?: number; readonly minutes?: number }
  | { readonly is: 'number'; readonly value: number; readonly text: string }
  | { readonly is: 'celsius'; readonly value: number; readonly unit: boolean }
  | { readonly is: 'person'; readonly name: string; readonly known: boolean }
  | { readonly is: 'time'; readonly span: TimeSpan }
  /** Every mention of a kind at once: "both scanners". */
  | { readonly is: 'some'; readonly of: 'scanner' | 'site'; readonly count: number | null };

export type EntityOf<K extends Entity['is']> = Extract<Entity, { is: K }>;

/** A run of tokens with the meanings it may have. */
export interface Part {
  readonly from: number;
  /** One past the last token. */
  readonly to: number;
  /** Folded and with its spelling put right. */
  readonly text: string;
  readonly senses: readonly Sense[];
  readonly entity?: Entity;
  /** A punctuation mark. */
  readonly mark: boolean;
  /** No meaning known. */
  readonly unknown: boolean;
}

/** A word that is meant and was not typed, standing nowhere in the note. */
export function meantWord(text: string, sense: Omit<Sense, 'ref'>): Part {
  return { from: 0, to: 0, text, senses: [{ ...sense, ref: '' }], mark: false, unknown: false };
}

export function hasTag(part: Part | undefined, tag: string): boolean {
  if (part === undefined) return false;
  for (const sense of part.senses) if (sense.tag === tag) return true;
  return false;
}

export function hasSort(part: Part | undefined, sort: Sense['sort']): boolean {
  if (part === undefined) return false;
  for (const sense of part.senses) if (sense.sort === sort) return true;
  return false;
}
