import type { Token } from '../token.ts';

/** The letters below each figure of a keyboard (ISO 9995, QWERTY), from memory. */
const BELOW: Readonly<Record<string, string>> = {
  '1': 'q',
  '2': 'qw',
  '3': 'we',
  '4': 'er',
  '5': 'rt',
  '6': 'ty',
  '7': 'yu',
  '8': 'ui',
  '9': 'io',
  '0': 'op',
};

/** What must be known of words to tell a slip from an id or a run-on. */
export interface FigureWords {
  /** How much a word of the lexicon or of the practice's names matters, or a known way of typing one; 0 for any other. */
  readonly rank: (text: string) => number;
  readonly english: (text: string) => boolean;
  /** True for what a number may hang on: "tip4", "at6", "surgery2". */
  readonly takesNumber: (text: string) => boolean;
}

/** What hangs on a number: units, ordinals, "3ish", "2day". */
const HANGS = /^(am|pm|a|p|st|nd|rd|th|h|hr|hrs|min|mins|sec|secs|day|moro|morrow|moz|nite|ish|x|ml|mm|cm)$/;

/**
 * The tokens with every word put together again that a figure was struck into ("t6he", "st3rile", "ti0"). A figure is a
 * slip only beside or in the place of a letter that it lies next to, and only where a known word comes of it; "tip4sent",
 * "T-04", "room2" and "5min" stay as they are.
 */
export function withoutFigures(tokens: readonly Token[], words: FigureWords): readonly Token[] {
  let out: Token[] | null = null;
  let copied = 0;
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    if (token?.kind !== 'number' || token.text.length !== 1) continue;
    const at = tokens[i - 1]?.kind === 'word' && !token.spaced ? i - 1 : i;
    if (at === i && (tokens[i + 1]?.kind !== 'word' || tokens[i + 1]?.spaced)) continue;
    const mended = mendedAt(tokens, at, words);
    if (mended === null) continue;
    out ??= [];
    out.push(...tokens.slice(copied, at), mended.token);
    copied = at + mended.taken;
    i = copied - 1;
  }
  return out === null ? tokens : [...out, ...tokens.slice(copied)];
}

interface Mended {
  readonly token: Token;
  readonly taken: number;
}

/** A word that begins at `at` with one figure in it. */
function mendedAt(tokens: readonly Token[], at: number, words: FigureWords): Mended | null {
  const first = tokens[at];
  if (first === undefined || first.kind === 'mark' || joins(tokens, at)) return null;
  const head = first.kind === 'word' ? first : undefined;
  const figure = head === undefined ? first : glued(tokens, at + 1, 'number');
  if (figure === undefined || BELOW[figure.text] === undefined) return null;
  const after = at + (head === undefined ? 1 : 2);
  const tail = glued(tokens, after, 'word');
  const used = tail === undefined || tail.text === "'s" ? undefined : tail;
  const taken = after - at + (used === undefined ? 0 : 1);
  if (glued(tokens, at + taken, 'number') !== undefined) return null;
  const next = tokens[at + taken];
  const text = wordOf(head?.text ?? '', figure.text, used?.text ?? '', next, words);
  if (text === null) return null;
  const end = (used ?? figure).end;
  return { token: { text, start: first.start, end, kind: 'word', spaced: first.spaced }, taken };
}

/** True where the run began before: what stands there is the rest of it. */
function joins(tokens: readonly Token[], at: number): boolean {
  const before = tokens[at - 1];
  if (before === undefined || tokens[at]?.spaced !== false) return false;
  return before.kind !== 'mark' || /^[-.:/#]$/.test(before.text);
}

function glued(tokens: readonly Token[], at: number, kind: Token['kind']): Token | undefined {
  const token = tokens[at];
  return token?.kind === kind && !token.spaced ? token : undefined;
}

/** The one word meant, `null` where none or several could be. */
function wordOf(
  head: string,
  figure: string,
  tail: string,
  next: Token | undefined,
  words: FigureWords,
): string | null {
  if (head === '') return leading(figure, tail, words);
  if (tail === '') return trailing(head, figure, next, words);
  const [whole] = without(head, figure, tail);
  if (whole !== undefined && whole.length > 2 && words.rank(whole) > 2) return whole;
  return one([...without(head, figure, tail), ...instead(head, figure, tail)], words);
}

/** "8sed", "6ook": a first letter that is a figure; the rest must be no word of ours. */
function leading(figure: string, tail: string, words: FigureWords): string | null {
  if (tail === '' || HANGS.test(tail) || words.rank(tail) > 0) return null;
  return ours(instead('', figure, tail), words);
}

/** "Ti0 4", "read7", "sure4": but "tip4", "at6" and "surgery2" are two words run together. */
function trailing(head: string, figure: string, next: Token | undefined, words: FigureWords): string | null {
  const several = next?.kind === 'number';
  if (words.rank(head) === 0 && !words.english(head)) return one(instead(head, figure, ''), words);
  if (words.takesNumber(head)) return several ? only(without(head, figure, '')) : null;
  return one([...without(head, figure, ''), ...instead(head, figure, '')], words);
}

/** The figure as one key too many, beside the letter before or after it. */
function without(head: string, figure: string, tail: string): readonly string[] {
  const keys = BELOW[figure] ?? '';
  const beside = [head.at(-1), tail[0]].some((letter) => letter !== undefined && keys.includes(letter));
  return beside ? [head + tail] : [];
}

/** The figure as a letter's neighbour. */
function instead(head: string, figure: string, tail: string): readonly string[] {
  return [...(BELOW[figure] ?? '')].map((letter) => head + letter + tail);
}

/** A word of ours before one of English alone. */
function one(found: readonly string[], words: FigureWords): string | null {
  const long = [...new Set(found)].filter((text) => text.length > 2);
  return (
    ours(long, words) ?? (long.some((text) => words.rank(text) > 0) ? null : only(long.filter(words.english)))
  );
}

/** The one that matters most of what is known. */
function ours(found: readonly string[], words: FigureWords): string | null {
  const most = Math.max(0, ...found.map(words.rank));
  return most === 0 ? null : only(found.filter((text) => words.rank(text) === most));
}

function only(found: readonly string[]): string | null {
  const [first, second] = found;
  return first === undefined || second !== undefined ? null : first;
}
