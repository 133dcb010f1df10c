import type { History, State } from '../../record/state.ts';
import type { Part } from './grounds.ts';
import type { Working } from './watched-fields.ts';
import { WatchedMap } from './watched-map.ts';

/** A part of the record that is known by one value: another value, another part. */
interface Whole extends Part {
  readonly of: () => unknown;
  value: unknown;
}

/**
 * The record as rules see it, such that what each answer was worked out from is noted: single fields of scanners, tips,
 * autoclaves and sites; loads, incidents and each list of history as a whole.
 */
export class WatchedState {
  readonly state: State;
  readonly #working: Working;
  readonly #maps: readonly { refresh(): void }[];
  readonly #wholes: Whole[] = [];
  /** What is in none of these: with any change of the record it counts as another. */
  readonly #rest: Part = { turn: 0, notedBy: null };

  /** `record`: the state as it is now, whichever it is. */
  constructor(working: Working, record: () => State) {
    this.#working = working;
    const scanners = new WatchedMap(working, () => record().scanners);
    const tips = new WatchedMap(working, () => record().tips);
    const autoclaves = new WatchedMap(working, () => record().autoclaves);
    const sites = new WatchedMap(working, () => record().sites);
    this.#maps = [scanners, tips, autoclaves, sites];
    const practice = this.#known(() => record().practice);
    const file = this.#known(() => record().file);
    const loads = this.#grown(() => record().loads);
    const loadsByNumber = this.#grown(() => record().loadsByNumber);
    const incidents = this.#grown(() => record().incidents);
    const rest = () => {
      working.grounds?.part(this.#rest);
      return record();
    };
    this.state = {
      ...{ scanners, tips, autoclaves, sites, history: this.#history(() => record().history) },
      get practice() {
        return practice();
      },
      get file() {
        return file();
      },
      get loads() {
        return loads();
      },
      get loadsByNumber() {
        return loadsByNumber();
      },
      get incidents() {
        return incidents();
      },
      get settings() {
        return rest().settings;
      },
      get words() {
        return rest().words;
      },
      get shown() {
        return rest().shown;
      },
      get spoke() {
        return rest().spoke;
      },
    };
  }

  /** The record has changed. */
  refresh(): void {
    this.#rest.turn += 1;
    for (const map of this.#maps) map.refresh();
    for (const whole of this.#wholes) {
      const value = whole.of();
      if (value === whole.value) continue;
      whole.value = value;
      whole.turn += 1;
    }
  }

  #history(history: () => History): History {
    const uses = this.#grown(() => history().uses);
    const fittings = this.#grown(() => history().fittings);
    const tipLoads = this.#grown(() => history().tipLoads);
    const findings = this.#grown(() => history().findings);
    return {
      get uses() {
        return uses();
      },
      get fittings() {
        return fittings();
      },
      get tipLoads() {
        return tipLoads();
      },
      get findings() {
        return findings();
      },
    };
  }

  /** What is replaced whenever it changes. */
  #known<T>(get: () => T, of: () => unknown = get): () => T {
    const whole: Whole = { of, value: of(), turn: 0, notedBy: null };
    this.#wholes.push(whole);
    return () => {
      this.#working.grounds?.part(whole);
      return get();
    };
  }

  /** What changes in place and says when it did. */
  #grown<T extends { readonly revision: object }>(get: () => T): () => T {
    return this.#known(get, () => get().revision);
  }
}
