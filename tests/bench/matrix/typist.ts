import { RoomEvent } from 'matrix-js-sdk/lib/matrix.js';
import type { Person } from '../../matrix/person.ts';

/** An answer that takes longer than this never comes, ms. */
const PATIENCE_MS = 60_000;

/** Types notes one at a time and takes the time until each is answered: by a reply or by a reaction, whichever it is. */
export class Typist {
  readonly #person: Person;
  readonly #answered = new Map<string, number>();
  #waiting: { readonly note: string; readonly told: (at: number) => void } | null = null;

  constructor(person: Person, bots: ReadonlySet<string>) {
    this.#person = person;
    person.client.on(RoomEvent.Timeline, (event) => {
      const at = performance.now();
      if (!bots.has(event.getSender() ?? '')) return;
      // What an event relates to travels in clear: nothing has to be unlocked to take the time.
      const relation = event.getWireContent()['m.relates_to'];
      const note: unknown = relation?.['m.in_reply_to']?.event_id ?? relation?.event_id;
      if (typeof note !== 'string') return;
      if (!this.#answered.has(note)) this.#answered.set(note, at);
      if (this.#waiting?.note === note) this.#waiting.told(at);
    });
  }

  /** Milliseconds from pressing Return to seeing the answer. */
  async time(room: string, text: string): Promise<number> {
    const start = performance.now();
    const note = await this.#person.say(room, text);
    return (this.#answered.get(note) ?? (await this.#answerTo(note))) - start;
  }

  #answerTo(note: string): Promise<number> {
    return new Promise((resolve, reject) => {
      const late = setTimeout(() => reject(new Error(`${note} was never answered`)), PATIENCE_MS);
      const told = (at: number) => {
        clearTimeout(late);
        this.#waiting = null;
        resolve(at);
      };
      this.#waiting = { note, told };
    });
  }
}
