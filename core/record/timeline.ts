import type { Practice } from '../practice/practice.ts';
import { Checkpoints } from './checkpoints.ts';
import type { Entry } from './entry.ts';
import { foldEntry } from './fold/fold.ts';
import { indexOfPlace, inOrder, type Place } from './order.ts';
import { startState } from './start-state.ts';
import type { State } from './state.ts';

/** A snapshot cannot answer this: the record has to be folded again from its first entry. */
export class NeedsWholeRecord extends Error {
  override name = 'NeedsWholeRecord';
}

/** A state with everything folded into it up to and with that place. */
export interface Base {
  readonly state: State;
  readonly through: Place;
}

/**
 * Every entry that holds, in the record's order, and the state they fold to. Corrections refold from the nearest
 * checkpoint before the earliest change; the result is always that of the whole fold.
 */
export class Timeline {
  /** Where a snapshot ends; `null`: every entry is here. */
  readonly #through: Place | null;
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

  /**
   * `practice`: the practice file as it was when the record began. `base`: a snapshot to go on from; entries that belong
   * before its end are then refused with `NeedsWholeRecord`, and nothing is changed.
   */
  constructor(practice: Practice, base: Base | null = null) {
    this.#state = base?.state ?? startState(practice);
    this.#through = base?.through ?? null;
    this.#checkpoints = new Checkpoints(this.#state);
  }

  /** The state now. Take it anew after each change: going back makes another one. It is to be read, never written. */
  get state(): State {
    for (const total = this.#entries.length; this.#folded < total; ) {
      const entry = this.#entries[this.#folded];
      if (entry === undefined) break;
      foldEntry(this.#state, entry);
      this.#folded += 1;
      if (Checkpoints.wanted(this.#folded, total)) this.#checkpoints.keep(this.#folded, this.#state);
    }
    return this.#state;
  }

  /** Entries that hold, in order. */
  get entries(): readonly Entry[] {
    return this.#entries;
  }

  entry(id: string): Entry | undefined {
    return this.#byId.get(id);
  }

  /** Entries of that original turn that hold, by their place within it. */
  ofTurn(turn: number): readonly Entry[] {
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
    if (this.#through !== null && turn <= this.#through.turn)
      throw new NeedsWholeRecord(`turn ${turn} is part of the snapshot`);
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
  }

  /** Decisions are made about entries that hold: one about something in the snapshot is taken to. */
  #holds(id: string): boolean {
    return this.#byId.has(id) || (this.#through !== null && Number.parseInt(id, 10) <= this.#through.turn);
  }

  #insert(entry: Entry): void {
    if (this.#byId.has(entry.id)) return;
    const index = this.#indexOf(entry);
    this.#goBack(index);
    if (index === this.#entries.length) this.#entries.push(entry);
    else this.#entries.splice(index, 0, entry);
    this.#byId.set(entry.id, entry);
    const taken = this.#byTurn.get(entry.turn) ?? 0;
    if (entry.index >= taken) this.#byTurn.set(entry.turn, entry.index + 1);
    for (const waiting of this.#about.get(entry.id) ?? []) this.#insert(waiting);
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
    this.#state = before.state;
    this.#folded = before.count;
  }
}

/** Id of the entry that a decision is about. */
function aboutOf(entry: Entry): string | null {
  return 'of' in entry.fact ? entry.fact.of : null;
}
