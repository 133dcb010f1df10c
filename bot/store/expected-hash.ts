import type { Head } from './chain.ts';

/** A hash that was written down or posted, whole or its beginning, with the number of its line where that was noted too. */
export interface Expected {
  readonly n: number | null;
  readonly hash: string;
}

/** What became of it; `at`: the line that has it, or should. */
export interface Found {
  readonly what: 'stands' | 'is another' | 'is gone' | 'is nowhere';
  readonly at: number | null;
  /** The hash that is there now. */
  readonly hash: string | null;
}

/** So much of a hash has to be given at least: 64 bits, which nobody finds by trying. */
const LEAST = 16;

/** `12345:abc…` or `abc…`, as it was posted; `null` where it is neither. */
export function expectedIn(text: string): Expected | null {
  const match = /^(?:([1-9]\d{0,14}):)?([0-9a-f]{16,64})$/.exec(text.toLowerCase().replace(/\s/g, ''));
  const hash = match?.[2];
  if (hash === undefined || hash.length < LEAST) return null;
  return { n: match?.[1] === undefined ? null : Number(match[1]), hash };
}

/** Looks out for an expected hash while the chain is followed. */
export class Lookout {
  readonly #expected: Expected;
  #found: Found | null = null;

  constructor(expected: Expected) {
    this.#expected = expected;
  }

  pass({ n, hash }: Head): void {
    const { n: wanted, hash: start } = this.#expected;
    const fits = hash.startsWith(start);
    if (wanted === n) this.#found = { what: fits ? 'stands' : 'is another', at: n, hash };
    else if (wanted === null && fits) this.#found = { what: 'stands', at: n, hash };
  }

  found(): Found {
    const { n } = this.#expected;
    return this.#found ?? { what: n === null ? 'is nowhere' : 'is gone', at: n, hash: null };
  }
}
