import type { Names } from './names.ts';
import { type Entity, type EntityOf, hasTag, type Part, type TipsSaid } from './part.ts';
import { PREPOSITIONS, SKIPPED } from './prepositions.ts';
import type { Clock, TimeContext, TimeSpan } from './times/time-span.ts';

export type Mood = 'stated' | 'asked' | 'void' | 'planned' | 'doubted';

/** What earlier clauses of the note spoke of, for those that leave it out. */
export interface Memory {
  tips: TipsSaid | null;
  /** The tips spoken of before those, for "both". */
  tipsBefore?: TipsSaid | null;
  /** Ids of every tip that the note has named so far, for "the rest". */
  named: readonly string[];
  scanners: readonly string[];
  load: EntityOf<'load'> | null;
  autoclave: string | null;
  /** Items of the last fact, as `scanner:A` or `tip:4`. */
  items: readonly string[];
  by: string | null;
  /** Days said earlier in the note, for opening hours and bookings that say only the hour. */
  days: TimeSpan['days'];
  /** Sentence in which something was asked for. */
  asked?: number | undefined;
  /** The last clock time said with its hour, for "at half past". */
  clock?: Clock;
  /** How the last test or load came out. */
  outcome?: 'passed' | 'failed';
  /** Where the last fact that said so took place. */
  place?: { readonly site: string; readonly room?: string };
  /** Name of the frame that the last clause filled. */
  frame: string;
}

/** What one note's clauses share. */
export interface NoteScope {
  readonly names: Names;
  /** Sites that the chat room serves; empty where it is not listed. */
  readonly chatSites: readonly string[];
  readonly memory: Memory;
  readonly note: string;
  /** How many words of the whole note nobody knows or are of other things. */
  readonly strange: number;
  /** What the note's words, as typed and as put right, give of what patterns need (`needsMetIn`). */
  readonly needsMet: number;
  /** Who signed the note at its end. */
  signature: string | null;
  /** How many sentences it has. */
  sentences: number;
  /** True where the note looks like code, a listing or a link. */
  readonly listing: boolean;
  readonly time: TimeContext;
  /** A time at the head of the note: it covers every fact that says no other. */
  headTime: TimeSpan | null;
  /** The local date that a time looks back to; `null` where it lies ahead or says none. */
  readonly days: (span: TimeSpan) => string | null;
  readonly offset: (part: Part) => readonly [number, number];
}

/** What depends on a clause's parts alone, made when it is first asked for. */
export interface SharedByReadings {
  /** The words as one line, as the patterns of questions are written. */
  line?: string;
}

/** A stretch of the note that may say one thing. */
export class Clause {
  readonly parts: readonly Part[];
  readonly scope: NoteScope;
  readonly used: Set<number> = new Set();
  /** What is worked out once for all readings of the same parts. */
  readonly shared: SharedByReadings;

  constructor(parts: readonly Part[], scope: NoteScope, shared: SharedByReadings = {}) {
    this.parts = parts;
    this.scope = scope;
    this.shared = shared;
  }

  get names(): Names {
    return this.scope.names;
  }

  /** Place of the first part with this meaning, −1 where there is none. */
  /** "Did send", "managed to wipe", "I go now to wash": a base form carries what was, or will be, done. */
  get carries(): boolean {
    this.#carries ??= this.parts.some((part) => part.entity === undefined && CARRIERS.test(part.text));
    return this.#carries;
  }
  #carries: boolean | undefined;

  at(tag: string, from = 0): number {
    for (let i = from; i < this.parts.length; i++)
      if (hasTag(this.parts[i], tag) && !this.parts[i]?.entity) return i;
    return -1;
  }

  has(...tags: readonly string[]): boolean {
    return tags.some((tag) => this.at(tag) >= 0);
  }

  /** Place of the first part whose words are one of these. */
  word(words: RegExp, from = 0): number {
    for (let i = from; i < this.parts.length; i++) {
      const part = this.parts[i];
      if (part !== undefined && part.entity === undefined && words.test(part.text)) return i;
    }
    return -1;
  }

  /** As `form`, but taking nothing for what somebody means to do. */
  exactly(tag: string, forms: string): number {
    return this.parts.findIndex(
      (part) =>
        part.entity === undefined &&
        part.senses.some((s) => s.tag === tag && s.form !== '' && forms.includes(s.form)),
    );
  }

  /** True where the clause tells what somebody means to do: base forms then say what would be done. */
  get intends(): boolean {
    this.#intends ??=
      this.parts.some((part) => part.entity === undefined && hasTag(part, 'intend')) ||
      takesTomorrow(this.parts);
    return this.#intends;
  }
  #intends: boolean | undefined;

  /** Place of the first part with a sense of this tag in one of these forms. */
  form(tag: string, asked: string, from = 0): number {
    const forms = asked.includes('d') ? `${asked}g${this.intends || this.carries ? 'b' : ''}` : asked;
    for (let i = from; i < this.parts.length; i++) {
      const part = this.parts[i];
      if (part === undefined || part.entity) continue;
      if (part.senses.some((s) => s.tag === tag && s.form !== '' && forms.includes(s.form))) return i;
    }
    return -1;
  }

  use(...places: readonly number[]): void {
    for (const i of places) if (i >= 0) this.used.add(i);
  }

  useTags(...tags: readonly string[]): void {
    for (const [i, part] of this.parts.entries()) {
      if (part.entity === undefined && tags.some((tag) => hasTag(part, tag))) this.used.add(i);
    }
  }

  entities<K extends Entity['is']>(is: K): { at: number; entity: EntityOf<K> }[] {
    const found: { at: number; entity: EntityOf<K> }[] = [];
    for (const [at, part] of this.parts.entries()) {
      if (part.entity?.is === is) found.push({ at, entity: part.entity as EntityOf<K> });
    }
    return found;
  }

  first<K extends Entity['is']>(is: K): { at: number; entity: EntityOf<K> } | null {
    return this.entities(is)[0] ?? null;
  }

  /** The preposition that leads to a part, past articles and the like; empty where none does. */
  prep(at: number): string {
    for (let i = at - 1; i >= 0 && i >= at - 4; i--) {
      if (this.parts[i]?.entity !== undefined) return '';
      const text = this.parts[i]?.text ?? '';
      if (PREPOSITIONS.has(text)) return PREPOSITIONS.get(text) ?? '';
      if (!SKIPPED.has(text)) return '';
    }
    return '';
  }
}

const CARRIERS = /^(did|have to|had to|managed to|got to|remembered to|going|go)$/;

/** "Tomorrow at 10 I take Severn to Kestrel": the present of a day to come. */
function takesTomorrow(parts: readonly Part[]): boolean {
  const ahead = parts.some(
    (p) =>
      p.entity?.is === 'time' &&
      p.entity.span.days.some(({ first }) => first.sort === 'offset' && first.days > 0),
  );
  return (
    ahead &&
    parts.some(
      (p, i) =>
        p.entity === undefined &&
        /^(i|we)$/.test(p.text) &&
        parts[i + 1]?.entity === undefined &&
        parts[i + 1]?.senses.some((s) => s.sort === 'verb' && s.form === 'b') === true,
    )
  );
}
