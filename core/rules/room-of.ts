import { chatRoomsOfSite } from '../practice/look-up.ts';
import type { Practice } from '../practice/practice.ts';
import type { Mark } from '../record/mark.ts';
import type { State } from '../record/state.ts';

/**
 * Chat room for what concerns a site: of those that serve it the one that serves the fewest (the site's own before one
 * for all), the first in the file's order. Where the file lists none for it, the room in which the thing (`last`, such
 * as a scanner's `lastNoted`), else the site, was spoken of last; else the first listed. `null`: no room is known yet.
 */
export function chatRoomFor(
  { practice, state }: { readonly practice: Practice; readonly state: State },
  siteId: string,
  last: Mark | null = null,
): string | null {
  const [own] = chatRoomsOfSite(practice, siteId).toSorted((a, b) => a.sites.length - b.sites.length);
  if (own !== undefined) return own.room;
  const spoken = last ?? state.sites.get(siteId)?.lastNoted ?? null;
  return (spoken?.room || practice.chat[0]?.room) ?? null;
}
