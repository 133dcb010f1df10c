import type { NoteRead } from '../read.ts';

/** Scores nearer than this do not tell one reading from another. */
const CLOSE = 0.3;

/** The best of several readings, none where two that differ are as good. */
export class Choice {
  #best = 0;
  #taken: NoteRead | null = null;
  #divided = false;

  get taken(): NoteRead | null {
    return this.#divided ? null : this.#taken;
  }

  /** Offers a reading by how much better it is than needed; less than 0 is not good enough. */
  offer(read: NoteRead, score: number): void {
    if (score < this.#best - CLOSE) return;
    if (score > this.#best + CLOSE || (this.#taken === null && score >= this.#best)) {
      this.#taken = read;
      this.#best = score;
      this.#divided = false;
    } else if (this.#taken === null || JSON.stringify(this.#taken.reading) !== JSON.stringify(read.reading)) {
      this.#divided = true;
    }
  }
}
