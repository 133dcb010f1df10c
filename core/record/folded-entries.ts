import type { Practice } from '../practice/practice.ts';
import type { Instant } from '../time/instant.ts';
import type { Archive } from './archive.ts';
import type { Entry } from './entry.ts';
import { KeptEntries } from './kept-entries.ts';
import { MemoryArchive } from './memory-archive.ts';
import { indexOfPlace, inOrder, type Place } from './order.ts';
import { retire } from './retire.ts';
import { RunningFold } from './running-fold.ts';
import type { SavedTimeline, TimelineOptions } from './saved-timeline.ts';
import { startState } from './start-state.ts';
import type { State } from './state.ts';
import { type PackedState, packState, unpackState } from './state-json.ts';

const KEEP = 4_000;
const MOST = 12_000;

/**
 * Entries that hold and the state they fold to, in memory or in the archive. What is put in or taken out somewhere folds
 * again from the nearest checkpoint before it, when the state is asked for; the result is always that of the whole fold.
 */
export class FoldedEntries {
  readonly kept: KeptEntries;
  readonly #practice: Practice;
  readonly #archive: Archive;
  readonly #keep: number;
  readonly #most: number;
  readonly #days: number | undefined;
  /** The state along the entries that are in memory. */
  readonly #fold: RunningFold;
  /** The earliest change among what is in the archive, to be folded again when the state is asked for. */
  #changed: Place | null = null;
  #refolded: Instant | null = null;

  /** `practice`: the practice file as it was when the record began. */
  constructor(practice: Practice, { archive = new MemoryArchive(), ...options }: TimelineOptions) {
    const { keep = KEEP, most = MOST, days } = options;
    this.#practice = practice;
    this.#archive = archive;
    this.#keep = keep;
    this.#most = Math.max(most, keep + 1);
    this.#days = days;
    this.kept = new KeptEntries(archive);
    this.#fold = new RunningFold(startState(practice, archive));
  }

  /** Goes on from what `save` gave; nothing may have been put in yet. */
  restore({ through, state, entries }: SavedTimeline): void {
    this.kept.through = through;
    this.#fold.startFrom(unpackState(state, this.#archive));
    for (const entry of entries) this.kept.recent.put(entry);
  }

  /** As `Timeline.save`. */
  save(cut?: Place | null): Omit<SavedTimeline, 'waiting'> {
    const { recent } = this.kept;
    this.#refold();
    if (cut === undefined) this.#archiveTo(recent.length - this.#keep);
    else if (cut !== null) this.#archiveTo(indexOfPlace(recent.all, behind(cut)));
    this.#fold.goBack(0);
    return {
      practice: this.#practice,
      state: packState(this.#fold.state),
      through: this.kept.through,
      entries: [...recent.all],
    };
  }

  get state(): State {
    this.#refold();
    this.#fold.foldTo(this.kept.recent.all, this.kept.recent.length);
    return this.#fold.state;
  }

  /** Another number whenever the state became another. */
  get changes(): number {
    return this.#fold.changes;
  }

  /** Since when what is in the archive was folded again since this was asked last; `null`: it was not. */
  takeRefolded(): Instant | null {
    const since = this.#refolded;
    this.#refolded = null;
    return since;
  }

  put(entry: Entry): void {
    const { recent } = this.kept;
    if (this.kept.isArchived(entry)) {
      this.#archive.putEntry(entry);
      this.#markChanged(entry);
      return;
    }
    const index = recent.indexOf(entry);
    this.#fold.goBack(index);
    recent.put(entry, index);
  }

  /** Takes out one that is kept. */
  drop(entry: Entry): void {
    const { recent } = this.kept;
    if (recent.entry(entry.id) !== entry) {
      this.#archive.dropEntry(entry);
      this.#markChanged(entry);
      return;
    }
    const index = recent.indexOf(entry);
    this.#fold.goBack(index);
    recent.remove(index);
  }

  /** Hands all but the latest entries to the archive where there are too many in memory. */
  trim(): void {
    const { length } = this.kept.recent;
    if (length > this.#most) this.#archiveTo(length - this.#keep);
  }

  #markChanged({ when, turn, index }: Entry): void {
    this.#fold.changed();
    const place = { when, turn, index };
    if (this.#changed === null || inOrder(place, this.#changed) < 0) this.#changed = place;
  }

  /** Hands the first so many entries in memory to the archive, and of the state after them what is only history. */
  #archiveTo(count: number): void {
    if (count <= 0) return;
    this.#refold();
    this.#fold.goBack(count);
    this.#fold.foldTo(this.kept.recent.all, count);
    const gone = this.kept.recent.shift(count);
    for (const entry of gone) this.#archive.putEntry(entry);
    const last = gone.at(-1);
    if (last === undefined) return;
    const through = { when: last.when, turn: last.turn, index: last.index };
    const { state } = this.#fold;
    retire(state, last.when, this.#days);
    this.#archive.keepBase(through, () => packState(state));
    this.kept.through = through;
    this.#fold.startFrom(state);
  }

  /**
   * Something in the archive has changed: everything from the nearest base before it is folded again, read from there a page
   * at a time, so that memory stays bounded however far back it is.
   */
  #refold(): void {
    const changed = this.#changed;
    if (changed === null) return;
    const { recent } = this.kept;
    this.#changed = null;
    this.#refolded = Math.min(changed.when, this.#refolded ?? changed.when);
    for (const entry of recent.shift(recent.length)) this.#archive.putEntry(entry);
    const base = this.#archive.baseBefore(changed);
    this.#archive.backTo(base?.number ?? 0);
    this.kept.through = base?.through ?? null;
    this.#fold.startFrom(
      base === null ? startState(this.#practice, this.#archive) : unpacked(base.state, this.#archive),
    );
    for (const entry of this.kept.archived(this.kept.through)) {
      recent.put(entry);
      this.trim();
    }
    for (const entry of recent.all) this.#archive.dropEntry(entry);
  }
}

/** The state of a base, as this very build packed it. */
function unpacked(state: unknown, archive: Archive): State {
  return unpackState(state as PackedState, archive);
}

function behind(place: Place): Place {
  return { ...place, index: place.index + 1 };
}
