import { fromIso, type Instant } from '../time/instant.ts';
import type { Entry, Said } from './entry.ts';
import type { Vouched } from './vouched.ts';

/** What the journal says of one fact or decision, with its place. */
export interface EntrySource {
  readonly what: Said;
  /** Turn of the ORIGINAL note, and place within it. */
  readonly turn: number;
  readonly index: number;
  /** When the note was typed, as the desk took it: never after its own now. */
  readonly noted: Instant;
  readonly by: string | null;
  readonly from: string;
  readonly room: string;
  readonly vouched?: Vouched;
}

/** The entry of a fact or decision. A time after the note's own is taken as the note's; a stretch that ends before it begins is none. */
export function makeEntry(source: EntrySource): Entry {
  const { what, turn, index, noted, from, room, vouched } = source;
  const when = Math.min(fromIso(what.when) ?? noted, noted);
  const said = 'earliest' in what && what.earliest !== undefined ? fromIso(what.earliest) : null;
  const by = what.by ?? source.by;
  const base = { id: `${turn}.${index}`, turn, index, when, fact: what, noted, by, from, room };
  const entry = vouched === undefined ? base : { ...base, vouched };
  return said !== null && said < when ? { ...entry, earliest: said } : entry;
}
