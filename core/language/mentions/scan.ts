import type { Names } from '../names.ts';
import type { Entity } from '../part.ts';
import type { Match, Table } from '../table.ts';
import type { Token } from '../token.ts';

/** The note as the mention finders see it. */
export interface Scan {
  readonly note: string;
  readonly tokens: readonly Token[];
  /** Folded, spelling put right; one for each token. */
  readonly texts: readonly string[];
  readonly table: Table;
  readonly names: Names;
  /** Longest phrase at each token, looked up once; `undefined` where not yet. */
  readonly matches: (Match | null | undefined)[];
  /** The same for mentions that say themselves what they are. */
  readonly anchored: (Found | null | undefined)[];
}

export interface Found {
  readonly entity: Entity;
  /** One past the last token. */
  readonly to: number;
}

export type Finder = (scan: Scan, at: number) => Found | null;

export function textAt(scan: Scan, at: number): string {
  return scan.texts[at] ?? '';
}

export function isNumber(scan: Scan, at: number): boolean {
  return scan.tokens[at]?.kind === 'number';
}

/** True where no space stands between this token and the one before. */
export function glued(scan: Scan, at: number): boolean {
  const token = scan.tokens[at];
  return token !== undefined && !token.spaced;
}

/** True where the note has a capital there. */
export function capital(scan: Scan, at: number): boolean {
  const token = scan.tokens[at];
  if (token === undefined) return false;
  const letter = scan.note[token.start] ?? '';
  return letter !== letter.toLowerCase();
}

/** The longest phrase of the table at a token. */
export function matchAt(scan: Scan, at: number): Match | null {
  const known = scan.matches[at];
  if (known !== undefined) return known;
  const match = at < scan.texts.length ? scan.table.longest(scan.texts, at) : null;
  if (at < scan.texts.length) scan.matches[at] = match;
  return match;
}

/** End of the longest phrase at `at` that has the tag, −1 when there is none. */
export function endOfTag(scan: Scan, at: number, tag: string): number {
  const match = matchAt(scan, at);
  return match?.senses.some((sense) => sense.tag === tag) ? match.to : -1;
}
