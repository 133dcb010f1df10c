import { shorthandFor } from '../../language/lexicon/words.ts';
import type { LearnedWord, NoteRead } from '../../language/read.ts';
import { knownWords } from '../../language/suggest.ts';
import { autoclaveOf, scannerOf } from '../../practice/look-up.ts';
import type { Practice } from '../../practice/practice.ts';
import { placeWords } from '../../words/place-words.ts';

/** Slots that a name gives, in the order in which they are read back. */
const NAMED = ['scanner', 'item', 'items', 'autoclave', 'room', 'site', 'by', 'person'] as const;

/**
 * The things, places and people that a note's facts were taken to name where what was typed is none of their names ("norht"
 * for North Clinic), as the practice file writes them: a thumb alone would not show how it was read.
 */
export function throughSlips(
  practice: Practice,
  learned: readonly LearnedWord[],
  { reading, why }: NoteRead,
): readonly string[] {
  const known = knownWords(practice, learned);
  const names = why.flatMap(({ list, index, slots }) => {
    const fact: Readonly<Record<string, unknown>> = list === 'facts' ? { ...reading.facts[index] } : {};
    const slipped = NAMED.filter((slot) => {
      const source = slots[slot];
      return source !== undefined && 'said' in source && holdsSlip(source.said, known);
    });
    // A room tells its site too.
    const told = slipped.filter((slot) => slot !== 'site' || !slipped.includes('room'));
    return told.flatMap((slot) => nameOf(practice, fact, slot));
  });
  return [...new Set(names)];
}

/** True where one of the words is none that the practice or the lexicon has. */
function holdsSlip(said: string, known: (word: string) => boolean): boolean {
  const words =
    said
      .toLowerCase()
      .replaceAll('’', "'")
      .match(/\p{L}+(?:'\p{L}+)?/gu) ?? [];
  return words.some((word) => {
    if (word.length < 3 || shorthandFor(word) !== undefined) return false;
    return !known(word) && !known(word.replace(/'?s$/, ''));
  });
}

function nameOf(
  practice: Practice,
  fact: Readonly<Record<string, unknown>>,
  slot: (typeof NAMED)[number],
): readonly string[] {
  const text = (name: string) => (typeof fact[name] === 'string' ? fact[name] : null);
  const id = text(slot);
  switch (slot) {
    case 'scanner':
      return id === null ? [] : [scannerOf(practice, id)?.name ?? id];
    case 'autoclave':
      return id === null ? [] : [autoclaveOf(practice, id)?.name ?? id];
    case 'site':
    case 'room':
      return text('site') === null ? [] : [placeWords(practice, text('site'), slot === 'room' ? id : null)];
    case 'item':
    case 'items': {
      const items = Array.isArray(fact.items) ? fact.items : [fact.item];
      // Tips have ids, which are never put right.
      return items.flatMap((item) => {
        const [sort, name = ''] = String(item).split(':');
        if (sort === 'scanner') return [scannerOf(practice, name)?.name ?? name];
        return sort === 'autoclave' ? [autoclaveOf(practice, name)?.name ?? name] : [];
      });
    }
    default:
      // Whoever the practice file does not name is kept as typed.
      return practice.people.filter(({ name }) => name === id).map(({ name }) => name);
  }
}
