import { slipsBetween } from '../suggest.ts';
import type { Table } from '../table.ts';
import { closeness } from './closeness.ts';

/** Words that no rule should ever arrive at: each is too short, or as likely another word. */
const NEVER = new Set(
  'tins ours mon tue tues wed weds thu thur thurs fri sat sun jan feb mar apr jun jul aug sep sept oct nov dec may'.split(
    ' ',
  ),
);
export const SHORTEST = 3;
export const LONGEST = 20;
/** Words of three letters that a neighbouring key may still be read as. */
const PLAIN = new Set('tip off put use and the for was has not bin wet now all'.split(' '));

/** Two slips are looked for in words of this length or more; in those of this length the first letter may be wrong too. */
const LONG = 6;
const SURE = 9;
/** Notes repeat the same words; a longer memory than this is no use. */
const REMEMBERED = 2000;

/** The words of the lexicon and of the practice's names that are one slip away from what was typed. */
export class NearWords {
  readonly #table: Table;
  #less: ReadonlyMap<string, readonly string[]> | undefined;
  /** Long words that are none → what two slips may have made them of. */
  readonly #far = new Map<string, readonly { readonly word: string; readonly near: number }[]>();

  constructor(table: Table) {
    this.#table = table;
  }

  /** Every target less one letter → the targets; made at the first word that is none, since many notes hold none. */
  get #targetsLessOne(): ReadonlyMap<string, readonly string[]> {
    this.#less ??= lessOneLetter(this.#table);
    return this.#less;
  }

  /** True for a word that one of ours becomes by a letter left out. */
  lacksLetter(text: string): boolean {
    return this.#targetsLessOne.has(text);
  }

  /** All that may be one slip away; `closeness` tells how far. */
  around(text: string): ReadonlySet<string> {
    const found = new Set<string>(this.#targetsLessOne.get(text));
    for (let i = 0; i < text.length; i++) {
      for (const word of this.#targetsLessOne.get(text.slice(0, i) + text.slice(i + 1)) ?? [])
        found.add(word);
    }
    return found;
  }

  /** Words of ours that two slips in a long word may have been made of. */
  twoAway(text: string): readonly { readonly word: string; readonly near: number }[] {
    if (text.length < LONG) return [];
    const known = this.#far.get(text);
    if (known !== undefined) return known;
    const found: { word: string; near: number }[] = [];
    for (const [word, rank] of this.#table.targets) {
      if (rank < 2 || word.length < LONG || (word[0] !== text[0] && word.length < SURE)) continue;
      if (Math.abs(word.length - text.length) <= 2 && slipsBetween(text, word, 2) <= 2)
        found.push({ word, near: 1 });
    }
    if (this.#far.size > REMEMBERED) this.#far.clear();
    this.#far.set(text, found);
    return found;
  }

  /** The one word that what is no word must be a slip of; `null` where none is near enough, or two are. */
  nearest(text: string): string | null {
    const least = text.length < 4 ? 4 : text.length < 6 ? 3 : 2;
    let best: string | null = null;
    let bestScore = 0;
    for (const typed of this.around(text)) {
      const near = closeness(text, typed);
      const word = this.#table.aliases.get(typed) ?? typed;
      if (near < least && !(text.length === 3 && near === 3 && PLAIN.has(word))) continue;
      const score = near + Math.min(this.#table.targets.get(word) ?? 0, 3) / 10;
      if (score > bestScore) {
        best = word;
        bestScore = score;
      }
    }
    return best !== null && this.#unsure(text, best, bestScore) ? null : best;
  }

  /** True where another word that means something else is as near, so that the slip could be either's. */
  #unsure(text: string, best: string, score: number): boolean {
    for (const typed of this.around(text)) {
      const word = this.#table.aliases.get(typed) ?? typed;
      const near = closeness(text, typed) + Math.min(this.#table.targets.get(word) ?? 0, 3) / 10;
      if (word === best || near < score - 1.05 || near < 2) continue;
      if ((this.#table.targets.get(word) ?? 0) < 2 && near < score) continue;
      if (!this.#table.sameSense(word, best)) return true;
    }
    return false;
  }
}

/** Every word that slips may be put right toward, and it less each of its letters → the words. */
function lessOneLetter({ targets, aliases }: Table): ReadonlyMap<string, readonly string[]> {
  const less = new Map<string, string[]>();
  const words = [...targets].flatMap(([word, rank]) => (rank > 0 && !NEVER.has(word) ? [word] : []));
  // "Bqged" is a slip of "baged", which is one of "bagged".
  const hurried = [...aliases.keys()].filter((typed) => typed.length > 4);
  for (const word of [...words, ...hurried]) {
    if (word.length < SHORTEST || word.length > LONGEST || !/^[a-z']+$/.test(word)) continue;
    const keys = new Set([word]);
    for (let i = 0; i < word.length; i++) keys.add(word.slice(0, i) + word.slice(i + 1));
    for (const key of keys) {
      const list = less.get(key);
      if (list === undefined) less.set(key, [word]);
      else list.push(word);
    }
  }
  return less;
}
