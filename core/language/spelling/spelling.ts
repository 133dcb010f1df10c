import { isEnglish } from '../lexicon/english-words.ts';
import { shorthandFor } from '../lexicon/words.ts';
import type { Table } from '../table.ts';
import type { Token } from '../token.ts';
import {
  type Alternative,
  alternativesTo,
  nearestDenial,
  type Standing,
  standingOf,
} from './alternatives.ts';
import { beforeNumber, isAndBetween } from './before-numbers.ts';
import { byPlace } from './by-place.ts';
import { bySound } from './by-sound.ts';
import { type FigureWords, withoutFigures } from './figures.ts';
import { as, type Mended, spread } from './mended.ts';
import { NearWords, SHORTEST } from './near-words.ts';
import { owned, ownedBefore, runTogether } from './run-together.ts';

/** Notes repeat the same slips; a longer memory than this is no use. */
const REMEMBERED = 4000;

const BIDS: ReadonlySet<string> = new Set(['request', 'intend', 'oblige', 'suppose']);

/** Prepositions that an hour or a number may be run on to. */
const TAKES_NUMBER = new Set(
  'at to by till until til before after from for over under about around past no number and or is in on of with'.split(
    ' ',
  ),
);

/**
 * Puts slips right, toward words of the lexicon and the practice's names only, and only where what was typed is no
 * word: one letter too many, too few, wrong or changed about; a space too many or too few; letters held down.
 * Numbers, ids and number words are never touched nor arrived at.
 */
export class Spelling {
  readonly #table: Table;
  readonly #near: NearWords;
  readonly #known = new Map<string, readonly string[]>();
  readonly #figures: FigureWords = {
    rank: (text) => this.#rank(text),
    english: isEnglish,
    takesNumber: (text) => TAKES_NUMBER.has(text) || this.#table.counts(text),
  };

  constructor(table: Table) {
    this.#table = table;
    this.#near = new NearWords(table);
  }

  /** The tokens with their spelling put right; offsets stay those of what was typed. */
  correct(typed: readonly Token[]): readonly Token[] {
    const tokens = withoutFigures(typed, this.#figures);
    let out: Token[] | null = null;
    for (let i = 0; i < tokens.length; i++) {
      const token = tokens[i];
      if (token === undefined) continue;
      const mended = this.#mended(tokens, i, token);
      if (mended === null) {
        out?.push(token);
        continue;
      }
      out ??= tokens.slice(0, i);
      out.push(...mended.tokens);
      i += mended.taken - 1;
    }
    return out ?? tokens;
  }

  /** Every word that may have been meant by what was typed, the nearest first. */
  alternatives(typed: string, standing: Standing): readonly Alternative[] {
    return alternativesTo(typed, standing, this.#table, this.#near);
  }

  standing(text: string): Standing {
    return standingOf(text, this.#table);
  }

  /** True for a word with which something is asked for, meant or supposed. */
  bids(text: string): boolean {
    return this.#table.turns(text, BIDS);
  }

  /** True for a name of the practice. */
  isName(text: string): boolean {
    return this.#table.owners.has(text);
  }

  /** True for a word that turns what is said about: a denial, a doubt, a request, a supposition. */
  turns(text: string): boolean {
    return this.#table.turns(text);
  }

  /** True for a word of the lexicon or of the practice's names. */
  isOurs(text: string): boolean {
    return this.#table.words.has(text);
  }

  /** True for a word that says something by itself: no glue. */
  says(text: string): boolean {
    return (this.#table.targets.get(text) ?? 0) > 1;
  }

  /** True where two words have a meaning in common. */
  sameSense(a: string, b: string): boolean {
    return this.#table.sameSense(a, b);
  }

  /** True for a word of the lexicon, a name of the practice or an English word. */
  isWord(text: string): boolean {
    return this.#table.words.has(text) || isEnglish(text);
  }

  /** 2 to 5 for words of the lexicon, 1 for a known way of typing one, else 0. */
  #rank(text: string): number {
    if (this.#table.words.has(text)) return 2 + (this.#table.targets.get(text) ?? 0);
    return shorthandFor(text) !== undefined || this.#table.aliases.has(text) ? 1 : 0;
  }

  #mended(tokens: readonly Token[], i: number, token: Token): Mended | null {
    const [before, next] = [tokens[i - 1], tokens[i + 1]];
    const sounded = bySound(tokens, i, token);
    if (sounded !== null) return sounded;
    if (!token.spaced && before?.kind === 'number' && /^(st|nd|rd|th)$/.test(token.text)) return null;
    if (token.kind !== 'word' || token.text.length < 2) return this.#joined(i, tokens);
    if (isAndBetween(token.text, before, next)) return as(token, 'and');
    const known = this.isWord(token.text);
    const meant = byPlace(tokens, i, known);
    if (meant !== null) return as(token, meant);
    const name = ownedBefore(token.text, next?.text, this.#table);
    if (name !== null) return spread(token, name);
    if (known) return null;
    const placed = beforeNumber(token.text, next, before, this.#table);
    if (placed !== null) return as(token, placed);
    return this.#joined(i, tokens) ?? this.#meant(token, next);
  }

  /** The words meant by what is no word; letters that hang on a number are left to be an id's. */
  #meant(token: Token, next: Token | undefined): Mended | null {
    if (token.text.length < SHORTEST && shorthandFor(token.text) === undefined) return null;
    const hangs = next?.kind === 'number' && !next.spaced;
    if (hangs && token.text.length <= 3 && !this.#near.lacksLetter(token.text)) return null;
    const words = this.#remembered(token.text);
    return words.length === 0 ? null : spread(token, words);
  }

  #remembered(text: string): readonly string[] {
    const known = this.#known.get(text);
    if (known !== undefined) return known;
    const words = this.#words(text);
    if (this.#known.size > REMEMBERED) this.#known.clear();
    this.#known.set(text, words);
    return words;
  }

  /** The words meant by what is no word; none where it cannot be told. */
  #words(text: string): readonly string[] {
    const calm = text.replace(/([a-z])\1{2,}/g, '$1$1');
    for (const held of [calm, text.replace(/([a-z])\1{2,}/g, '$1')]) {
      if (held !== text && this.isWord(held)) return [held];
    }
    if (/^[a-z]+'t$/.test(text)) return [nearestDenial(text)];
    const short = shorthandFor(text) ?? this.#table.aliases.get(text);
    if (short !== undefined) return short.endsWith("'s") ? [short.slice(0, -2), "'s"] : [short];
    const name = owned(text, this.#table);
    if (name !== null) return name;
    const one = this.#near.nearest(text);
    return one !== null ? [one] : runTogether(text, this.#table);
  }

  /** "wip ed" is one word where neither half is and the whole is. */
  #joined(i: number, tokens: readonly Token[]): Mended | null {
    const [token, next] = [tokens[i], tokens[i + 1]];
    if (token?.kind !== 'word' || next?.kind !== 'word' || !next.spaced) return null;
    if (token.text.length > 12 || next.text.length > 12) return null;
    if (token.text.length === 1 && !token.spaced && tokens[i - 1]?.kind === 'number') return null;
    if (this.isWord(token.text) && this.isWord(next.text) && token.text.length > 1 && next.text.length > 1)
      return null;
    const whole = token.text + next.text;
    if (whole.length < 4 || (this.#table.targets.get(whole) ?? 0) < 2) return null;
    if (token.text.length > 1 && next.text.length > 1 && this.isWord(token.text) && next.text.length > 2)
      return null;
    return { tokens: [{ ...token, text: whole, end: next.end }], taken: 2 };
  }
}
