import type { Why } from '../language/read.ts';
import type { Fact } from '../reading/fact.ts';
import type { Archive } from '../record/archive.ts';
import type { Instant } from '../time/instant.ts';
import { OldNotes } from './old-notes.ts';
import type { Leans } from './turn.ts';

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
  /** Where what it says was taken from an earlier note. */
  readonly leans?: Leans;
  /** It named a thing of ours and was not recorded: "haven't done white yet". */
  readonly passed?: true;
}

/** A note as it read from one event on: its own, or an edit's. */
export interface Version {
  readonly event: string;
  readonly facts: readonly Fact[];
}

/** A note and how it read, oldest first. */
export interface KeptNote {
  readonly line: NoteLine;
  readonly versions: readonly Version[];
}

/** Notes in memory, some weeks of them; older ones are in the archive. */
const IN_MEMORY = 2_000;
/** Other events known by their ids: what is told again comes within a day, and what is older the journal is asked. */
const EVENTS = 5_000;
/** Explanations hold words of notes: they are kept in memory only, for the latest notes. */
const EXPLAINED = 200;

/** Notes for a snapshot. Explanations are not in it: they hold words of notes. */
export interface SavedNotes {
  readonly notes: readonly KeptNote[];
  /** In the archive. */
  readonly old: number;
  readonly events: readonly string[];
  readonly edits: readonly (readonly [edit: string, note: string])[];
}

/** Notes by event id, in the order they came, and the ids of other events that were taken. */
export class NoteLog {
  readonly #archive: Archive;
  readonly #inMemory: number;
  #old: OldNotes;
  readonly #byId = new Map<string, KeptNote>();
  readonly #byTurn = new Map<number, string>();
  readonly #events = new Set<string>();
  /** Id of the note by the id of an edit of it. */
  readonly #edits = new Map<string, string>();
  readonly #why = new Map<string, readonly Why[]>();

  constructor(archive: Archive, inMemory = IN_MEMORY) {
    this.#archive = archive;
    this.#inMemory = inMemory;
    this.#old = new OldNotes(archive);
  }

  save(): SavedNotes {
    return {
      notes: [...this.#byId.values()],
      old: this.#old.count,
      events: [...this.#events],
      edits: [...this.#edits],
    };
  }

  /** Takes in what `save` gave; this log must be empty, and the archive as it was then. */
  restore({ notes, old, events, edits }: SavedNotes): void {
    this.#old = new OldNotes(this.#archive, old);
    for (const note of notes) this.#put(note);
    for (const event of events) this.#events.add(event);
    for (const [edit, note] of edits) this.#edits.set(edit, note);
  }

  /** Whether any note is in the archive. */
  get needsArchive(): boolean {
    return this.#old.count > 0;
  }

  /** Whether an event was taken already. */
  knows(id: string): boolean {
    return this.#events.has(id) || this.get(id) !== null;
  }

  get(id: string): NoteLine | null {
    return this.#kept(id)?.line ?? null;
  }

  /** The note that an event is about: the note itself, or the one that an edit changed. */
  noteOf(event: string): NoteLine | null {
    return this.get(this.#noteOfEdit(event) ?? event);
  }

  /** An edit of it asks this now. */
  asksNow(id: string, asked: string): void {
    this.#change(id, ({ line, versions }) => ({ line: { ...line, asked }, versions }));
  }

  /** An edit of it is taken from an earlier note now, or no more. */
  leansNow(id: string, leans: Leans | undefined): void {
    this.#change(id, ({ line: { leans: _, ...line }, versions }) => ({
      line: leans === undefined ? line : { ...line, leans },
      versions,
    }));
  }

  /** Notes that were taken from the note of that turn, oldest first. */
  leaningOn(turn: number): readonly NoteLine[] {
    return Array.from(this.#byId.values(), ({ line }) => line).filter(
      ({ gone, leans }) => !gone && leans?.on === turn,
    );
  }

  /** The note reads so since that event. */
  reads(note: string, event: string, facts: readonly Fact[]): void {
    if (event !== note) {
      if (this.#byId.has(note)) this.#edits.set(event, note);
      else this.#old.edited(event, note);
    }
    this.#change(note, ({ line, versions }) => ({ line, versions: [...versions, { event, facts }] }));
  }

  /** An edit was deleted: how the note reads without it, `null` where that changes nothing. */
  without(event: string): readonly Fact[] | null {
    const versions = this.#kept(this.#noteOfEdit(event) ?? '')?.versions ?? [];
    return versions.at(-1)?.event === event ? (versions.at(-2)?.facts ?? []) : null;
  }

  /** Forgets a deleted edit. */
  dropEdit(event: string): void {
    const note = this.#noteOfEdit(event);
    if (note === null) return;
    this.#change(note, ({ line, versions }) => ({
      line,
      versions: versions.filter((version) => version.event !== event),
    }));
  }

  put(line: NoteLine): void {
    this.#put({ line, versions: this.#kept(line.id)?.versions ?? [] });
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
    if (this.#events.size <= EVENTS) return;
    const [oldest] = this.#events;
    if (oldest !== undefined) this.#events.delete(oldest);
  }

  corrected(id: string, gone: boolean): void {
    this.#change(id, ({ line, versions }) => ({ line: { ...line, gone }, versions }));
  }

  /** The latest note of a person in a chat room that still stands and fits, of the last weeks. */
  latestOf(room: string, from: string, fits: (note: NoteLine) => boolean): NoteLine | null {
    const latest = Array.from(this.#byId.values(), ({ line }) => line).reverse();
    return (
      latest.find((note) => note.room === room && note.from === from && !note.gone && fits(note)) ?? null
    );
  }

  /** Notes of a chat room typed between two instants that still stand, the latest first; of the last weeks. */
  between(room: string, from: Instant, to: Instant): readonly NoteLine[] {
    return Array.from(this.#byId.values(), ({ line }) => line)
      .filter((note) => note.room === room && !note.gone && note.noted >= from && note.noted <= to)
      .sort((one, other) => other.noted - one.noted || other.turn - one.turn);
  }

  noteOfTurn(turn: number): NoteLine | null {
    const id = this.#byTurn.get(turn) ?? this.#old.ofTurn(turn);
    return id === null ? null : this.get(id);
  }

  #kept(id: string): KeptNote | null {
    return this.#byId.get(id) ?? this.#old.get(id);
  }

  #noteOfEdit(event: string): string | null {
    return this.#edits.get(event) ?? this.#old.ofEdit(event);
  }

  #change(id: string, to: (note: KeptNote) => KeptNote): void {
    const note = this.#kept(id);
    if (note === null) return;
    if (this.#byId.has(id)) this.#byId.set(id, to(note));
    else this.#old.put(to(note));
  }

  #put(note: KeptNote): void {
    this.#byId.set(note.line.id, note);
    this.#byTurn.set(note.line.turn, note.line.id);
    if (this.#byId.size <= this.#inMemory) return;
    const [oldest] = this.#byId.values();
    if (oldest === undefined) return;
    const { line, versions } = oldest;
    this.#byId.delete(line.id);
    this.#byTurn.delete(line.turn);
    const edits = versions.map(({ event }) => event).filter((event) => this.#edits.delete(event));
    this.#old.takeOver(oldest, edits);
  }
}
