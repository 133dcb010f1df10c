import { factWords } from '../../answers/fact-words.ts';
import { zoneOfChatRoom } from '../../practice/look-up.ts';
import { canonical } from '../../reading/canonical.ts';
import { type Fact, fact as factSchema } from '../../reading/fact.ts';
import { itemsOf } from '../../record/items-of.ts';
import { clockWords } from '../../words/clock-words.ts';
import { lines } from '../../words/message.ts';
import type { NoteLine } from '../note-log.ts';
import type { Session } from '../session.ts';
import { sameOf } from './same-of.ts';

/**
 * After a note was corrected: what later notes took from it ("blue too") stays as it was taken, since it is kept as facts of
 * its own. Where it no longer follows, that is said once under the later note, so that its author can put it right too.
 */
export function sayStillLeaning(session: Session, corrected: NoteLine): void {
  const { draft, notes, practice, now } = session;
  const told = factsOf(session, corrected);
  for (const note of notes.leaningOn(corrected.turn)) {
    const facts = factsOf(session, note);
    if (facts.length === 0 || follows(note, facts, told)) continue;
    const what = facts.map((fact) => factWords(practice, fact)).join('; ');
    const at = clockWords(note.noted, now, zoneOfChatRoom(practice, note.room));
    const message = lines(
      [{ strong: 'Still recorded' }, ` (noted ${at}): ${what}.`],
      'It was taken from the note that has just been changed: edit or undo it too if it is wrong.',
    );
    draft.post(note.room, {
      about: 'record',
      message,
      replyTo: note.id,
      items: [...new Set(facts.flatMap(itemsOf))],
    });
  }
}

function factsOf({ timeline }: Session, { turn }: NoteLine): readonly Fact[] {
  return timeline.ofTurn(turn).flatMap(({ fact }) => {
    const parsed = factSchema.safeParse(fact);
    return parsed.success ? [parsed.data] : [];
  });
}

/** Whether the later note would be taken so again: the same of its items, or the thing that it called "it" still told of. */
function follows({ leans }: NoteLine, facts: readonly Fact[], told: readonly Fact[]): boolean {
  const items = [...new Set(facts.flatMap(itemsOf))];
  if (leans?.how === 'meant') {
    const before = new Set(told.flatMap(itemsOf));
    return items.some((item) => before.has(item));
  }
  return facts.every((fact) => {
    const own = itemsOf(fact);
    const again = SORTS.flatMap(
      (sort) =>
        sameOf(
          told,
          own.filter((item) => item.startsWith(sort)),
          fact.when,
        ) ?? [],
    );
    return again.some((one) => canonical(one) === canonical(fact));
  });
}

const SORTS = ['tip:', 'scanner:', 'load:'];
