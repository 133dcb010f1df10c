import type { LearnedWord, MakeReader, Reader } from '../language/read.ts';
import { parsePractice } from '../practice/parse.ts';
import type { Practice } from '../practice/practice.ts';

/** Readers take some tens of milliseconds to make: the last is kept for as long as names, tips and learned words stay the same. */
export class Readers {
  readonly #make: MakeReader;
  #parsed: { readonly file: string; readonly practice: Practice | null } | null = null;
  #last: { readonly key: string; readonly read: Reader } | null = null;

  constructor(make: MakeReader) {
    this.#make = make;
  }

  /** The practice in that file; `null` where it has mistakes. The last is kept: a practice is never changed, only replaced. */
  practiceIn(file: string): Practice | null {
    if (this.#parsed?.file !== file) {
      const parsed = parsePractice(file);
      this.#parsed = { file, practice: 'mistakes' in parsed ? null : parsed.practice };
    }
    return this.#parsed.practice;
  }

  /** A reader for that practice. `file`: the text it was read from; to its tips some may have been added since. */
  for(file: string, practice: Practice, learned: readonly LearnedWord[]): Reader {
    const tips = practice.tips.map(({ id, home }) => [id, home]);
    const key = JSON.stringify([file, tips, learned]);
    if (this.#last?.key !== key) this.#last = { key, read: this.#make(practice, learned) };
    return this.#last.read;
  }
}
