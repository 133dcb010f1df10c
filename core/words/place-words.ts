import { roomOf, siteOf } from '../practice/look-up.ts';
import type { Practice } from '../practice/practice.ts';

/** "Quay Street", "Surgery 2, Quay Street"; the site is left out where the practice has only one. */
export function placeWords(practice: Practice, site: string | null, room: string | null): string {
  if (site === null) return 'a place not noted';
  const siteName = siteOf(practice, site)?.name ?? site;
  if (room === null) return siteName;
  const roomName = roomOf(practice, site, room)?.name ?? room;
  return practice.sites.length === 1 ? roomName : `${roomName}, ${siteName}`;
}
