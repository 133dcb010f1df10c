import { isEnglish } from './lexicon/english-words.ts';
import { shorthandFor } from './lexicon/words.ts';
import type { Table } from './table.ts';
import type { Token } from './token.ts';

/** Words that no rule should ever arrive at: each is too short, or as likely another word. */
const NEVER = new Set(['tins', 'ours', 'pass the']);
const SHORTEST = 3;
const LONGEST = 20;
/** Notes repeat the same slips; a longer memory than this is no use. */
const REMEMBERED = 4000;

const KEYS = ['qwertyuiop', 'asdfghjkl', 'zxcvbnm'];
const NEIGHBOURS = new Map<string, string>();
for (const [row, keys] of KEYS.entries()) {
  for (const [i, key] of [...keys].entries()) {
    const near = [keys[i - 1], keys[i + 1]];
    for (const other of [KEYS[row - 1], KEYS[row + 1]]) near.push(other?.[i - 1], other?.[i], other?.[i + 1]);
    NEIGHBOURS.set(key, near.filter((k) => k !== undefined).join(''));
  }
}

/** The short words that run together with others. */
const SHORT = new Set('a in on it is at to the and not of tip tips has was for its i we my off no an be up lens used'.split(' '));

const RUN_ON = new Set(
  'at in on back been gone now not still ready clean calibrated wiped moved just over off failed passed cable lens base mirror cover calibration here down away fixed out dead broken misting fogging all being had'.split(' '),
);


/**
 * Puts slips right, toward words of the lexicon and the practice's names only, and only where what was typed is no
 * word: one letter too many, too few, wrong or changed about; a space too many or too few; letters held down.
 * Numbers, ids and number words are never touched nor arrived at.
 */
export class Spelling {
  readonly #table: Table;
  /** Every target less one letter → the targets. */
  readonly #less = new Map<string, string[]>();
  readonly #known = new Map<string, readonly string[]>();

  constructor(table: Table) {
    this.#table = table;
    for (const [word, rank] of table.targets) {
      if (rank > 0 && word.length >= SHORTEST && word.length <= LONGEST && /^[a-z']+$/.test(word) && !NEVER.has(word)) this.#index(word);
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
  correct(tokens: readonly Token[]): readonly Token[] {
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

  #fixed(tokens: readonly Token[], i: number, token: Token): { tokens: readonly Token[]; taken: number } | null {
    const spoken = spokenMark(token.text, tokens[i + 1]?.text);
    if (spoken !== null) return { tokens: [{ ...token, text: spoken.mark, kind: 'mark', end: tokens[i + spoken.taken - 1]?.end ?? token.end }], taken: spoken.taken };
    const figure = figureWord(token, tokens[i - 1], tokens[i + 1]);
    if (figure !== null) return { tokens: [{ ...token, text: figure.text, kind: 'word', end: figure.taken === 2 ? (tokens[i + 1]?.end ?? token.end) : token.end }], taken: figure.taken };
    if (token.kind !== 'word' || token.text.length < 2) return this.#joined(tokens, i, token);
    if (this.#runOn(token.text, tokens[i + 1]?.text)) return { tokens: spread(token, [token.text.slice(0, -1), "'s"]), taken: 1 };
    if (this.#isWord(token.text)) return null;
    const joined = this.#joined(tokens, i, token);
    if (joined !== null) return joined;
    if (token.text.length < SHORTEST && shorthandFor(token.text) === undefined) return null;
    if (tokens[i + 1]?.kind === 'number' && tokens[i + 1]?.spaced === false && token.text.length <= 3 && !this.#near(token.text)) return null;
    let words = this.#known.get(token.text);
    if (words === undefined) {
      words = this.#words(token.text);
      if (this.#known.size > REMEMBERED) this.#known.clear();
      this.#known.set(token.text, words);
    }
    return words.length === 0 ? null : { tokens: spread(token, words), taken: 1 };
  }

  #near(text: string): boolean {
    return this.#less.has(text);
  }

  #isWord(text: string): boolean {
    return this.#table.words.has(text) || isEnglish(text);
  }

  /** "wip ed" is one word where neither half is and the whole is. */
  #joined(tokens: readonly Token[], i: number, token: Token): { tokens: readonly Token[]; taken: number } | null {
    const next = tokens[i + 1];
    if (next?.kind !== 'word' || token.kind !== 'word' || !next.spaced || token.text.length > 12 || next.text.length > 12) return null;
    if (this.#isWord(token.text) && this.#isWord(next.text) && token.text.length > 1 && next.text.length > 1) return null;
    const whole = token.text + next.text;
    if (whole.length < 4 || (this.#table.targets.get(whole) ?? 0) < 2) return null;
    if (token.text.length > 1 && next.text.length > 1 && this.#isWord(token.text) && next.text.length > 2) return null;
    return { tokens: [{ ...token, text: whole, end: next.end }], taken: 2 };
  }

  /** The words meant by what is no word; none where it cannot be told. */
  #words(text: string): readonly string[] {
    const calm = text.replace(/([a-z])\1{2,}/g, '$1$1');
    for (const held of [calm, text.replace(/([a-z])\1{2,}/g, '$1')]) {
      if (held !== text && (this.#table.words.has(held) || isEnglish(held))) return [held];
    }
    const short = shorthandFor(text);
    if (short !== undefined) return short.endsWith("'s") ? [short.slice(0, -2), "'s"] : [short];
    const owner = this.#owned(text);
    if (owner !== null) return owner;
    const one = this.#nearest(text);
    return one !== null ? [one] : this.#split(text);
  }

  /** "greens at north": a scanner's name with its 's run on. */
  #owned(text: string): readonly string[] | null {
    if (!text.endsWith('s') || text.length < 4) return null;
    const stem = text.slice(0, -1);
    return this.#table.owners.has(stem) ? [stem, "'s"] : null;
  }

  /** "greens at north": a plural that is English, but where the name with its 's must be meant. */
  #runOn(text: string, next: string | undefined): boolean {
    return text.endsWith('s') && next !== undefined && RUN_ON.has(next) && this.#table.owners.has(text.slice(0, -1)) && !this.#table.words.has(text);
  }

  #nearest(text: string): string | null {
    let best: string | null = null;
    let bestScore = 0;
    let tie = false;
    for (const word of this.#candidates(text)) {
      const score = closeness(text, word) * 10 + Math.min(this.#table.targets.get(word) ?? 0, 3);
      if (closeness(text, word) === 0 || (text.length < 4 && closeness(text, word) < 4)) continue;
      if (score > bestScore) {
        best = word;
        bestScore = score;
        tie = false;
      } else if (score === bestScore && word !== best) tie = true;
    }
    return tie && text.length < 5 ? null : best;
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
      const strong = [head, tail].some((part) => (part.length > 3 || part === 'tip') && (this.#table.targets.get(part) ?? 0) >= 2);
      if (Math.min(head.length, tail.length) < 4 && !SHORT.has(head.length < tail.length ? head : tail)) continue;
      if (strong && this.#table.words.has(head) && this.#table.words.has(tail)) return [head, tail];
    }
    return [];
  }
}

const BEFORE_TO = new Set('ok okay fine good safe ready going gonna need want able moved gone went taken took sent back over way off got ready alright happy'.split(' '));

/** "2day", "ok 2 use": a figure typed for its sound. */
function figureWord(token: Token, before: Token | undefined, next: Token | undefined): { text: string; taken: number } | null {
  if (token.text !== '2' || token.kind !== 'number') return null;
  if (next?.kind === 'word' && !next.spaced) {
    const whole = { day: 'today', moro: 'tomorrow', morrow: 'tomorrow', moz: 'tomorrow', nite: 'tonight' }[next.text];
    return whole === undefined ? null : { text: whole, taken: 2 };
  }
  if (before?.kind !== 'word' || next?.kind !== 'word' || !BEFORE_TO.has(before.text)) return null;
  return /^(min|mins|minutes|hours?|scans?|tips?|and|more|of|days?|pm|am)$/.test(next.text) ? null : { text: 'to', taken: 1 };
}

/** Punctuation that a phone wrote out when it was dictated. */
function spokenMark(text: string, next: string | undefined): { mark: string; taken: number } | null {
  if (text === 'question' && next === 'mark') return { mark: '?', taken: 2 };
  if (text === 'full' && next === 'stop') return { mark: '.', taken: 2 };
  if (text === 'exclamation' && (next === 'mark' || next === 'point')) return { mark: '!', taken: 2 };
  if (text === 'new' && (next === 'line' || next === 'paragraph')) return { mark: '\n', taken: 2 };
  return text === 'comma' ? { mark: ',', taken: 1 } : null;
}

/**
 * How near a slip is to a word: 4 letters changed about or one left out or doubled, 3 a neighbouring key, 2 another
 * letter too many or wrong, 0 more than one slip away.
 */
function closeness(typed: string, word: string): number {
  const gap = typed.length - word.length;
  let from = 0;
  while (from < typed.length && typed[from] === word[from]) from++;
  let end = 0;
  while (end < Math.min(typed.length, word.length) - from && typed[typed.length - 1 - end] === word[word.length - 1 - end]) end++;
  const [a, b] = [typed.length - from - end, word.length - from - end];
  if (gap === 0 && a === 2 && typed[from] === word[from + 1] && typed[from + 1] === word[from]) return 5;
  if (gap === -1 && a === 0 && b === 1) return from === 0 ? 2 : 4;
  if (gap === 1 && a === 1 && b === 0) return typed[from] === typed[from - 1] || typed[from] === typed[from + 1] ? 4 : 3;
  if (gap === 0 && a === 1 && b === 1) return NEIGHBOURS.get(word[from] ?? '')?.includes(typed[from] ?? '?') === true ? 3 : from === 0 && word.length < 6 ? 0 : 2;
  return 0;
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
