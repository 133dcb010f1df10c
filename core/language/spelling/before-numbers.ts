import type { Table } from '../table.ts';
import type { Token } from '../token.ts';
import { closeness } from './closeness.ts';

/** Slips for "and" that are words too. */
const BETWEEN = new Set('ad an nd amd abd sand adn ane ans end ant any nad ahd znd hand band'.split(' '));

/** "2 end 3": what stands between two numbers is "and", though it is a word. */
export function isAndBetween(text: string, before: Token | undefined, next: Token | undefined): boolean {
  return BETWEEN.has(text) && before?.kind === 'number' && next?.kind === 'number';
}

/** What is no word and stands before a number is rather "tip", "load" or a room than nothing; between two numbers it is "and". */
export function beforeNumber(
  text: string,
  next: Token | undefined,
  before: Token | undefined,
  table: Table,
): string | null {
  if (next?.kind !== 'number' || text.length > 6) return null;
  if (before?.kind === 'number' && text.length < 5 && closeness(text, 'and') >= 2) return 'and';
  if (!next.spaced && text.length < 3) return null;
  for (const noun of ['tip', 'tips', 'load'])
    if (closeness(text, noun) >= 2 && (text.length > 2 || noun === 'tip')) return noun;
  for (const noun of table.roomWords) if (noun.length > 1 && closeness(text, noun) >= 3) return noun;
  return null;
}
