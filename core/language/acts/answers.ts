import type { Clause } from '../clause.ts';
import type { Part } from '../part.ts';
import { calmed, textOf } from './act-text.ts';
import { COURTESY, DONE, NO, WITH_DONE, WITH_NO, WITH_YES, YES, YES_ALONE } from './answer-words.ts';

/** Bits of one kind → what each is for: `answers` by itself, or only `goes with` what does. */
class Bits {
  readonly #answers: ReadonlySet<string>;
  readonly #with: ReadonlySet<string>;
  readonly #longest: number;

  constructor(answers: string, goesWith: string) {
    this.#answers = new Set(answers.split('|'));
    this.#with = new Set([...goesWith.split('|'), ...COURTESY.split('|')]);
    this.#longest = Math.max(...[...this.#answers, ...this.#with].map((bit) => bit.split(' ').length));
  }

  /** True where the words are nothing but bits, one of which answers. Longer bits first, as people mean them. */
  answer(words: readonly string[]): boolean {
    let at = 0;
    let found = false;
    while (at < words.length) {
      let length = Math.min(this.#longest, words.length - at);
      let bit = '';
      for (; length > 0; length--) {
        bit = words.slice(at, at + length).join(' ');
        if (this.#answers.has(bit) || this.#with.has(bit)) break;
      }
      if (length === 0) return false;
      found ||= this.#answers.has(bit);
      at += length;
    }
    return found;
  }
}

const yes = new Bits(YES, WITH_YES);
const no = new Bits(NO, WITH_NO);
const done = new Bits(DONE, WITH_DONE);
const alone = new Set(YES_ALONE.split('|'));

/** The words that a bit begins or ends with; what an owner's 's hangs on stands apart among the parts. */
const EDGES: ReadonlySet<string> = new Set(
  [COURTESY, YES, WITH_YES, YES_ALONE, NO, WITH_NO, DONE, WITH_DONE].flatMap((bits) =>
    bits
      .split('|')
      .flatMap((bit) => bit.split(' '))
      .flatMap((word) => (word.endsWith("'s") ? [word, word.slice(0, -2), "'s"] : [word])),
  ),
);

/** False where the first or the last word is none of an answer's, as most notes show at once. */
export function mayAnswer(c: Clause): boolean {
  const first = c.parts.find((part) => !part.mark);
  const last = c.parts.findLast((part) => !part.mark);
  return first === undefined || last === undefined || (isEdge(c, first) && isEdge(c, last));
}

function isEdge(c: Clause, part: Part): boolean {
  if (EDGES.has(firstWord(textOf(part)))) return true;
  const typed = c.scope.note.slice(...c.scope.offset(part)).toLowerCase();
  return EDGES.has(typed) || (HELD_OR_MARKED.test(typed) && EDGES.has(firstWord(calmed(typed))));
}

/** Typed with letters held down or with marks: "yesss", "it’s". */
const HELD_OR_MARKED = /(.)\1\1|[^a-z0-9']/u;

function firstWord(text: string): string {
  const end = text.indexOf(' ');
  return end < 0 ? text : text.slice(0, end);
}

/** Longer than this is no bare answer. */
const MOST_WORDS = 9;

/** What a bare answer says; `null` where the words are none. "Well done" is praise. */
export function bareAnswer(text: string): 'yes' | 'no' | 'done' | null {
  const words = text.split(' ');
  if (text === '' || words.length > MOST_WORDS || /\bwell done\b/.test(text)) return null;
  if (done.answer(words)) return 'done';
  if (no.answer(words)) return 'no';
  return yes.answer(words) || alone.has(text) ? 'yes' : null;
}
