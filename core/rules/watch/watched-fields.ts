import type { Grounds, Part } from './grounds.ts';

/** Whoever is working something out just now; `null`: nobody, and nothing has to be noted. */
export interface Working {
  readonly grounds: Grounds | null;
}

interface Field extends Part {
  readonly name: string;
  value: unknown;
}

/**
 * The fields of one thing of the record (a scanner, a tip), each a part of its own: who reads one notes it. The record
 * changes things in place and never what a field holds, so a field is as it was while it holds the same.
 */
export class WatchedFields {
  readonly #working: Working;
  readonly #thing: () => object | undefined;
  readonly #fields = new Map<string, Field>();

  constructor(working: Working, thing: () => object | undefined) {
    this.#working = working;
    this.#thing = thing;
  }

  read(name: string): unknown {
    const value = valueIn(this.#thing(), name);
    const { grounds } = this.#working;
    if (grounds !== null) grounds.part(this.#field(name, value));
    return value;
  }

  /** The record has changed: which of the fields that anybody reads are others now. */
  refresh(): void {
    const thing = this.#thing();
    for (const field of this.#fields.values()) {
      const value = valueIn(thing, field.name);
      if (value === field.value) continue;
      field.value = value;
      field.turn += 1;
    }
  }

  #field(name: string, value: unknown): Field {
    let field = this.#fields.get(name);
    if (field === undefined) {
      field = { name, value, turn: 0, notedBy: null };
      this.#fields.set(name, field);
    }
    return field;
  }
}

function valueIn(thing: object | undefined, name: string): unknown {
  return (thing as Readonly<Record<string, unknown>> | undefined)?.[name];
}

type Watched = new (fields: WatchedFields) => object;

/** By the names of their fields: all scanners have the same. */
const kinds = new Map<string, Watched>();

/** Something that reads as `like` does, field by field, through `fields`. */
export function watchedLike<T extends object>(like: T, fields: WatchedFields): T {
  const names = Object.keys(like);
  const key = names.join();
  let Kind = kinds.get(key);
  if (Kind === undefined) {
    Kind = kindWith(names);
    kinds.set(key, Kind);
  }
  // It has every field of `like`, each of them giving what `like` gives.
  return new Kind(fields) as T;
}

function kindWith(names: readonly string[]): Watched {
  class Kind {
    readonly #fields: WatchedFields;
    constructor(fields: WatchedFields) {
      this.#fields = fields;
    }
    static read(of: Kind, name: string): unknown {
      return of.#fields.read(name);
    }
  }
  for (const name of names)
    Object.defineProperty(Kind.prototype, name, {
      enumerable: true,
      get(this: Kind) {
        return Kind.read(this, name);
      },
    });
  return Kind;
}
