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
