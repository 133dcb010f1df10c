import type { Token } from '../token.ts';
import { NUMBER_WORDS, TENS_WORDS } from './words.ts';

/** The note's tokens with what is taken already. */
export interface Scan {
  readonly tokens: readonly Token[];
  readonly blocked: readonly boolean[];
}

/** Something read from the tokens up to (not with) `next`. */
export interface Parsed<T> {
  readonly value: T;
  readonly next: number;
}

/** The folded text of a token; empty past the ends and where the token is taken. */
export function textAt(scan: Scan, i: number): string {
  const token = scan.tokens[i];
  if (token === undefined || scan.blocked[i] === true) return '';
  return token.text;
}

/** The text where it follows its neighbour with no space between, else empty. */
export function gluedAt(scan: Scan, i: number): string {
  const token = scan.tokens[i];
  if (token === undefined || token.spaced) return '';
  return textAt(scan, i);
}

/** The digits of a number token, else empty. */
export function digitsAt(scan: Scan, i: number): string {
  const token = scan.tokens[i];
  if (token === undefined || token.kind !== 'number') return '';
  const text = textAt(scan, i);
  return text.length <= 4 ? text : '';
}

/** A whole number in figures (at most four) or in words up to fifty-nine. */
export function numberAt(scan: Scan, i: number): Parsed<number> | null {
  const digits = digitsAt(scan, i);
  if (digits !== '') return { value: Number(digits), next: i + 1 };
  const text = textAt(scan, i);
  const small = NUMBER_WORDS.get(text);
  if (small !== undefined) return { value: small, next: i + 1 };
  const tens = TENS_WORDS.get(text);
  if (tens === undefined) return null;
  const dash = textAt(scan, i + 1) === '-' ? i + 2 : i + 1;
  const ones = NUMBER_WORDS.get(textAt(scan, dash));
  return ones !== undefined && ones < 10
    ? { value: tens + ones, next: dash + 1 }
    : { value: tens, next: i + 1 };
}

/** "Elevenish" in one word. */
export function ishAt(scan: Scan, i: number): Parsed<number> | null {
  const text = textAt(scan, i);
  if (!text.endsWith('ish')) return null;
  const value = NUMBER_WORDS.get(text.slice(0, -3));
  return value === undefined ? null : { value, next: i + 1 };
}
