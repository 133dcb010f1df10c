import type { State } from '../../record/state.ts';
import type { Instant } from '../../time/instant.ts';
import type { SaidLog, SaidOf, Stage, View } from '../matter.ts';
import type { Grounds, Present } from './grounds.ts';
import { WatchedState } from './watched-state.ts';

/** Another number of each whenever the record, or what was said, became another. */
export interface Changes {
  readonly record: number;
  readonly talk: number;
}

/** An answer with what it was worked out from. */
export interface Answer<T> {
  readonly value: T;
  readonly grounds: Grounds;
}

/**
 * One desk's look at things, from turn to turn: it shows rules the record and the talk, notes what each answer was worked
 * out from, and so knows which answers of before still hold.
 */
export class Watch implements Present {
  /** What rules are shown. Its clock, record and talk are those of the latest `look`. */
  readonly view: View;
  /** Whoever is working something out just now. */
  grounds: Grounds | null = null;
  /** By what gives them: see `remembered`. */
  readonly answers = new Map<object, Map<string, Answer<unknown>>>();
  /** By what gives them, at this very look: see `atThisLook`. */
  readonly looks = new Map<object, unknown>();
  recordTurn = 0;
  talkTurn = 0;
  #now: Instant;
  #state: State;
  #changes: Changes | null = null;
  readonly #said: SaidLog;
  readonly #watched: WatchedState;

  constructor({ practice, state, said, now }: View) {
    this.#now = now;
    this.#state = state;
    this.#said = said;
    this.#watched = new WatchedState(this, () => this.#state);
    const watch = this;
    this.view = {
      practice,
      state: this.#watched.state,
      said: watchedTalk(this, said),
      get now() {
        // Whoever takes the bare time may do anything with it: what comes of it holds at that instant alone.
        watch.grounds?.within(watch.#now, watch.#now + 1);
        return watch.#now;
      },
    };
  }

  /** Looks at things as they are now. */
  look(state: State, now: Instant, changes: Changes): void {
    const before = this.#changes;
    const sameTalk = before?.talk === changes.talk;
    const sameRecord = before?.record === changes.record && this.#state === state;
    if (sameTalk && sameRecord && this.#now === now) return;
    this.looks.clear();
    this.#now = now;
    this.#changes = changes;
    if (!sameTalk) this.talkTurn += 1;
    if (sameRecord) return;
    this.#state = state;
    this.recordTurn += 1;
    this.#watched.refresh();
  }

  /** The time, for whoever notes by itself until when its answer holds. */
  get now(): Instant {
    return this.#now;
  }

  saidOf(matter: string): SaidOf | undefined {
    return this.#said.of(matter);
  }
}

function watchedTalk(watch: Watch, said: SaidLog): SaidLog {
  const of = (matter: string) => {
    const known = said.of(matter);
    watch.grounds?.said(matter, known);
    return known;
  };
  const noted = <T>(get: () => T): T => {
    const value = get();
    watch.grounds?.other(() => get() === value);
    return value;
  };
  return {
    of,
    saidAt: (matter: string, stage: Stage) => of(matter)?.[stage] ?? null,
    putOffUntil: (matter: string) => of(matter)?.putOff ?? null,
    saidUnder: (start: string) => noted(() => said.saidUnder(start)),
    lastSpoke: (person: string) => noted(() => said.lastSpoke(person)),
    get upSince() {
      return noted(() => said.upSince);
    },
  };
}
