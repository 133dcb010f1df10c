import { byPlace } from './by-place.ts';
import { closeness } from './closeness.ts';
import { type FigureWords, withoutFigures } from './figures.ts';
import { isEnglish } from './lexicon/english-words.ts';
import { numberWords, shorthandFor } from './lexicon/words.ts';
import type { Table } from './table.ts';
import type { Token } from './token.ts';

/** Words that no rule should ever arrive at: each is too short, or as likely another word. */
const NEVER = new Set(
  'tins ours mon tue tues wed weds thu thur thurs fri sat sun jan feb mar apr jun jul aug sep sept oct nov dec may'.split(
    ' ',
  ),
);
const SHORTEST = 3;
/** Words of three letters that a neighbouring key may still be read as. */
const PLAIN = new Set([
  'tip',
  'off',
  'put',
  'use',
  'and',
  'the',
  'for',
  'was',
  'has',
  'not',
  'bin',
  'wet',
  'now',
  'all',
]);
const LONGEST = 20;
/** Notes repeat the same slips; a longer memory than this is no use. */
const REMEMBERED = 4000;

/** Short words that slips are tried for where nothing else explains a note. */
const SHORTER = [
  'on',
  'in',
  'at',
  'to',
  'of',
  'is',
  'off',
  'and',
  'the',
  'for',
  'out',
  'was',
  'has',
  'not',
  'tip',
  'tips',
  'it',
  'by',
  'pm',
  'am',
  'one',
  'two',
  'six',
  'ten',
  'ago',
  'use',
  'cal',
  'bin',
  'now',
  'all',
];

/** What acts are said with: no word of the lexicon's own, tried only for what is no word at all. */
const ACTS =
  'undo later snooze delete scratch scrap ignore done nope nah yeah please sorry oops meant remind poke nudge again last message entry not'.split(
    ' ',
  );

/** The short words that run together with others. */
const SHORT = new Set(
  'a in on it is at to the and not of tip tips has was for its i we my off no an be up lens used'.split(' '),
);

/** Slips for "and" that are words too. */
const BETWEEN = new Set([
  'ad',
  'an',
  'nd',
  'amd',
  'abd',
  'sand',
  'adn',
  'ane',
  'ans',
  'end',
  'ant',
  'any',
  'nad',
  'ahd',
  'znd',
  'hand',
  'band',
]);

const RUN_ON = new Set(
  'at in on back been gone now not still ready clean calibrated wiped moved just over off failed passed cable lens base mirror cover calibration here down away fixed out dead broken misting fogging all being had'.split(
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
  /** Number words, which only `alternatives` arrives at. */
  readonly #numbers: readonly string[] = Object.keys(numberWords).filter((word) => word.length > 2);
  /** Every target less one letter → the targets. */
  readonly #less = new Map<string, string[]>();
  readonly #known = new Map<string, readonly string[]>();
  readonly #figures: FigureWords = {
    rank: (text) => this.#rank(text),
    english: isEnglish,
    takesNumber: (text) => TAKES_NUMBER.has(text) || this.#table.names(text),
  };

  constructor(table: Table) {
    this.#table = table;
    for (const [word, rank] of table.targets) {
      if (
        rank > 0 &&
        word.length >= SHORTEST &&
        word.length <= LONGEST &&
        /^[a-z']+$/.test(word) &&
        !NEVER.has(word)
      )
        this.#index(word);
    }
  }

  #index(word: string): void {
    const seen = new Set([word]);
    for (let i = 0; i < word.length; i++) seen.add(word.slice(0, i) + word.slice(i + 1));
    for (const key of seen) {
      const list = this.#less.get(key);
      if (list === undefined) this.#less.set(key, [word]);
      else list.push(word);
    }
  }

  /** The tokens with their spelling put right; offsets stay those of what was typed. */
  correct(typed: readonly Token[]): readonly Token[] {
    const tokens = withoutFigures(typed, this.#figures);
    let out: Token[] | null = null;
    for (let i = 0; i < tokens.length; i++) {
      const token = tokens[i];
      if (token === undefined) continue;
      const fixed = this.#fixed(tokens, i, token);
      if (fixed === null) {
        out?.push(token);
        continue;
      }
      out ??= tokens.slice(0, i);
      out.push(...fixed.tokens);
      i += fixed.taken - 1;
    }
    return out ?? tokens;
  }

  /** 2 to 5 for words of the lexicon, 1 for a known way of typing one, else 0. */
  #rank(text: string): number {
    if (this.#table.words.has(text)) return 2 + (this.#table.targets.get(text) ?? 0);
    return shorthandFor(text) !== undefined || this.#table.aliases.has(text) ? 1 : 0;
  }

  /** Every word that a token left alone may be a slip for, the nearest first; none where it is certainly meant. */
  alternatives(token: Token): readonly { readonly word: string; readonly near: number }[] {
    const { text } = token;
    if (token.kind !== 'word' || (this.#table.targets.get(text) ?? 0) > 1 || text.length > LONGEST) return [];
    const english = this.#table.words.has(text) || isEnglish(text);
    const found: { word: string; near: number }[] = [];
    const words = [
      ...this.#candidates(text),
      ...(text.length < 4 ? SHORTER : []),
      ...(english ? [] : this.#numbers),
      ...(english || text.length < 3 ? [] : ACTS),
    ];
    for (const word of words) {
      const near = closeness(text, word);
      if (near >= (english ? 3 : 2) && word !== text && !found.some((one) => one.word === word))
        found.push({ word, near });
    }
    found.sort((a, b) => b.near - a.near);
    return found.slice(0, 8);
  }

  #fixed(tokens: readonly Token[], i: number, token: Token): Fixed | null {
    const [before, next] = [tokens[i - 1], tokens[i + 1]];
    const shown = heard(tokens, i, token) ?? figured(token, before, next);
    if (shown !== null) return shown;
    if (!token.spaced && before?.kind === 'number' && /^(st|nd|rd|th)$/.test(token.text)) return null;
    if (token.kind !== 'word' || token.text.length < 2) return this.#joined(tokens, i, token);
    if (BETWEEN.has(token.text) && before?.kind === 'number' && next?.kind === 'number')
      return as(token, 'and');
    const known = this.isWord(token.text);
    const meant = byPlace(tokens, i, known);
    if (meant !== null) return as(token, meant);
    if (this.#runOn(token.text, next?.text))
      return { tokens: spread(token, [token.text.slice(0, -1), "'s"]), taken: 1 };
    if (known) return null;
    const placed = this.#placed(token.text, next, before);
    if (placed !== null) return as(token, placed);
    return this.#joined(tokens, i, token) ?? this.#meant(token, next);
  }

  /** The words meant by what is no word; letters that hang on a number are left to be an id's. */
  #meant(token: Token, next: Token | undefined): Fixed | null {
    if (token.text.length < SHORTEST && shorthandFor(token.text) === undefined) return null;
    const hangs = next?.kind === 'number' && !next.spaced;
    if (hangs && token.text.length <= 3 && !this.#near(token.text)) return null;
    const words = this.#remembered(token.text);
    return words.length === 0 ? null : { tokens: spread(token, words), taken: 1 };
  }

  #remembered(text: string): readonly string[] {
    const known = this.#known.get(text);
    if (known !== undefined) return known;
    const words = this.#words(text);
    if (this.#known.size > REMEMBERED) this.#known.clear();
    this.#known.set(text, words);
    return words;
  }

  #near(text: string): boolean {
    return this.#less.has(text);
  }

  /** True for a word of the lexicon, a name of the practice or an English word. */
  isWord(text: string): boolean {
    return this.#table.words.has(text) || isEnglish(text);
  }

  /** "wip ed" is one word where neither half is and the whole is. */
  #joined(
    tokens: readonly Token[],
    i: number,
    token: Token,
  ): { tokens: readonly Token[]; taken: number } | null {
    const next = tokens[i + 1];
    if (
      next?.kind !== 'word' ||
      token.kind !== 'word' ||
      !next.spaced ||
      token.text.length > 12 ||
      next.text.length > 12
    )
      return null;
    if (this.isWord(token.text) && this.isWord(next.text) && token.text.length > 1 && next.text.length > 1)
      return null;
    const whole = token.text + next.text;
    if (whole.length < 4 || (this.#table.targets.get(whole) ?? 0) < 2) return null;
    if (token.text.length > 1 && next.text.length > 1 && this.isWord(token.text) && next.text.length > 2)
      return null;
    return { tokens: [{ ...token, text: whole, end: next.end }], taken: 2 };
  }

  /** The words meant by what is no word; none where it cannot be told. */
  #words(text: string): readonly string[] {
    const calm = text.replace(/([a-z])\1{2,}/g, '$1$1');
    for (const held of [calm, text.replace(/([a-z])\1{2,}/g, '$1')]) {
      if (held !== text && (this.#table.words.has(held) || isEnglish(held))) return [held];
    }
    if (/^[a-z]+n't$|^(did|do|does|has|have|had|was|is|are|could|would|ca|wo)'t$/.test(text)) return ['not'];
    const short = shorthandFor(text) ?? this.#table.aliases.get(text);
    if (short !== undefined) return short.endsWith("'s") ? [short.slice(0, -2), "'s"] : [short];
    const owner = this.#owned(text);
    if (owner !== null) return owner;
    const one = this.#nearest(text);
    return one !== null ? [one] : this.#split(text);
  }

  /** What stands before a number is rather "tip", "load" or a room than nothing; between two numbers it is "and". */
  #placed(text: string, next: Token | undefined, before: Token | undefined): string | null {
    if (next?.kind !== 'number' || text.length > 6) return null;
    if (before?.kind === 'number' && text.length < 5 && closeness(text, 'and') >= 2) return 'and';
    if (!next.spaced && text.length < 3) return null;
    for (const noun of ['tip', 'tips', 'load'])
      if (closeness(text, noun) >= 2 && (text.length > 2 || noun === 'tip')) return noun;
    for (const noun of this.#table.roomWords) if (noun.length > 1 && closeness(text, noun) >= 3) return noun;
    return null;
  }

  /** "greens at north": a scanner's name with its 's run on. */
  #owned(text: string): readonly string[] | null {
    if (!text.endsWith('s') || text.length < 4) return null;
    const stem = text.slice(0, -1);
    return this.#table.owners.has(stem) ? [stem, "'s"] : null;
  }

  /** "greens at north": a plural that is English, but where the name with its 's must be meant. */
  #runOn(text: string, next: string | undefined): boolean {
    return (
      text.endsWith('s') &&
      next !== undefined &&
      RUN_ON.has(next) &&
      this.#table.owners.has(text.slice(0, -1)) &&
      !this.#table.words.has(text)
    );
  }

  #nearest(text: string): string | null {
    const least = text.length < 4 ? 4 : text.length < 6 ? 3 : 2;
    let best: string | null = null;
    let bestScore = 0;
    for (const word of this.#candidates(text)) {
      const near = closeness(text, word);
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
    for (const word of this.#candidates(text)) {
      const near = closeness(text, word) + Math.min(this.#table.targets.get(word) ?? 0, 3) / 10;
      if (word === best || near < score - 1.05 || near < 2) continue;
      if ((this.#table.targets.get(word) ?? 0) < 2 && near < score) continue;
      if (!this.#table.sameSense(word, best)) return true;
    }
    return false;
  }

  #candidates(text: string): ReadonlySet<string> {
    const found = new Set<string>(this.#less.get(text));
    for (let i = 0; i < text.length; i++) {
      for (const word of this.#less.get(text.slice(0, i) + text.slice(i + 1)) ?? []) found.add(word);
    }
    return found;
  }

  /** "inthe", "usedtip": two words run together. */
  #split(text: string): readonly string[] {
    if (text.length < 5) return [];
    for (let i = text.length - 2; i >= 2; i--) {
      const [head, tail] = [text.slice(0, i), text.slice(i)];
      if (SHORT.has(head) && SHORT.has(tail)) return [head, tail];
      const strong = [head, tail].some(
        (part) => (part.length > 3 || part === 'tip') && (this.#table.targets.get(part) ?? 0) >= 2,
      );
      if (Math.min(head.length, tail.length) < 4 && !SHORT.has(head.length < tail.length ? head : tail))
        continue;
      if (strong && this.#table.words.has(head) && this.#table.words.has(tail)) return [head, tail];
    }
    return [];
  }
}

/** Prepositions that an hour or a number may be run on to. */
const TAKES_NUMBER = new Set(
  'at to by till until til before after from for over under about around past no number and or is in on of with'.split(
    ' ',
  ),
);

const BEFORE_TO = new Set(
  'ok okay fine good safe ready going gonna need want able moved gone went taken took sent back over way off got ready alright happy'.split(
    ' ',
  ),
);

/** "2day", "ok 2 use": a figure typed for its sound. */
function figureWord(
  token: Token,
  before: Token | undefined,
  next: Token | undefined,
): { text: string; taken: number } | null {
  if (token.text !== '2' || token.kind !== 'number') return null;
  if (next?.kind === 'word' && !next.spaced) {
    const whole = { day: 'today', moro: 'tomorrow', morrow: 'tomorrow', moz: 'tomorrow', nite: 'tonight' }[
      next.text
    ];
    return whole === undefined ? null : { text: whole, taken: 2 };
  }
  if (before?.kind !== 'word' || next?.kind !== 'word' || !BEFORE_TO.has(before.text)) return null;
  return /^(min|mins|minutes|hours?|scans?|tips?|and|more|of|days?|pm|am|to|thru|through)$/.test(next.text)
    ? null
    : { text: 'to', taken: 1 };
}

interface Fixed {
  readonly tokens: readonly Token[];
  /** How many of the tokens typed it stands for. */
  readonly taken: number;
}

function as(token: Token, text: string): Fixed {
  return { tokens: [{ ...token, text }], taken: 1 };
}

/** A mark that was dictated, in the place of its words. */
function heard(tokens: readonly Token[], i: number, token: Token): Fixed | null {
  const spoken = spokenMark(token.text, tokens[i + 1]?.text);
  if (spoken === null) return null;
  const end = tokens[i + spoken.taken - 1]?.end ?? token.end;
  return { tokens: [{ ...token, text: spoken.mark, kind: 'mark', end }], taken: spoken.taken };
}

/** A figure typed for its sound, as the word. */
function figured(token: Token, before: Token | undefined, next: Token | undefined): Fixed | null {
  const figure = figureWord(token, before, next);
  if (figure === null) return null;
  const end = figure.taken === 2 ? (next?.end ?? token.end) : token.end;
  return { tokens: [{ ...token, text: figure.text, kind: 'word', end }], taken: figure.taken };
}

/** Punctuation that a phone wrote out when it was dictated. */
function spokenMark(text: string, next: string | undefined): { mark: string; taken: number } | null {
  if (text === 'question' && next === 'mark') return { mark: '?', taken: 2 };
  if (text === 'full' && next === 'stop') return { mark: '.', taken: 2 };
  if (text === 'exclamation' && (next === 'mark' || next === 'point')) return { mark: '!', taken: 2 };
  if (text === 'new' && (next === 'line' || next === 'paragraph')) return { mark: '\n', taken: 2 };
  return text === 'comma' ? { mark: ',', taken: 1 } : null;
}

function spread(token: Token, words: readonly string[]): Token[] {
  if (words.length === 1) return [{ ...token, text: words[0] ?? token.text }];
  const [head = '', tail = ''] = words;
  const cut = token.end - Math.min(tail === "'s" ? 1 : tail.length, token.end - token.start - 1);
  return [
    { ...token, text: head, end: cut },
    { ...token, text: tail, start: cut, spaced: tail !== "'s" },
  ];
}
