/** One item of a pattern. */
export type Item = (
  | { readonly is: 'char'; readonly char: string }
  /** Where a word ends or the text does. */
  | { readonly is: 'edge' }
  /** Some character, or something that must not follow. */
  | { readonly is: 'any' }
  | { readonly is: 'group'; readonly either: readonly Sequence[] }
) & { readonly often: Often };

export type Sequence = readonly Item[];

/** How often an item must stand. */
export type Often = 'once' | 'more' | 'perhaps';

/**
 * A pattern's source as a tree, in small letters. Knows what ours are written with: literals, classes, groups, looks
 * ahead and behind, alternatives, quantifiers.
 */
export function treeOf({ source }: RegExp): readonly Sequence[] {
  return new Source(source.toLowerCase()).alternatives();
}

class Source {
  readonly #text: string;
  #at = 0;

  constructor(text: string) {
    this.#text = text;
  }

  alternatives(): readonly Sequence[] {
    const either: Sequence[] = [];
    for (;;) {
      either.push(this.#sequence());
      if (this.#text[this.#at] !== '|') return either;
      this.#at++;
    }
  }

  #sequence(): Sequence {
    const items: Item[] = [];
    while (this.#at < this.#text.length && !/[|)]/.test(this.#text[this.#at] ?? '')) {
      const item = this.#item();
      items.push({ ...item, often: this.#often() });
    }
    return items;
  }

  #item(): Item {
    const char = this.#text[this.#at] ?? '';
    this.#at++;
    if (char === '(') return this.#group();
    if (char === '[') return this.#class();
    if (char === '\\') return this.#escaped();
    if (char === '^' || char === '$') return { is: 'edge', often: 'once' };
    return char === '.' ? ANY : { is: 'char', char, often: 'once' };
  }

  #class(): Item {
    while (this.#text[this.#at] !== ']') this.#at += this.#text[this.#at] === '\\' ? 2 : 1;
    this.#at++;
    return ANY;
  }

  #escaped(): Item {
    const char = this.#text[this.#at] ?? '';
    this.#at++;
    if (char === 'b') return { is: 'edge', often: 'once' };
    if (/[pux]/.test(char) && this.#text[this.#at] === '{') this.#at = this.#text.indexOf('}', this.#at) + 1;
    return /[a-z0-9]/.test(char) ? ANY : { is: 'char', char, often: 'once' };
  }

  #group(): Item {
    const [sort = ''] = /^\?(?:<?[=!]|:|<\w+>)/.exec(this.#text.slice(this.#at)) ?? [];
    this.#at += sort.length;
    const either = this.alternatives();
    this.#at++;
    // What is looked for and not taken says nothing of what stands beside it.
    return /[=!]$/.test(sort) ? ANY : { is: 'group', either, often: 'once' };
  }

  #often(): Often {
    const [all, least] = /^(?:[*?+]|\{(\d+)(?:,\d*)?\})\??/.exec(this.#text.slice(this.#at)) ?? [];
    if (all === undefined) return 'once';
    this.#at += all.length;
    return /^[*?]/.test(all) || least === '0' ? 'perhaps' : 'more';
  }
}

const ANY: Item = { is: 'any', often: 'once' };
