import { chatRoomsOfSite } from '../practice/look-up.ts';
import type { ChatRoom, Practice } from '../practice/practice.ts';
import type { Mark } from '../record/mark.ts';
import type { State } from '../record/state.ts';

/**
 * Chat room for what concerns a site: of those that serve it the one that serves the fewest (the site's own before one
 * for all), the first in the file's order. Where the file lists none for it, the room in which the thing (`last`, such
 * as a scanner's `lastNoted`; asked only where it matters), else anything at the site, was spoken of last; else the first listed; else the room of
 * the last note of all. `null`: no room is known yet.
 */
export function chatRoomFor(
  { practice, state }: { readonly practice: Practice; readonly state: State },
  siteId: string,
  last: () => Mark | null = nothing,
): string | null {
  const own = ownRoom(practice, siteId);
  if (own !== null) return own;
  const spoken = last();
  if (spoken !== null && spoken.room !== '') return spoken.room;
  return lastRoom(marksAt(state, siteId)) ?? practice.chat[0]?.room ?? lastRoom(marksAt(state, null));
}

function nothing(): null {
  return null;
}

/** The first of those that serve the fewest sites. */
function ownRoom(practice: Practice, siteId: string): string | null {
  let own: ChatRoom | null = null;
  for (const each of chatRoomsOfSite(practice, siteId))
    if (own === null || each.sites.length < own.sites.length) own = each;
  return own?.room ?? null;
}

/** Last notes of a site, its scanners and its tips; `null`: of every site. */
function marksAt(state: State, siteId: string | null): readonly (Mark | null)[] {
  const here = ({ site }: { readonly site: string | null }) => siteId === null || site === siteId;
  return [
    ...[...state.sites.values()].filter(({ id }) => here({ site: id })).map(({ lastNoted }) => lastNoted),
    ...[...state.scanners.values()].filter(here).map(({ lastNoted }) => lastNoted),
    ...[...state.tips.values()].filter(here).map(({ spoken }) => spoken),
  ];
}

function lastRoom(marks: readonly (Mark | null)[]): string | null {
  let last: Mark | null = null;
  for (const mark of marks)
    if (mark !== null && mark.room !== '' && (last === null || mark.noted > last.noted)) last = mark;
  return last?.room ?? null;
}
