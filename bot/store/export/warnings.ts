import type { JournalLine } from '../line.ts';
import { type KeptEntry, listAt, textAt } from './kept-entry.ts';
import type { Names } from './names.ts';

/** Posts that tell of something unsafe: who was told belongs in the record. */
const UNSAFE: ReadonlySet<string> = new Set(['warning', 'caution', 'incident', 'look-back', 'spore-test']);

/** What a line warned of at once, a row a post: what it concerned, and whose phones it called. */
export function warningsOf(line: JournalLine, names: Names): readonly KeptEntry[] {
  return listAt(line.turn, 'effects').flatMap((effect, place) => {
    const about = textAt(effect, 'about');
    if (textAt(effect, 'does') !== 'post' || about === null || !UNSAFE.has(about)) return [];
    const told = listAt(effect, 'mentions').flatMap((id) =>
      typeof id === 'string' ? [names.person(id)] : [],
    );
    const kind = `${about}-said`;
    return [
      {
        id: `${line.n}.w${place}`,
        line: line.n,
        what: {
          kind,
          items: listAt(effect, 'items'),
          ...(told.length === 0 ? {} : { told: told.join(', ') }),
        },
        kind,
        when: line.at,
        noted: line.at,
        by: 'Scanward',
        room: textAt(effect, 'room') ?? '',
      },
    ];
  });
}
