import { nameOf as nameOfChatId } from '../practice/look-up.ts';
import type { Practice } from '../practice/practice.ts';

/** Name of whoever a mark is by: as the practice file spells it, a name said in a note as it is; `null` is the program. */
export function nameOf(practice: Practice, by: string | null): string {
  return by === null ? 'Scanward' : nameOfChatId(practice, by);
}
