import type { Entry } from './entry.ts';
import type { Place } from './order.ts';

/** A state that can be gone back to, with everything up to and with `through` folded into it. */
export interface KeptBase {
  /** Counts up from 1. */
  readonly number: number;
  readonly through: Place;
  /** What `packState` gave. */
  readonly state: unknown;
}

/**
 * Where what is only history is kept, found by an index: rows that have left the state's lists, values that have left its
 * maps, the entries that they came from, and some of the states on the way. All of it can be worked out again from the
 * journal. Rows and values are plain JSON values; what was put in comes back equal. Everything answers at once: it is asked
 * in the middle of a fold.
 *
 * Rows and values belong to the base that is kept after them, so that going back to a base takes off what came later.
 */
export interface Archive {
  /** Rows of a list from place `from` to before place `to`. */
  rows(list: string, from: number, to: number): readonly unknown[];
  /** Rows of a list whose key begins so, in order. */
  keyed(list: string, start: string): readonly unknown[];
  addRow(list: string, at: number, key: string | null, row: unknown): void;
  /** What a map has under that key; `undefined`: nothing. */
  value(map: string, key: string): unknown;
  /** Every key of a map with its value, in no order. */
  values(map: string): Iterable<readonly [key: string, value: unknown]>;
  setValue(map: string, key: string, value: unknown): void;
  /** As `setValue`, of what is not folded from entries: going back does not touch it. */
  keepValue(map: string, key: string, value: unknown): void;
  forgetValue(map: string, key: string): void;

  /** The entry of that id (`turn.index`). */
  entry(id: string): Entry | undefined;
  /** Entries of an original turn, by their place within it. */
  ofTurn(turn: number): readonly Entry[];
  /** Decisions about the entry of that id. */
  about(id: string): readonly Entry[];
  /** Places of entries that speak of an item, in order. */
  placesAbout(item: string): readonly Place[];
  /** At most so many entries behind that place (`null`: from the first), in order. */
  after(place: Place | null, most: number): readonly Entry[];
  /** At most so many entries before that place (`null`: from the last), the latest first. */
  before(place: Place | null, most: number): readonly Entry[];
  putEntry(entry: Entry): void;
  dropEntry(entry: Entry): void;

  /** Ends a stretch of rows and values. The state is asked for only where it is worth keeping. */
  keepBase(through: Place, state: () => unknown): void;
  /** The latest base kept whose entries all stand before that place. */
  baseBefore(place: Place): KeptBase | null;
  /** Takes off rows, values and bases that came after that base; 0: all of them. Entries stay. */
  backTo(base: number): void;
}
