import type { Instant } from '../time/instant.ts';
import type { Archive } from './archive.ts';
import type { Entry } from './entry.ts';
import { itemsOf } from './items-of.ts';
import { indexOfPlace, inOrder, type Place } from './order.ts';
import { RecentEntries } from './recent-entries.ts';

/** Entries read from the archive at a time. */
const PAGE = 1_024;

/** Every entry that holds, in the record's order: the latest in memory, those before them in the archive. Reading is the same for all. */
export class KeptEntries {
  readonly #archive: Archive;
  /** The place of the last entry in the archive; `null`: none is. */
  through: Place | null = null;
  /** Entries that come after that place. */
  readonly recent = new RecentEntries();

  constructor(archive: Archive) {
    this.#archive = archive;
  }

  /** Entries from that instant to that one, both with it, in order. */
  *between(from: Instant, to: Instant): Generator<Entry> {
    const start = { when: from, turn: -1, index: -1 };
    if (this.through !== null && from <= this.through.when)
      for (const entry of this.archived(start)) {
        if (entry.when > to) return;
        yield entry;
      }
    const recent = this.recent.all;
    for (let index = indexOfPlace(recent, start); index < recent.length; index += 1) {
      const entry = recent[index];
      if (entry === undefined || entry.when > to) return;
      yield entry;
    }
  }

  *newestFirst(): Generator<Entry> {
    for (let index = this.recent.length - 1; index >= 0; index -= 1) {
      const entry = this.recent.all[index];
      if (entry !== undefined) yield entry;
    }
    if (this.through === null) return;
    let page = this.#archive.before(null, PAGE);
    while (page.length > 0) {
      yield* page;
      page = this.#archive.before(page.at(-1) ?? null, PAGE);
    }
  }

  /** Those in the archive behind that place (`null`: from the first), a page at a time. */
  *archived(from: Place | null): Generator<Entry> {
    let page = this.#archive.after(from, PAGE);
    while (page.length > 0) {
      yield* page;
      page = this.#archive.after(page.at(-1) ?? null, PAGE);
    }
  }

  placesAbout(item: string): readonly Place[] {
    const recent = this.recent.all.filter(({ fact }) => itemsOf(fact).includes(item));
    return this.through === null ? recent : [...this.#archive.placesAbout(item), ...recent];
  }

  entry(id: string): Entry | undefined {
    return this.recent.entry(id) ?? (this.through === null ? undefined : this.#archive.entry(id));
  }

  /** Decisions about the entry of that id. */
  about(id: string): readonly Entry[] {
    return [...(this.through === null ? [] : this.#archive.about(id)), ...this.recent.about(id)];
  }

  /** Entries of that original turn, by their place within it. */
  ofTurn(turn: number): readonly Entry[] {
    const archived = this.through === null ? [] : this.#archive.ofTurn(turn);
    return [...archived, ...this.recent.ofTurn(turn)].sort((one, other) => one.index - other.index);
  }

  /** Whether something is in the archive of what that turn said, or of what happened at one of those instants. */
  isFar(turn: number, whens: readonly Instant[]): boolean {
    const { through } = this;
    if (through === null) return false;
    return whens.some((when) => when <= through.when) || this.#archive.ofTurn(turn).length > 0;
  }

  /** Whether an entry of that place belongs into the archive. */
  isArchived(place: Place): boolean {
    return this.through !== null && inOrder(place, this.through) <= 0;
  }
}
