import { sitesOfChatRoom } from '../../practice/look-up.ts';
import type { Item } from '../../reading/slots.ts';
import type { Session } from '../session.ts';
import type { Leaning, Told } from './told.ts';

const OTHER = /^(?:the )?other(?: one| scanner)?$/i;

/** "The other one" of two scanners, told of one; `null` where the words are others, or no one scanner is meant. */
export function otherScanner(
  session: Session,
  words: string,
  note: Leaning,
  before: Told,
): readonly Item[] | null {
  return OTHER.test(words) ? otherThan(session, note, before) : null;
}

/** Of the practice's two scanners, or the two that stand at this chat room's sites, the one that was not told of. */
export function otherThan(
  { practice, timeline }: Session,
  note: Leaning,
  { items }: Told,
): readonly Item[] | null {
  const [told, more] = items.filter((item) => item.startsWith('scanner:'));
  if (told === undefined || more !== undefined) return null;
  const sites = new Set(sitesOfChatRoom(practice, note.room).map(({ id }) => id));
  const here = practice.scanners.filter(({ id }) => sites.has(timeline.state.scanners.get(id)?.site ?? ''));
  const two = practice.scanners.length === 2 ? practice.scanners : here;
  const others = two.map(({ id }): Item => `scanner:${id}`).filter((item) => item !== told);
  return two.length === 2 && others.length === 1 ? others : null;
}
