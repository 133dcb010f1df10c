import type { Practice } from '../practice/practice.ts';
import type { Instant } from '../time/instant.ts';
import type { Archive } from './archive.ts';
import { aboutOf, type Entry } from './entry.ts';
import { FoldedEntries } from './folded-entries.ts';
import type { KeptEntries } from './kept-entries.ts';
import type { Place } from './order.ts';
import type { SavedTimeline, TimelineOptions } from './saved-timeline.ts';
import type { State } from './state.ts';
import { WaitingDecisions } from './waiting-decisions.ts';

export type { SavedTimeline, TimelineOptions } from './saved-timeline.ts';

/**
 * Every entry that holds, in the record's order, and the state they fold to. Entries come in whatever order they are told
 * and are set aside again; a decision about an entry that does not hold just now waits until it does.
 */
export class Timeline {
  readonly #folded: FoldedEntries;
  readonly #waiting = new WaitingDecisions();

  /** `practice`: the practice file as it was when the record began. */
  constructor(practice: Practice, options: TimelineOptions = {}) {
    this.#folded = new FoldedEntries(practice, options);
  }

  /** The timeline that `save` gave, on the archive that it was on, as it was then. */
  static restore(saved: SavedTimeline, options: TimelineOptions & { readonly archive: Archive }): Timeline {
    const timeline = new Timeline(saved.practice, options);
    timeline.#folded.restore(saved);
    for (const entry of saved.waiting) timeline.#waiting.add(entry);
    return timeline;
  }

  /**
   * This timeline for a snapshot; all but its last entries go to the archive, whose keeper must keep it as it is now beside
   * the snapshot. `cut`: the place up to which they go, as an earlier call gave it in `through`.
   */
  save(cut?: Place | null): SavedTimeline {
    return { ...this.#folded.save(cut), waiting: this.#waiting.all() };
  }

  /** The state now. Take it anew after each change: going back makes another one. It is to be read, never written. */
  get state(): State {
    return this.#folded.state;
  }

  /** Another number whenever the state became another: what was worked out from it at the same number still holds. */
  get changes(): number {
    return this.#folded.changes;
  }

  /** Every entry that holds, in order: those of the archive are read. */
  get entries(): readonly Entry[] {
    return [...this.between(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY)];
  }

  /** Entries that hold from that instant to that one, both with it, in order. */
  between(from: Instant, to: Instant): Generator<Entry> {
    return this.#kept.between(from, to);
  }

  /** Entries that hold, the latest first. */
  newestFirst(): Generator<Entry> {
    return this.#kept.newestFirst();
  }

  /** Places of entries that hold and speak of an item, in order. */
  placesAbout(item: string): readonly Place[] {
    return this.#kept.placesAbout(item);
  }

  /** Whether anything is in the archive. */
  get needsArchive(): boolean {
    return this.#kept.through !== null;
  }

  /** How many entries are kept in memory. */
  get size(): number {
    return this.#kept.recent.length;
  }

  /** The entry of that id, where it holds. */
  entry(id: string): Entry | undefined {
    return this.#kept.entry(id);
  }

  /** Entries of that original turn that hold, by their place within it. */
  ofTurn(turn: number): readonly Entry[] {
    return this.#kept.ofTurn(turn);
  }

  /** Whether something is in the archive of what that turn said, or of what happened at one of those instants. */
  isFar(turn: number, whens: readonly Instant[] = []): boolean {
    return this.#kept.isFar(turn, whens);
  }

  /**
   * Since when what is in the archive was folded again since this was asked last; `null`: it was not. What is only history
   * may have changed from then on.
   */
  takeRefolded(): Instant | null {
    return this.#folded.takeRefolded();
  }

  /** Adds entries, in whatever order they come. One whose id is there already changes nothing. */
  add(entries: readonly Entry[]): void {
    for (const each of entries) {
      const entry = each.when > each.noted ? { ...each, when: each.noted } : each;
      const about = aboutOf(entry);
      if (about === null || this.entry(about) !== undefined) this.#insert(entry);
      else if (this.entry(entry.id) === undefined) this.#waiting.add(entry);
    }
    this.#folded.trim();
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

  get #kept(): KeptEntries {
    return this.#folded.kept;
  }

  #insert(entry: Entry): void {
    if (this.entry(entry.id) !== undefined) return;
    this.#folded.put(entry);
    for (const decision of this.#waiting.take(entry.id)) this.#insert(decision);
  }

  #remove(entry: Entry): void {
    if (this.entry(entry.id) === undefined) return;
    this.#folded.drop(entry);
    for (const decision of this.#kept.about(entry.id)) {
      this.#remove(decision);
      this.#waiting.add(decision);
    }
  }
}
