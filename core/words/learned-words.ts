import { roomOf, siteOf } from '../practice/look-up.ts';
import type { Practice } from '../practice/practice.ts';
import { itemWords } from './item-words.ts';

/** What a learned word stands for, as people call it: `scanner:A`, `site:mill`, `room:mill/m1`. */
export function meaningWords(practice: Practice, means: string): string {
  const at = means.indexOf(':');
  const [sort, ref] = [means.slice(0, at), means.slice(at + 1)];
  if (sort === 'site') return siteOf(practice, ref)?.name ?? ref;
  if (sort !== 'room') return itemWords(practice, means);
  const [site = '', room = ''] = ref.split('/');
  const name = roomOf(practice, site, room)?.name ?? room;
  return practice.sites.length > 1 ? `${name}, ${siteOf(practice, site)?.name ?? site}` : name;
}

/** A word without its article and in small letters, as it is compared. */
export function foldWord(words: string): string {
  return words
    .trim()
    .toLowerCase()
    .replace(/[’`´]/g, "'")
    .replace(/\s+/g, ' ')
    .replace(/^(?:the|our|my) /, '');
}
