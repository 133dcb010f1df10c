import type { SaidLog, SaidOf, Stage } from '../rules/matter.ts';
import type { Instant } from '../time/instant.ts';

/** What was said of matters for a snapshot. */
export interface SavedSaid {
  readonly said: readonly (readonly [matter: string, said: SaidOf])[];
  readonly spoke: readonly (readonly [person: string, at: Instant])[];
  readonly upSince: Instant | null;
}

const NOTHING: SaidOf = { first: null, again: null, lead: null, putOff: null };

/** Which stage of each matter was said when, and who has spoken. Known from the turns, so a restart knows it too. */
export class SaidMatters implements SaidLog {
  readonly #said = new Map<string, SaidOf>();
  /** Matters of which anything was said, by all of their key but the last part. */
  readonly #under = new Map<string, readonly string[]>();
  readonly #spoke = new Map<string, Instant>();
  /** Of whom it was asked when they spoke last, since they did. */
  readonly #asked = new Set<string>();
  #upSince: Instant | null = null;
  #changes = 0;

  /** Another number whenever what rules are told of it became another. */
  get changes(): number {
    return this.#changes;
  }

  get upSince(): Instant | null {
    return this.#upSince;
  }

  /** When the record began. */
  set upSince(instant: Instant | null) {
    this.#upSince = instant;
    this.#changes += 1;
  }

  saveSaid(): SavedSaid {
    return { said: [...this.#said], spoke: [...this.#spoke], upSince: this.#upSince };
  }

  /** Takes in what `saveSaid` gave; this log must be empty. */
  restoreSaid({ said, spoke, upSince }: SavedSaid): void {
    this.upSince = upSince;
    for (const [matter, of] of said) this.#put(matter, of);
    for (const [person, at] of spoke) this.#spoke.set(person, at);
  }

  /** Forgets what was said of matters, or until when they were put off, before that instant, unless they are open still. */
  forgetBefore(instant: Instant, isOpen: (matter: string) => boolean): void {
    this.#changes += 1;
    for (const [matter, { first, again, lead, putOff }] of this.#said) {
      const last = Math.max(first ?? 0, again ?? 0, lead ?? 0, putOff ?? 0);
      if (last < instant && !isOpen(matter)) this.#said.delete(matter);
    }
    for (const [start, matters] of this.#under) {
      const left = matters.filter((matter) => this.#said.has(matter));
      if (left.length === 0) this.#under.delete(start);
      else if (left.length < matters.length) this.#under.set(start, left);
    }
  }

  of(key: string): SaidOf | undefined {
    return this.#said.get(key);
  }

  saidAt(key: string, stage: Stage): Instant | null {
    return this.#said.get(key)?.[stage] ?? null;
  }

  saidUnder(start: string): readonly string[] {
    return this.#under.get(start) ?? NONE;
  }

  putOffUntil(key: string): Instant | null {
    return this.#said.get(key)?.putOff ?? null;
  }

  lastSpoke(person: string): Instant | null {
    this.#asked.add(person);
    return this.#spoke.get(person) ?? null;
  }

  said(matter: string, stage: Stage, at: Instant): void {
    this.#put(matter, { ...(this.#said.get(matter) ?? NOTHING), [stage]: at });
  }

  putOff(matter: string, until: Instant): void {
    this.#put(matter, { ...(this.#said.get(matter) ?? NOTHING), putOff: until });
  }

  spoke(person: string, at: Instant): void {
    const before = this.#spoke.get(person);
    if (before !== undefined && before >= at) return;
    // Everybody speaks all day, and rules ask it of few: it is a change for whoever was asked about.
    if (this.#asked.delete(person)) this.#changes += 1;
    this.#spoke.set(person, at);
  }

  #put(matter: string, said: SaidOf): void {
    this.#changes += 1;
    const isNew = !this.#said.has(matter);
    this.#said.set(matter, said);
    if (!isNew) return;
    const start = matter.slice(0, Math.max(0, matter.lastIndexOf('|')));
    this.#under.set(start, [...(this.#under.get(start) ?? NONE), matter]);
  }
}

const NONE: readonly string[] = [];
