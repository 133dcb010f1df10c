import type { Instant } from '../../time/instant.ts';
import type { SaidOf } from '../matter.ts';

/** One part of the record that an answer was worked out from. */
export interface Part {
  /** Goes up whenever the part becomes another. */
  turn: number;
  /** Who noted it last, so that nobody notes it twice. */
  notedBy: Grounds | null;
}

/** What an answer is held against: how often record and talk have changed, and the instant. */
export interface Present {
  readonly now: Instant;
  readonly recordTurn: number;
  readonly talkTurn: number;
  saidOf(matter: string): SaidOf | undefined;
}

/**
 * What one answer was worked out from: parts of the record, what was said of matters, and the instants between which the
 * clock changes nothing about it. While all of that is as it was, asking anew gives the same.
 */
export class Grounds {
  readonly #parts: Part[] = [];
  readonly #turns: number[] = [];
  readonly #matters: string[] = [];
  readonly #said: (SaidOf | undefined)[] = [];
  readonly #others: (() => boolean)[] = [];
  #from: Instant = Number.NEGATIVE_INFINITY;
  #until: Instant = Number.POSITIVE_INFINITY;
  #recordTurn = -1;
  #talkTurn = -1;

  part(part: Part, turn = part.turn): void {
    if (part.notedBy === this) return;
    part.notedBy = this;
    this.#parts.push(part);
    this.#turns.push(turn);
  }

  said(matter: string, said: SaidOf | undefined): void {
    this.#matters.push(matter);
    this.#said.push(said);
  }

  /** Anything else of the talk: `still` tells whether it is as it was. */
  other(still: () => boolean): void {
    this.#others.push(still);
  }

  /** It holds within that stretch alone, its end left out. */
  within(from: Instant, until: Instant): void {
    if (from > this.#from) this.#from = from;
    if (until < this.#until) this.#until = until;
  }

  /** Everything that `other` rests on, too. */
  add(other: Grounds): void {
    for (const [place, part] of other.#parts.entries()) this.part(part, other.#turns[place]);
    for (const [place, matter] of other.#matters.entries()) this.said(matter, other.#said[place]);
    this.#others.push(...other.#others);
    this.within(other.#from, other.#until);
  }

  /** Whether asking anew would give the same. */
  hold(present: Present): boolean {
    if (present.now < this.#from || present.now >= this.#until) return false;
    if (this.#recordTurn !== present.recordTurn) {
      if (!this.#partsStand()) return false;
      this.#recordTurn = present.recordTurn;
    }
    if (this.#talkTurn !== present.talkTurn) {
      if (!this.#talkStands(present)) return false;
      this.#talkTurn = present.talkTurn;
    }
    return true;
  }

  #partsStand(): boolean {
    for (let place = 0; place < this.#parts.length; place += 1)
      if (this.#parts[place]?.turn !== this.#turns[place]) return false;
    return true;
  }

  #talkStands(present: Present): boolean {
    for (const [place, matter] of this.#matters.entries())
      if (present.saidOf(matter) !== this.#said[place]) return false;
    return this.#others.every((still) => still());
  }
}
