import type { Archive } from '../record/archive.ts';

/** Name in the archive. */
const WARNED = 'warned';
/** Kept at hand: those of some weeks, among which the findings of a turn and its corrections are. */
const AT_HAND = 4_000;

/** What was warned of for a snapshot. */
export interface SavedWarned {
  readonly keys: readonly string[];
  /** In the archive. */
  readonly old: number;
}

/** Findings that were warned of, by their keys: never again for the same cause. All are known, old ones in the archive. */
export class WarnedFindings {
  readonly #archive: Archive;
  readonly #atHand: number;
  readonly #keys = new Set<string>();
  #old = 0;

  constructor(archive: Archive, atHand = AT_HAND) {
    this.#archive = archive;
    this.#atHand = atHand;
  }

  save(): SavedWarned {
    return { keys: [...this.#keys], old: this.#old };
  }

  /** Takes in what `save` gave; nothing may have been added yet, and the archive as it was then. */
  restore({ keys, old }: SavedWarned): void {
    for (const key of keys) this.#keys.add(key);
    this.#old = old;
  }

  /** Whether any is in the archive. */
  get needsArchive(): boolean {
    return this.#old > 0;
  }

  has(key: string): boolean {
    return this.#keys.has(key) || (this.#old > 0 && this.#archive.value(WARNED, key) !== undefined);
  }

  add(key: string): void {
    if (this.#keys.has(key)) return;
    this.#keys.add(key);
    const [oldest] = this.#keys;
    if (this.#keys.size <= this.#atHand || oldest === undefined) return;
    this.#keys.delete(oldest);
    this.#archive.keepValue(WARNED, oldest, true);
    this.#old += 1;
  }
}
