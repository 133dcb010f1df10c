import { aboutOf, type Entry } from './entry.ts';
import { inOrder } from './order.ts';

/** Decisions that wait for the entry that they are about: it was taken back, and may be put again. */
export class WaitingDecisions {
  readonly #byEntry = new Map<string, readonly Entry[]>();

  /** One that waits already changes nothing. */
  add(decision: Entry): void {
    const about = aboutOf(decision);
    if (about === null) return;
    const others = this.#byEntry.get(about) ?? [];
    if (!others.some(({ id }) => id === decision.id)) this.#byEntry.set(about, [...others, decision]);
  }

  drop(decision: Entry): void {
    const about = aboutOf(decision);
    if (about === null) return;
    const left = (this.#byEntry.get(about) ?? []).filter(({ id }) => id !== decision.id);
    if (left.length === 0) this.#byEntry.delete(about);
    else this.#byEntry.set(about, left);
  }

  /** Those that waited for that entry: they wait no longer. */
  take(entry: string): readonly Entry[] {
    const waiting = this.#byEntry.get(entry) ?? [];
    this.#byEntry.delete(entry);
    return waiting;
  }

  all(): Entry[] {
    return [...this.#byEntry.values()].flat().sort(inOrder);
  }
}
