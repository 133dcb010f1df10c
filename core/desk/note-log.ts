import type { Why } from '../language/read.ts';
import type { Fact } from '../reading/fact.ts';
import type { Instant } from '../time/instant.ts';

/** A note as the desk remembers it: enough to correct it, answer it and react to it. */
export interface NoteLine {
  readonly id: string;
  /** Its turn: the place in the record that its facts have, through every correction. */
  readonly turn: number;
  readonly room: string;
  readonly from: string;
  readonly noted: Instant;
  /** What it asks and was answered, as JSON, so that an edit that asks the same is not answered twice. */
  readonly asked: string;
  /** Taken back: nothing of it holds. */
  readonly gone: boolean;
}

/** A note as it read from one event on: its own, or an edit's. */
interface Version {
  readonly event: string;
  readonly facts: readonly Fact[];
}

/** Notes kept at hand; what is older is history, and the inbox still knows its event ids. */
const KEPT = 20_000;
/** Explanations hold words of notes: they are kept in memory only, for the latest notes. */
const EXPLAINED = 200;

/** Notes for a snapshot. Explanations are not in it: they hold words of notes. */
export interface SavedNotes {
  readonly notes: readonly NoteLine[];
  readonly events: readonly string[];
  readonly versions: readonly (readonly [note: string, versions: readonly Version[]])[];
  readonly edits: readonly (readonly [edit: string, note: string])[];
}

/** Notes by event id, in the order they came, and the ids of other events that were taken. */
export class NoteLog {
  readonly #byId = new Map<string, NoteLine>();
  readonly #byTurn = new Map<number, string>();
  readonly #events = new Set<string>();
  /** By the note's id, oldest first. */
  readonly #versions = new Map<string, readonly Version[]>();
  /** Id of the note by the id of an edit of it. */
  readonly #edits = new Map<string, string>();
  readonly #why = new Map<string, readonly Why[]>();

  save(): SavedNotes {
    return {
      notes: [...this.#byId.values()],
      events: [...this.#events],
      versions: [...this.#versions],
      edits: [...this.#edits],
    };
  }

  /** Takes in what `save` gave; this log must be empty. */
  restore({ notes, events, versions, edits }: SavedNotes): void {
    for (const note of notes) this.put(note);
    for (const event of events) this.#events.add(event);
    for (const [note, each] of versions) this.#versions.set(note, each);
    for (const [edit, note] of edits) this.#edits.set(edit, note);
  }

  /** Whether an event was taken already. */
  knows(id: string): boolean {
    return this.#byId.has(id) || this.#events.has(id);
  }

  get(id: string): NoteLine | null {
    return this.#byId.get(id) ?? null;
  }

  /** The note that an event is about: the note itself, or the one that an edit changed. */
  noteOf(event: string): NoteLine | null {
    return this.get(this.#edits.get(event) ?? event);
  }

  /** An edit of it asks this now. */
  asksNow(id: string, asked: string): void {
    const note = this.#byId.get(id);
    if (note !== undefined) this.#byId.set(id, { ...note, asked });
  }

  /** The note reads so since that event. */
  reads(note: string, event: string, facts: readonly Fact[]): void {
    if (event !== note) this.#edits.set(event, note);
    this.#versions.set(note, [...(this.#versions.get(note) ?? []), { event, facts }]);
  }

  /** An edit was deleted: how the note reads without it, `null` where that changes nothing. */
  without(event: string): readonly Fact[] | null {
    const versions = this.#versions.get(this.#edits.get(event) ?? '') ?? [];
    return versions.at(-1)?.event === event ? (versions.at(-2)?.facts ?? []) : null;
  }

  /** Forgets a deleted edit. */
  dropEdit(event: string): void {
    const note = this.#edits.get(event);
    if (note === undefined) return;
    const left = (this.#versions.get(note) ?? []).filter((version) => version.event !== event);
    this.#versions.set(note, left);
  }

  put(note: NoteLine): void {
    this.#byId.set(note.id, note);
    this.#byTurn.set(note.turn, note.id);
    if (this.#byId.size <= KEPT) return;
    const [oldest] = this.#byId.values();
    if (oldest === undefined) return;
    this.#byId.delete(oldest.id);
    for (const { event } of this.#versions.get(oldest.id) ?? []) this.#edits.delete(event);
    this.#versions.delete(oldest.id);
    this.#byTurn.delete(oldest.turn);
  }

  /** Which words gave what; `null` once they are no longer at hand. */
  whyOf(id: string): readonly Why[] | null {
    return this.#why.get(id) ?? null;
  }

  explain(id: string, why: readonly Why[]): void {
    this.#why.set(id, why);
    const [oldest] = this.#why.keys();
    if (this.#why.size > EXPLAINED && oldest !== undefined) this.#why.delete(oldest);
  }

  /** An edit, a deletion or a reaction was taken. */
  heard(id: string): void {
    this.#events.add(id);
    if (this.#events.size <= KEPT) return;
    const [oldest] = this.#events;
    if (oldest !== undefined) this.#events.delete(oldest);
  }

  corrected(id: string, gone: boolean): void {
    const note = this.#byId.get(id);
    if (note !== undefined) this.#byId.set(id, { ...note, gone });
  }

  /** The latest note of a person in a chat room that still stands and fits. */
  latestOf(room: string, from: string, fits: (note: NoteLine) => boolean): NoteLine | null {
    const latest = [...this.#byId.values()].reverse();
    return (
      latest.find((note) => note.room === room && note.from === from && !note.gone && fits(note)) ?? null
    );
  }

  noteOfTurn(turn: number): NoteLine | null {
    const id = this.#byTurn.get(turn);
    return id === undefined ? null : this.get(id);
  }
}
