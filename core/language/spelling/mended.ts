import type { Token } from '../token.ts';

/** What some tokens typed are read as. */
export interface Mended {
  readonly tokens: readonly Token[];
  /** How many of the tokens typed it stands for. */
  readonly taken: number;
}

/** One token read as one other word. */
export function as(token: Token, text: string): Mended {
  return { tokens: [{ ...token, text }], taken: 1 };
}

/** One token read as one word or two; the offsets stay within what was typed. */
export function spread(token: Token, words: readonly string[]): Mended {
  const [head = token.text, tail] = words;
  if (tail === undefined) return as(token, head);
  const cut = token.end - Math.min(tail === "'s" ? 1 : tail.length, token.end - token.start - 1);
  return {
    tokens: [
      { ...token, text: head, end: cut },
      { ...token, text: tail, start: cut, spaced: tail !== "'s" },
    ],
    taken: 1,
  };
}
