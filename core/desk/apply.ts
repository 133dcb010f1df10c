import type { Entry } from '../record/entry.ts';
import { makeEntry } from '../record/make-entry.ts';
import type { Timeline } from '../record/timeline.ts';
import { fromIso, type Instant } from '../time/instant.ts';
import type { TurnEntry } from './turn.ts';

/** Folds entries of a turn into the record: the same when a note is taken and when the journal is read back. */
export function apply(timeline: Timeline, entries: readonly TurnEntry[]): void {
  timeline.add(entries.map(toEntry));
}

/** A turn's entry as the record keeps it. */
export function toEntry({ place, noted, ...entry }: TurnEntry): Entry {
  return makeEntry({ ...entry, turn: place, noted: instantOf(noted) });
}

/** An instant that the journal holds. Throws RangeError on a text that is not one. */
export function instantOf(iso: string): Instant {
  const instant = fromIso(iso);
  if (instant === null)
    throw new RangeError(`"${iso}" in the record is not an instant such as 2026-11-23T10:15:00Z`);
  return instant;
}
