import { neededBy } from './needed.ts';

/** Things known by a pattern each, found by the words that their patterns need: few of them are tried on any one line. */
export class PatternsByNeed<T> {
  readonly #things: readonly T[];
  /** Word → places of the things whose pattern needs it. */
  readonly #byWord = new Map<string, number[]>();
  /** What stands inside a word cannot be looked up: run → the same. */
  readonly #byRun = new Map<string, number[]>();
  /** Those that need nothing in particular. */
  readonly #always: readonly number[];

  constructor(things: readonly T[], patternOf: (thing: T) => RegExp) {
    this.#things = things;
    const always: number[] = [];
    for (const [place, thing] of things.entries()) {
      const needed = neededBy(patternOf(thing));
      if (needed === null) always.push(place);
      for (const { text, whole } of needed ?? []) {
        const known = whole ? this.#byWord : this.#byRun;
        known.set(text, [...(known.get(text) ?? []), place]);
      }
    }
    this.#always = always;
  }

  /** Those whose patterns may match a line of small letters, in their order. */
  mayMatch(line: string): readonly T[] {
    const places = new Set(this.#always);
    for (const word of line.match(WORDS) ?? [])
      for (const place of this.#byWord.get(word) ?? []) places.add(place);
    for (const [run, all] of this.#byRun) if (line.includes(run)) for (const place of all) places.add(place);
    return this.#things.filter((_, place) => places.has(place));
  }
}

const WORDS = /[a-z]+|[0-9]+/g;
