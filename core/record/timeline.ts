import type { Practice } from '../practice/practice.ts';
import type { Instant } from '../time/instant.ts';
import type { Archive } from './archive.ts';
import { aboutOf, type Entry } from './entry.ts';
import { itemsOf } from './items-of.ts';
import { MemoryArchive } from './memory-archive.ts';
import { indexOfPlace, inOrder, type Place } from './order.ts';
import { RecentEntries } from './recent-entries.ts';
import { retire } from './retire.ts';
import { RunningFold } from './running-fold.ts';
import { startState } from './start-state.ts';
import type { State } from './state.ts';
import { type PackedState, packState, unpackState } from './state-json.ts';
import { WaitingDecisions } from './waiting-decisions.ts';

/** Where a timeline keeps what is only history, and how much it keeps at hand. */
export interface TimelineOptions {
  readonly archive?: Archive;
  /** Entries that stay in memory when the rest goes to the archive: corrections of some weeks refold from here. */
  readonly keep?: number;
  /** More entries than this in memory, and all but `keep` go. */
  readonly most?: number;
  /** Days of history that stay in the state; see `retire`. */
  readonly days?: number;
}

const KEEP = 4_000;
const MOST = 12_000;
/** Entries read from the archive at a time. */
const PAGE = 1_024;

/** A timeline for a snapshot: a state, and what comes after it. The rest is in its archive. */
export interface SavedTimeline {
  /** The practice file as it was when the record began. */
  readonly practice: Practice;
  readonly state: PackedState;
  /** The place up to which everything is in the state; `null`: nothing yet. */
  readonly through: Place | null;
  readonly entries: readonly Entry[];
  /** Decisions about entries that do not hold just now. */
  readonly waiting: readonly Entry[];
}

/**
 * Every entry that holds, in the record's order, and the state they fold to. The latest are in memory, those before them in
 * the archive. Corrections refold from the nearest checkpoint before the earliest change, in memory or in the archive; the
 * result is always that of the whole fold.
 */
export class Timeline {
  readonly #practice: Practice;
  readonly #archive: Archive;
  readonly #keep: number;
  readonly #most: number;
  readonly #days: number | undefined;
  /** The place of the last entry in the archive; `null`: none is. */
  #through: Place | null = null;
  /** Entries that hold and come after that place, and the state along them. */
  readonly #recent = new RecentEntries();
  readonly #fold: RunningFold;
  readonly #waiting = new WaitingDecisions();
  /** The earliest change among what is in the archive, to be folded again when the state is asked for. */
  #changed: Place | null = null;
  #refolded: Instant | null = null;

  /** `practice`: the practice file as it was when the record began. */
  constructor(practice: Practice, options: TimelineOptions = {}) {
    const { archive = new MemoryArchive(), keep = KEEP, most = MOST, days } = options;
    this.#practice = practice;
    this.#archive = archive;
    this.#keep = keep;
    this.#most = Math.max(most, keep + 1);
    this.#days = days;
    this.#fold = new RunningFold(startState(practice, archive));
  }

  /** The timeline that `save` gave, on the archive that it was on, as it was then. */
  static restore(saved: SavedTimeline, options: TimelineOptions & { readonly archive: Archive }): Timeline {
    const timeline = new Timeline(saved.practice, options);
    timeline.#through = saved.through;
    timeline.#fold.startFrom(unpackState(saved.state, options.archive));
    for (const entry of saved.entries) timeline.#recent.put(entry);
    for (const entry of saved.waiting) timeline.#waiting.add(entry);
    return timeline;
  }

  /**
   * This timeline for a snapshot; all but its last entries go to the archive, whose keeper must keep it as it is now beside
   * the snapshot. `cut`: the place up to which they go, as an earlier call gave it in `through`.
   */
  save(cut?: Place | null): SavedTimeline {
    this.#refold();
    if (cut === undefined) this.#archiveTo(this.#recent.length - this.#keep);
    else if (cut !== null) this.#archiveTo(indexOfPlace(this.#recent.all, behind(cut)));
    this.#fold.goBack(0);
    return {
      practice: this.#practice,
      state: packState(this.#fold.state),
      through: this.#through,
      entries: [...this.#recent.all],
      waiting: this.#waiting.all(),
    };
  }

  /** The state now. Take it anew after each change: going back makes another one. It is to be read, never written. */
  get state(): State {
    this.#refold();
    this.#fold.foldTo(this.#recent.all, this.#recent.length);
    return this.#fold.state;
  }

  /** Another number whenever the state became another: what was worked out from it at the same number still holds. */
  get changes(): number {
    return this.#fold.changes;
  }

  /** Every entry that holds, in order: those of the archive are read. */
  get entries(): readonly Entry[] {
    return [...this.between(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY)];
  }

  /** Entries that hold from that instant to that one, both with it, in order. */
  *between(from: Instant, to: Instant): Generator<Entry> {
    const start = { when: from, turn: -1, index: -1 };
    if (this.#through !== null && from <= this.#through.when)
      for (const entry of this.#archived(start)) {
        if (entry.when > to) return;
        yield entry;
      }
    const recent = this.#recent.all;
    for (let index = indexOfPlace(recent, start); index < recent.length; index += 1) {
      const entry = recent[index];
      if (entry === undefined || entry.when > to) return;
      yield entry;
    }
  }

  /** Entries that hold, the latest first. */
  *newestFirst(): Generator<Entry> {
    for (let index = this.#recent.length - 1; index >= 0; index -= 1) {
      const entry = this.#recent.all[index];
      if (entry !== undefined) yield entry;
    }
    if (this.#through === null) return;
    let page = this.#archive.before(null, PAGE);
    while (page.length > 0) {
      yield* page;
      page = this.#archive.before(page.at(-1) ?? null, PAGE);
    }
  }

  /** Places of entries that hold and speak of an item, in order. */
  placesAbout(item: string): readonly Place[] {
    const recent = this.#recent.all.filter(({ fact }) => itemsOf(fact).includes(item));
    return this.#through === null ? recent : [...this.#archive.placesAbout(item), ...recent];
  }

  /** Whether anything is in the archive. */
  get needsArchive(): boolean {
    return this.#through !== null;
  }

  /** How many entries are kept in memory. */
  get size(): number {
    return this.#recent.length;
  }

  /** The entry of that id, where it holds. */
  entry(id: string): Entry | undefined {
    return this.#recent.entry(id) ?? (this.#through === null ? undefined : this.#archive.entry(id));
  }

  /** Entries of that original turn that hold, by their place within it. */
  ofTurn(turn: number): readonly Entry[] {
    const recent = this.#recent.ofTurn(turn);
    const archived = this.#through === null ? [] : this.#archive.ofTurn(turn);
    return [...archived, ...recent].sort((one, other) => one.index - other.index);
  }

  /** Whether something is in the archive of what that turn said, or of what happened at one of those instants. */
  isFar(turn: number, whens: readonly Instant[] = []): boolean {
    const through = this.#through;
    if (through === null) return false;
    return whens.some((when) => when <= through.when) || this.#archive.ofTurn(turn).length > 0;
  }

  /**
   * Since when what is in the archive was folded again since this was asked last; `null`: it was not. What is only history
   * may have changed from then on.
   */
  takeRefolded(): Instant | null {
    const since = this.#refolded;
    this.#refolded = null;
    return since;
  }

  /** Adds entries, in whatever order they come. One whose id is there already changes nothing. */
  add(entries: readonly Entry[]): void {
    for (const each of entries) {
      const entry = each.when > each.noted ? { ...each, when: each.noted } : each;
      const about = aboutOf(entry);
      if (about === null || this.entry(about) !== undefined) this.#insert(entry);
      else if (this.entry(entry.id) === undefined) this.#waiting.add(entry);
    }
    if (this.#recent.length > this.#most) this.#archiveTo(this.#recent.length - this.#keep);
  }

  /**
   * Sets aside everything that a turn said (undo, redaction), with the decisions about it, and returns those entries.
   * `turn` is that of the ORIGINAL note.
   */
  setAside(turn: number): readonly Entry[] {
    const gone = this.ofTurn(turn);
    for (const entry of gone) this.#remove(entry);
    // What the turn itself decided about an entry does not wait for it to come back.
    for (const entry of gone) this.#waiting.drop(entry);
    return gone;
  }

  /** Puts entries in the place of what that turn said (an edit, "sorry, tip 5"): they keep its number. */
  replace(turn: number, entries: readonly Entry[]): void {
    this.setAside(turn);
    this.add(entries.map((each) => ({ ...each, turn, id: `${turn}.${each.index}` })));
  }

  *#archived(from: Place | null): Generator<Entry> {
    let page = this.#archive.after(from, PAGE);
    while (page.length > 0) {
      yield* page;
      page = this.#archive.after(page.at(-1) ?? null, PAGE);
    }
  }

  #insert(entry: Entry): void {
    if (this.entry(entry.id) !== undefined) return;
    if (this.#through !== null && inOrder(entry, this.#through) <= 0) {
      this.#archive.putEntry(entry);
      this.#markChanged(entry);
    } else {
      const index = this.#recent.indexOf(entry);
      this.#fold.goBack(index);
      this.#recent.put(entry, index);
    }
    for (const decision of this.#waiting.take(entry.id)) this.#insert(decision);
  }

  #remove(entry: Entry): void {
    if (this.#recent.entry(entry.id) === entry) {
      const index = this.#recent.indexOf(entry);
      this.#fold.goBack(index);
      this.#recent.remove(index);
    } else {
      if (this.entry(entry.id) === undefined) return;
      this.#archive.dropEntry(entry);
      this.#markChanged(entry);
    }
    const archived = this.#through === null ? [] : this.#archive.about(entry.id);
    for (const decision of [...archived, ...this.#recent.about(entry.id)]) {
      this.#remove(decision);
      this.#waiting.add(decision);
    }
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
    this.#fold.foldTo(this.#recent.all, count);
    const gone = this.#recent.shift(count);
    for (const entry of gone) this.#archive.putEntry(entry);
    const last = gone.at(-1);
    if (last === undefined) return;
    const through = { when: last.when, turn: last.turn, index: last.index };
    const { state } = this.#fold;
    retire(state, last.when, this.#days);
    this.#archive.keepBase(through, () => packState(state));
    this.#through = through;
    this.#fold.startFrom(state);
  }

  /**
   * Something in the archive has changed: everything from the nearest base before it is folded again, read from there a page
   * at a time, so that memory stays bounded however far back it is.
   */
  #refold(): void {
    const changed = this.#changed;
    if (changed === null) return;
    this.#changed = null;
    this.#refolded = Math.min(changed.when, this.#refolded ?? changed.when);
    for (const entry of this.#recent.shift(this.#recent.length)) this.#archive.putEntry(entry);
    const base = this.#archive.baseBefore(changed);
    this.#archive.backTo(base?.number ?? 0);
    this.#through = base?.through ?? null;
    this.#fold.startFrom(
      base === null ? startState(this.#practice, this.#archive) : unpacked(base.state, this.#archive),
    );
    for (const entry of this.#archived(this.#through)) {
      this.#recent.put(entry);
      if (this.#recent.length > this.#most) this.#archiveTo(this.#recent.length - this.#keep);
    }
    for (const entry of this.#recent.all) this.#archive.dropEntry(entry);
  }
}

/** The state of a base, as this very build packed it. */
function unpacked(state: unknown, archive: Archive): State {
  return unpackState(state as PackedState, archive);
}

function behind(place: Place): Place {
  return { ...place, index: place.index + 1 };
}
