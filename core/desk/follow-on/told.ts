import { ruleValue } from '../../defaults/rule-value.ts';
import { type Fact, fact as factSchema } from '../../reading/fact.ts';
import type { Item } from '../../reading/slots.ts';
import { itemsOf } from '../../record/items-of.ts';
import { type Instant, MINUTE } from '../../time/instant.ts';
import type { NoteLine } from '../note-log.ts';
import type { Session, Speaker } from '../session.ts';

/** A short note that may lean on what was told before it. */
export interface Leaning {
  readonly id: string;
  readonly room: string;
  readonly from: string;
  readonly at: Instant;
  /** Event id of the note that it replies to, itself or by way of a post of ours: then it leans on no other. */
  readonly to?: string;
}

/** What an earlier note told, as it stands now. */
export interface Told {
  readonly line: NoteLine;
  readonly facts: readonly Fact[];
  /** What it speaks of, each once, in the order told. */
  readonly items: readonly Item[];
}

/**
 * Notes of the same chat room within the practice's `followOnMinutes` before this one that told something, the latest
 * first, whoever wrote them.
 */
export function toldBefore({ notes, practice, timeline }: Session, note: Leaning): readonly Told[] {
  const since = note.at - ruleValue(practice, 'followOnMinutes') * MINUTE;
  return notes
    .between(note.room, since, note.at)
    .filter(({ id }) => id !== note.id && (note.to === undefined || id === note.to))
    .flatMap((line) => {
      const facts = timeline.ofTurn(line.turn).flatMap(({ fact }) => {
        const parsed = factSchema.safeParse(fact);
        return parsed.success ? [parsed.data] : [];
      });
      const items = [...new Set(facts.flatMap(itemsOf))];
      return items.length === 0 ? [] : [{ line, facts, items }];
    });
}

/** What this person told of within those minutes, the latest first, each once. */
export function itemsLately(session: Session, { note: id, room, from, noted: at }: Speaker): readonly Item[] {
  const own = toldBefore(session, { id, room, from, at }).filter(({ line }) => line.from === from);
  return [...new Set(own.flatMap(({ items }) => items.toReversed()))];
}
