import { scannerOf } from '../../practice/look-up.ts';
import type { Practice } from '../../practice/practice.ts';
import { type Line, lines, type Message } from '../../words/message.ts';
import { placeWords } from '../../words/place-words.ts';
import { type StockView, sterileStock } from './sterile-stock.ts';

/** So many are named; the rest is counted where there are a few of them, since "and 1 more" helps nobody. */
const NAMED = 6;
const A_FEW = 3;

/** "tip 4", "tips 2, 4 and 7", in the order given. */
export function tipsInWords(ids: readonly string[]): string {
  return `${ids.length === 1 ? 'tip' : 'tips'} ${inWords(ids)}`;
}

/** "2, 4 and 7". */
export function inWords(words: readonly string[], joint = 'and'): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} ${joint} ${last}`;
}

/** The same with a capital, for the start of a line. */
export function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** The way out of a warning: which tips may be taken here, oldest first; where there is none, which other site has some. */
export function sterileHere(view: StockView & { readonly practice: Practice }, site: string | null): Message {
  const here = sterileStock(view, site).map(({ id }) => id);
  const at = site === null ? '' : ` at ${placeWords(view.practice, site, null)}`;
  if (here.length > 0) return lines([`Sterile${at}, oldest first: `, { strong: named(here) }, '.']);
  return lines([`No sterile tip is on record${at}.`, ...elsewhere(view, site)]);
}

function elsewhere(view: StockView & { readonly practice: Practice }, site: string | null): Line {
  if (site === null) return [];
  return view.practice.sites
    .filter(({ id }) => id !== site)
    .flatMap(({ id, name }) => {
      const there = sterileStock(view, id).map((tip) => tip.id);
      return there.length === 0 ? [] : [` ${name} has ${named(there)}.`];
    });
}

function named(ids: readonly string[]): string {
  const more = ids.length - NAMED;
  return more >= A_FEW
    ? `${tipsInWords(ids.slice(0, NAMED)).replace(/ and (\S+)$/, ', $1')} and ${more} more`
    : tipsInWords(ids);
}

/** A scanner as the practice names it. */
export function scannerWords(practice: Practice, scanner: string): string {
  return scannerOf(practice, scanner)?.name ?? `scanner ${scanner}`;
}
