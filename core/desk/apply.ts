import type { Entry } from '../record/entry.ts';
import type { Timeline } from '../record/timeline.ts';
import { fromIso, type Instant } from '../time/instant.ts';
import type { TurnEntry } from './turn.ts';

/** Folds entries of a turn into the record: the same when a note is taken and when the journal is read back. */
export function apply(timeline: Timeline, entries: readonly TurnEntry[]): void {
  timeline.add(entries.map(toEntry));
}

/** A turn's entry as the record keeps it. What is said to happen after it was noted is taken as then: facts look back. */
export function toEntry(entry: TurnEntry): Entry {
  const noted = instantOf(entry.noted);
  const { what } = entry;
  const earliest =
    'earliest' in what && what.earliest !== undefined ? { earliest: instantOf(what.earliest) } : {};
  return {
    id: `${entry.place}.${entry.index}`,
    turn: entry.place,
    index: entry.index,
    when: Math.min(instantOf(what.when), noted),
    ...earliest,
    fact: what,
    noted,
    by: entry.by,
    from: entry.from,
    room: entry.room,
  };
}

function instantOf(iso: string): Instant {
  const instant = fromIso(iso);
  if (instant === null)
    throw new RangeError(`"${iso}" in the record is not an instant such as 2026-11-23T10:15:00Z`);
  return instant;
}
