import { isEnglish } from './lexicon/english-words.ts';
import type { Form } from './lexicon/inflect.ts';
import { closeness } from './spelling/closeness.ts';

export type Sort = 'verb' | 'noun' | 'other' | 'mood' | 'glue' | 'name' | 'person' | 'number';

/** One meaning that a word or run of words may have. */
export interface Sense {
  readonly sort: Sort;
  /** What it means: a verb or noun of the lexicon, a mood, or what a name stands for. */
  readonly tag: string;
  readonly form: Form | '';
  /** Id of what a name stands for; a room's with its site, `site/room`; the value of a number word. */
  readonly ref: string;
}

/** What is known by a number. */
const NUMBERED = new Set(['tip', 'scanner', 'load', 'autoclave', 'roomword', 'room', 'booking']);

/** Moods in which nothing is stated. */
const TURNS: ReadonlySet<string> = new Set([
  'neg',
  'suppose',
  'doubt',
  'request',
  'intend',
  'oblige',
  'habit',
  'quote',
]);

const RANKS: Readonly<Record<Sort, number>> = {
  verb: 3,
  noun: 3,
  name: 3,
  mood: 3,
  glue: 1,
  other: 0,
  person: 0,
  number: 0,
};

const SMALL: ReadonlySet<Sort> = new Set(['glue', 'mood', 'verb', 'number']);

interface Node {
  next: Map<string, Node> | undefined;
  senses: Sense[] | undefined;
}

export interface Match {
  readonly senses: readonly Sense[];
  /** One past the last token. */
  readonly to: number;
}

/** Phrases and what they mean, found longest first in one walk over the tokens. */
export class Table {
  readonly #root: Node = { next: undefined, senses: undefined };
  /** Every single word that stands in some phrase. */
  readonly words = new Set<string>();
  /** Words that a slip may be put right toward, with how much they matter: 3 verbs, nouns, names and moods, 1 glue. */
  readonly targets = new Map<string, number>();
  /** First words of rooms that are numbered ("surg", "op"). */
  readonly roomWords = new Set<string>();
  /** First words → the tags of their phrases, of those that slips were asked of; emptied when a phrase is added. */
  readonly #tags = new Map<string, ReadonlySet<string>>();
  /** Names of one word that may own ("greens" for "green's"). */
  readonly owners = new Set<string>();

  /** How words are typed in a hurry → the word. */
  readonly aliases = new Map<string, string>();

  /** Keeps a way of typing a word, unless it is a word itself. */
  alias(typed: string, word: string): void {
    if (!this.words.has(typed) && !this.aliases.has(typed)) this.aliases.set(typed, word);
  }

  add(tokens: readonly string[], sense: Sense, target = true): void {
    const rank = target ? RANKS[sense.sort] : 0;
    if (this.#tags.size > 0) this.#tags.clear();
    let node = this.#root;
    for (const text of tokens) {
      this.words.add(text);
      if (rank > 0 && rank > (this.targets.get(text) ?? 0)) this.targets.set(text, rank);
      node.next ??= new Map();
      let step = node.next.get(text);
      if (step === undefined) {
        step = { next: undefined, senses: undefined };
        node.next.set(text, step);
      }
      node = step;
    }
    if (node === this.#root) return;
    const [only, more] = tokens;
    if (sense.tag === 'room' && only !== undefined && /^\d+$/.test(more ?? '')) this.roomWords.add(only);
    if (sense.sort === 'name' && only !== undefined && more === undefined && only.length > 2)
      this.owners.add(only);
    node.senses ??= [];
    const known = node.senses.some(
      (s) => s.tag === sense.tag && s.form === sense.form && s.ref === sense.ref && s.sort === sense.sort,
    );
    if (!known) node.senses.push(sense);
  }

  /** True for a single word that a number may be run on to: a verb, a room, and what is numbered. */
  counts(word: string): boolean {
    const senses = this.#root.next?.get(word)?.senses;
    return this.roomWords.has(word) || senses?.some((s) => s.sort === 'verb' || NUMBERED.has(s.tag)) === true;
  }

  /** True for a word that alone turns what is said about. */
  turns(word: string, moods: ReadonlySet<string> = TURNS): boolean {
    return this.#root.next?.get(word)?.senses?.some((s) => s.sort === 'mood' && moods.has(s.tag)) === true;
  }

  /** True for a word that tells nothing by itself ("back", "front"). */
  isGlue(word: string): boolean {
    return this.#root.next?.get(word)?.senses?.some((s) => s.sort === 'glue') === true;
  }

  /** True for a small word of English ("at", "do", "in"): an id that is one is never typed for what it stands for. */
  isSmall(word: string): boolean {
    const senses = this.#root.next?.get(word)?.senses;
    return word.length <= 3 && senses?.some((s) => SMALL.has(s.sort)) === true;
  }

  /** True where two words have a meaning in common. */
  sameSense(a: string, b: string): boolean {
    const other = this.#tagsFrom(b);
    for (const tag of this.#tagsFrom(a)) if (other.has(tag)) return true;
    return false;
  }

  /** The tags of every phrase that begins with a word: asked of slips alone, so gathered when it is. */
  #tagsFrom(word: string): ReadonlySet<string> {
    const known = this.#tags.get(word);
    if (known !== undefined) return known;
    const tags = new Set<string>();
    const first = this.#root.next?.get(word);
    if (first === undefined) return tags;
    gatherTags(first, tags);
    this.#tags.set(word, tags);
    return tags;
  }

  /** The longest phrase that starts at `from`, `null` when none does. */
  longest(texts: readonly string[], from: number): Match | null {
    let node: Node = this.#root;
    let found: Match | null = null;
    for (let at = from; at < texts.length; at++) {
      const text: string = texts[at] ?? '';
      const step: Node | undefined =
        node.next?.get(text) ?? (at > from ? this.#slipped(node, text, at - from) : undefined);
      if (step === undefined) break;
      node = step;
      if (node.senses !== undefined) found = { senses: node.senses, to: at + 1 };
    }
    return found;
  }

  /** Inside a phrase that has begun, a word that is none may be a slip of the one that goes on with it. */
  #slipped(node: Node, text: string, depth: number): Node | undefined {
    if (node.next === undefined || text.length < 2 || this.words.has(text) || !/^[a-z']+$/.test(text))
      return undefined;
    const english = isEnglish(text);
    if (english && depth < 2) return undefined;
    let best: Node | undefined;
    let score = english ? 3.5 : text.length < 4 ? 3 : 2;
    for (const [word, step] of node.next) {
      if (word.length < 2 || Math.abs(word.length - text.length) > 1) continue;
      const near = closeness(text, word);
      if (near > score || (near === score && best === undefined)) {
        best = step;
        score = near;
      }
    }
    return best;
  }
}

function gatherTags(node: Node, tags: Set<string>): void {
  for (const sense of node.senses ?? []) tags.add(sense.sort === 'glue' ? 'glue' : sense.tag);
  for (const next of node.next?.values() ?? []) gatherTags(next, tags);
}
