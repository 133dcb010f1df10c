import type { Archive } from '../record/archive.ts';
import type { KeptNote } from './note-log.ts';

/** Names in the archive. */
const NOTE = 'note';
const OF_EDIT = 'note of edit';
const OF_TURN = 'note of turn';

/** Old notes that can still be corrected; what is older is history, and the inbox still knows its event ids. */
const KEPT = 20_000;
/** Looked at again after so many more. */
const FORGET_EVERY = 10_000;

/** Notes that are no longer in memory, in the archive. */
export class OldNotes {
  readonly #archive: Archive;
  /** Handed over so far. */
  #count: number;

  constructor(archive: Archive, count = 0) {
    this.#archive = archive;
    this.#count = count;
  }

  get count(): number {
    return this.#count;
  }

  get(id: string): KeptNote | null {
    // What was put in comes back, and only `put` writes there.
    return this.#count === 0 ? null : ((this.#archive.value(NOTE, id) as KeptNote | undefined) ?? null);
  }

  /** Id of the note that an edit changed. */
  ofEdit(edit: string): string | null {
    return this.#idIn(OF_EDIT, edit);
  }

  ofTurn(turn: number): string | null {
    return this.#idIn(OF_TURN, String(turn));
  }

  /** Takes a note over from memory, with the edits of it that are known. */
  takeOver(note: KeptNote, edits: readonly string[]): void {
    this.put(note);
    for (const edit of edits) this.edited(edit, note.line.id);
    this.#archive.keepValue(OF_TURN, String(note.line.turn), note.line.id);
    this.#count += 1;
    if (this.#count % FORGET_EVERY === 0 && this.#count > KEPT) this.#forget();
  }

  /** One that is here already has changed. */
  put(note: KeptNote): void {
    this.#archive.keepValue(NOTE, note.line.id, note);
  }

  edited(edit: string, note: string): void {
    this.#archive.keepValue(OF_EDIT, edit, note);
  }

  #idIn(map: string, key: string): string | null {
    const id = this.#count === 0 ? undefined : this.#archive.value(map, key);
    return typeof id === 'string' ? id : null;
  }

  #forget(): void {
    const all = [...this.#archive.values(NOTE)].map(([, note]) => note as KeptNote);
    all.sort((one, other) => one.line.turn - other.line.turn);
    for (const { line, versions } of all.slice(0, -KEPT)) {
      this.#archive.forgetValue(NOTE, line.id);
      this.#archive.forgetValue(OF_TURN, String(line.turn));
      for (const { event } of versions) this.#archive.forgetValue(OF_EDIT, event);
    }
  }
}
