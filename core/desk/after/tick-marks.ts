import type { Entry, Said } from '../../record/entry.ts';
import type { Instant } from '../../time/instant.ts';
import { DAY } from '../../time/instant.ts';
import { nameOf } from '../../words/people-words.ts';
import type { PostLine } from '../post-log.ts';
import type { Session } from '../session.ts';

/** What a fact settles, in words that a reminder's tick gives too: "wiped A", "calibrated A", "sent 4". */
export function tickMarks(what: Said): readonly string[] {
  switch (what.kind) {
    case 'wiped':
      return what.part === 'all' ? [`wiped ${what.scanner}`] : [];
    case 'covered':
      return [`covered ${what.scanner}`];
    case 'calibrated':
      return what.outcome === 'passed' ? [`calibrated ${what.scanner}`] : [];
    case 'pass-confirmed':
      return [`calibrated ${what.scanner}`];
    case 'sent':
      return (what.tips ?? []).map((tip) => `sent ${tip}`);
    default:
      return [];
  }
}

/** What a person did that a reminder had asked for. */
export interface DoneBy {
  /** Names, each once. */
  readonly names: readonly string[];
  /** When the last of it was done. */
  readonly at: Instant;
}

/**
 * Who did what a reminder asked for, as the record has it; `null` where something in it came to an end otherwise (the
 * scanner left, a correction, a hold): then nobody is named for what nobody noted.
 */
export function doneBy({ timeline, practice }: Session, { at, marks }: PostLine): DoneBy | null {
  if (marks.length === 0) return null;
  const wanted = new Set(marks);
  const found: Entry[] = [];
  // A note typed late may speak of a time before the reminder.
  for (const entry of timeline.newestFirst()) {
    if (entry.when < at - DAY || wanted.size === 0) break;
    const hits = entry.noted < at - DAY ? [] : tickMarks(entry.fact).filter((mark) => wanted.delete(mark));
    if (hits.length > 0) found.push(entry);
  }
  if (wanted.size > 0 || found.some(({ by }) => by === null)) return null;
  const names = new Set(found.map(({ by }) => nameOf(practice, by ?? '')));
  return { names: [...names], at: Math.max(...found.map(({ when }) => when)) };
}
