import type { Practice } from '../practice/practice.ts';
import { Checkpoints } from './checkpoints.ts';
import { cleanCut } from './clean-cut.ts';
import type { Entry } from './entry.ts';
import { foldEntry } from './fold/fold.ts';
import { indexOfPlace, inOrder, type Place } from './order.ts';
import { startState } from './start-state.ts';
import type { State } from './state.ts';
import { type PackedState, packState, unpackState } from './state-json.ts';

/** A snapshot cannot answer this: the record has to be folded again from its first entry. */
export class NeedsWholeRecord extends Error {
  override name = 'NeedsWholeRecord';
}

/** A state with everything folded into it up to and with that place; `null`: nothing yet. */
export interface Base {
  readonly state: State;
  readonly through: Place | null;
  /** The latest original turn of which anything is in it; everything of it and of those before is. */
  readonly turns: number;
}

/** A timeline for a snapshot: a state, and what comes after it. */
export interface SavedTimeline {
  readonly state: PackedState;
  readonly through: Place | null;
  readonly turns: number;
  readonly entries: readonly Entry[];
  /** Decisions about entries that do not hold just now. */
  readonly waiting: readonly Entry[];
}

/**
 * Every entry that holds, in the record's order, and the state they fold to. Corrections refold from the nearest
 * checkpoint before the earliest change; the result is always that of the whole fold.
 */
export class Timeline {
  /** Where a snapshot ends; `null`: every entry is here. */
  readonly #through: Place | null;
  readonly #turns: number;
  /** In order: entries that hold. */
  readonly #entries: Entry[] = [];
  readonly #byId = new Map<string, Entry>();
  /** Places taken in each original turn: ids are made of the two, so no list of them is needed. */
  readonly #byTurn = new Map<number, number>();
  /** Decisions by the entry that they are about, holding or waiting for it. */
  readonly #about = new Map<string, Entry[]>();
  readonly #checkpoints: Checkpoints;
  #state: State;
  /** Entries folded into `#state`. */
  #folded = 0;
  #changes = 0;

  /**
   * `practice`: the practice file as it was when the record began. `base`: a snapshot to go on from; entries that belong
   * before its end are then refused with `NeedsWholeRecord`, and nothing is changed.
   */
  constructor(practice: Practice, base: Base | null = null) {
    this.#state = base?.state ?? startState(practice);
    this.#through = base?.through ?? null;
    this.#turns = base?.turns ?? -1;
    this.#checkpoints = new Checkpoints(this.#state);
  }

  /** The timeline that `save` gave. */
  static restore({ state, through, turns, entries, waiting }: SavedTimeline): Timeline {
    const base = { state: unpackState(state), through, turns };
    const timeline = new Timeline(base.state.file, base);
    for (const entry of entries) timeline.#put(entry, timeline.#entries.length);
    for (const entry of [...entries, ...waiting]) {
      const about = aboutOf(entry);
      if (about !== null) timeline.#about.set(about, [...(timeline.#about.get(about) ?? []), entry]);
    }
    return timeline;
  }

  /**
   * This timeline for a snapshot: the state before its last `keep` entries (or a few more, so that no note is cut in two),
   * and those. `cut`: the place to cut at instead, as an earlier call gave it in `through`.
   */
  save(keep: number, cut?: Place | null): SavedTimeline {
    const wanted = cut === undefined ? this.#entries.length - keep : this.#indexAfter(cut);
    const { index, turns } = cleanCut(this.#entries, wanted, this.#turns);
    const entries = this.#entries.slice(index);
    const last = this.#entries[index - 1];
    const through =
      last === undefined ? this.#through : { when: last.when, turn: last.turn, index: last.index };
    const waiting = [...this.#about.values()].flat().filter((entry) => {
      const about = Number.parseInt(aboutOf(entry) ?? '', 10);
      return this.#byId.get(entry.id) !== entry && about > turns;
    });
    return { state: packState(this.#stateAfter(index)), through, turns, entries, waiting };
  }

  /** The state now. Take it anew after each change: going back makes another one. It is to be read, never written. */
  get state(): State {
    this.#foldTo(this.#entries.length);
    return this.#state;
  }

  /** Another number whenever the state became another: what was worked out from it at the same number still holds. */
  get changes(): number {
    return this.#changes;
  }

  /** Entries that hold, in order. Throws NeedsWholeRecord where some are in the snapshot. */
  get entries(): readonly Entry[] {
    if (this.#through !== null) throw new NeedsWholeRecord('entries from before the snapshot are asked for');
    return this.#entries;
  }

  /** Entries that hold, the latest first. Throws NeedsWholeRecord where it comes to the snapshot. */
  *newestFirst(): Generator<Entry> {
    for (let index = this.#entries.length - 1; index >= 0; index -= 1) {
      const entry = this.#entries[index];
      if (entry !== undefined) yield entry;
    }
    if (this.#through !== null) throw new NeedsWholeRecord('entries from before the snapshot are asked for');
  }

  /** How many entries are kept in memory. */
  get size(): number {
    return this.#entries.length;
  }

  /** The entry of that id, where it holds. Throws NeedsWholeRecord where it may be in the snapshot. */
  entry(id: string): Entry | undefined {
    const entry = this.#byId.get(id);
    if (entry === undefined) this.#mustKnow(Number.parseInt(id, 10));
    return entry;
  }

  /** Entries of that original turn that hold, by their place within it. Throws NeedsWholeRecord as `entry` does. */
  ofTurn(turn: number): readonly Entry[] {
    this.#mustKnow(turn);
    const entries: Entry[] = [];
    for (let index = 0; index < (this.#byTurn.get(turn) ?? 0); index += 1) {
      const entry = this.#byId.get(`${turn}.${index}`);
      if (entry !== undefined) entries.push(entry);
    }
    return entries;
  }

  /** Adds entries, in whatever order they come. One whose id is there already changes nothing. */
  add(entries: readonly Entry[]): void {
    const clamped = entries.map((each) => (each.when > each.noted ? { ...each, when: each.noted } : each));
    for (const entry of clamped) this.#mustFollow(entry);
    for (const entry of clamped) {
      const about = aboutOf(entry);
      if (about !== null) {
        const others = this.#about.get(about) ?? [];
        if (others.some((each) => each.id === entry.id)) continue;
        this.#about.set(about, [...others, entry]);
        if (!this.#holds(about)) continue;
      }
      this.#insert(entry);
    }
  }

  /**
   * Sets aside everything that a turn said (undo, redaction), with the decisions about it, and returns those entries.
   * `turn` is that of the ORIGINAL note.
   */
  setAside(turn: number): readonly Entry[] {
    const gone = this.ofTurn(turn);
    for (const entry of gone) {
      this.#remove(entry);
      const about = aboutOf(entry);
      if (about === null) continue;
      const others = this.#about.get(about) ?? [];
      this.#about.set(
        about,
        others.filter((each) => each.id !== entry.id),
      );
    }
    return gone;
  }

  /** Puts entries in the place of what that turn said (an edit, "sorry, tip 5"): they keep its number. */
  replace(turn: number, entries: readonly Entry[]): void {
    this.setAside(turn);
    this.add(entries.map((each) => ({ ...each, turn, id: `${turn}.${each.index}` })));
  }

  #mustFollow(entry: Entry): void {
    if (this.#through !== null && inOrder(entry, this.#through) <= 0)
      throw new NeedsWholeRecord(`entry ${entry.id} belongs before the snapshot's end`);
    // Whether what it is about still holds is not known here.
    const about = aboutOf(entry);
    if (about !== null && !this.#byId.has(about)) this.#mustKnow(Number.parseInt(about, 10));
  }

  #mustKnow(turn: number): void {
    if (this.#through !== null && turn <= this.#turns)
      throw new NeedsWholeRecord(`turn ${turn} is part of the snapshot`);
  }

  #holds(id: string): boolean {
    return this.#byId.has(id);
  }

  #foldTo(end: number): void {
    const total = this.#entries.length;
    while (this.#folded < end) {
      const entry = this.#entries[this.#folded];
      if (entry === undefined) break;
      foldEntry(this.#state, entry);
      this.#changes += 1;
      this.#folded += 1;
      if (Checkpoints.wanted(this.#folded, total)) this.#checkpoints.keep(this.#folded, this.#state);
    }
  }

  /** The state after so many of the entries here; the rest is folded again when it is asked for. */
  #stateAfter(count: number): State {
    this.#goBack(count);
    this.#foldTo(count);
    return this.#state;
  }

  #indexAfter(place: Place | null): number {
    if (place === null) return 0;
    return indexOfPlace(this.#entries, { ...place, index: place.index + 1 });
  }

  #insert(entry: Entry): void {
    if (this.#byId.has(entry.id)) return;
    const index = this.#indexOf(entry);
    this.#goBack(index);
    this.#put(entry, index);
    for (const waiting of this.#about.get(entry.id) ?? []) this.#insert(waiting);
  }

  #put(entry: Entry, index: number): void {
    if (index === this.#entries.length) this.#entries.push(entry);
    else this.#entries.splice(index, 0, entry);
    this.#byId.set(entry.id, entry);
    const taken = this.#byTurn.get(entry.turn) ?? 0;
    if (entry.index >= taken) this.#byTurn.set(entry.turn, entry.index + 1);
  }

  #remove(entry: Entry): void {
    if (this.#byId.get(entry.id) !== entry) return;
    const index = this.#indexOf(entry);
    this.#goBack(index);
    this.#entries.splice(index, 1);
    this.#byId.delete(entry.id);
    for (const decision of this.#about.get(entry.id) ?? []) this.#remove(decision);
  }

  /** Most entries come at the end. */
  #indexOf(entry: Entry): number {
    const last = this.#entries.at(-1);
    if (last === undefined) return 0;
    if (entry.when > last.when) return this.#entries.length;
    return indexOfPlace(this.#entries, entry);
  }

  /** The state must not hold anything from that index on. */
  #goBack(index: number): void {
    if (index >= this.#folded) return;
    const before = this.#checkpoints.back(index);
    this.#changes += 1;
    this.#state = before.state;
    this.#folded = before.count;
  }
}

/** Id of the entry that a decision is about. */
function aboutOf(entry: Entry): string | null {
  return 'of' in entry.fact ? entry.fact.of : null;
}
