import type { SaidLog, Stage } from '../rules/matter.ts';
import type { Instant } from '../time/instant.ts';
import type { Post } from './effect.ts';

/** A post of ours that may still be answered, ticked off or struck through. */
export interface PostLine {
  readonly post: Post;
  readonly at: Instant;
  readonly matters: readonly string[];
  /** What its ticks record: "wiped A". */
  readonly marks: readonly string[];
  /** Finding that it warned of, so that a correction can strike it. */
  readonly finding: string | null;
  /** Struck through or ticked off: nothing more can be done with it. */
  readonly settled: boolean;
}

const STAGES: readonly Stage[] = ['first', 'again', 'lead'];

/** Posts kept at hand. Older ones are history: a tick on them answers with what is due now. */
const KEPT = 4_000;

/** Posts for a snapshot. */
export interface SavedPosts {
  readonly posts: readonly PostLine[];
  readonly stages: readonly (readonly [stage: string, at: Instant])[];
  readonly putOff: readonly (readonly [matter: string, until: Instant])[];
  readonly warned: readonly string[];
  readonly spoke: readonly (readonly [person: string, at: Instant])[];
  readonly upSince: Instant | null;
}

/** What has been said: posts by key, and of each matter which stage when. Known from the turns, so a restart knows it too. */
export class PostLog implements SaidLog {
  readonly #posts = new Map<string, PostLine>();
  /** By stage, then by matter. */
  readonly #stages = new Map<Stage, Map<string, Instant>>();
  /** Matters of which anything was said, by all of their key but the last part. */
  readonly #under = new Map<string, Set<string>>();
  readonly #putOff = new Map<string, Instant>();
  readonly #warned = new Set<string>();
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

  save(): SavedPosts {
    return {
      posts: [...this.#posts.values()],
      stages: [...this.#stages].flatMap(([stage, said]) =>
        [...said].map(([matter, at]) => [`${stage} ${matter}`, at] as const),
      ),
      putOff: [...this.#putOff],
      warned: [...this.#warned],
      spoke: [...this.#spoke],
      upSince: this.upSince,
    };
  }

  /** Takes in what `save` gave; this log must be empty. */
  restore({ posts, stages, putOff, warned, spoke, upSince }: SavedPosts): void {
    this.upSince = upSince;
    for (const line of posts) this.#posts.set(line.post.key, line);
    for (const [key, at] of stages) {
      const space = key.indexOf(' ');
      const stage = STAGES.find((each) => each === key.slice(0, space));
      if (stage !== undefined) this.said(key.slice(space + 1), stage, at);
    }
    for (const [matter, until] of putOff) this.#putOff.set(matter, until);
    for (const finding of warned) this.#warned.add(finding);
    for (const [person, at] of spoke) this.#spoke.set(person, at);
  }

  /**
   * Forgets what was said of matters, or until when they were put off, before that instant, unless they are open still.
   * Findings that were warned of stay: there are never more of them than the record itself keeps.
   */
  forgetBefore(instant: Instant, isOpen: (matter: string) => boolean): void {
    this.#changes += 1;
    for (const said of this.#stages.values())
      for (const [matter, at] of said) if (at < instant && !isOpen(matter)) said.delete(matter);
    for (const [start, matters] of this.#under) {
      for (const matter of matters)
        if (STAGES.every((stage) => this.saidAt(matter, stage) === null)) matters.delete(matter);
      if (matters.size === 0) this.#under.delete(start);
    }
    for (const [matter, until] of this.#putOff)
      if (until < instant && !isOpen(matter)) this.#putOff.delete(matter);
  }

  saidAt(key: string, stage: Stage): Instant | null {
    return this.#stages.get(stage)?.get(key) ?? null;
  }

  saidUnder(start: string): readonly string[] {
    return [...(this.#under.get(start) ?? [])];
  }

  putOffUntil(key: string): Instant | null {
    return this.#putOff.get(key) ?? null;
  }

  lastSpoke(person: string): Instant | null {
    this.#asked.add(person);
    return this.#spoke.get(person) ?? null;
  }

  get(key: string): PostLine | null {
    return this.#posts.get(key) ?? null;
  }

  /** All that are at hand, oldest first. */
  all(): readonly PostLine[] {
    return [...this.#posts.values()];
  }

  /** Posts of a chat room that wait for something to be done, oldest first. */
  open(room: string | null): readonly PostLine[] {
    return [...this.#posts.values()].filter(
      (line) => !line.settled && line.matters.length > 0 && (room === null || line.post.room === room),
    );
  }

  /** Warnings and cautions whose finding may stop holding after a correction. */
  warnings(): readonly PostLine[] {
    return [...this.#posts.values()].filter((line) => !line.settled && line.finding !== null);
  }

  /** Whether something was said because of this finding. */
  warned(finding: string): boolean {
    return this.#warned.has(finding);
  }

  warnedOf(finding: string, post: string | null): void {
    this.#warned.add(finding);
    const line = post === null ? undefined : this.#posts.get(post);
    if (line !== undefined) this.#posts.set(line.post.key, { ...line, finding });
  }

  posted(post: Post, at: Instant, matters: readonly string[], marks: readonly string[] = []): void {
    this.#posts.set(post.key, { post, at, matters, marks, finding: null, settled: false });
    if (this.#posts.size <= KEPT) return;
    const oldest = this.#posts.keys().next();
    if (!oldest.done) this.#posts.delete(oldest.value);
  }

  said(matter: string, stage: Stage, at: Instant): void {
    this.#changes += 1;
    const said = this.#stages.get(stage) ?? new Map<string, Instant>();
    const start = matter.slice(0, Math.max(0, matter.lastIndexOf('|')));
    const under = this.#under.get(start) ?? new Set<string>();
    this.#under.set(start, under.add(matter));
    this.#stages.set(stage, said.set(matter, at));
  }

  settle(key: string): void {
    const line = this.#posts.get(key);
    if (line !== undefined) this.#posts.set(key, { ...line, settled: true });
  }

  reopen(key: string): void {
    const line = this.#posts.get(key);
    if (line !== undefined) this.#posts.set(key, { ...line, settled: false });
  }

  /** Reminders struck through before, oldest first. */
  struck(): readonly PostLine[] {
    return [...this.#posts.values()].filter((line) => line.settled && line.matters.length > 0);
  }

  /** What was said in reply to a note and still stands as said. */
  repliesTo(note: string): readonly PostLine[] {
    return [...this.#posts.values()].filter((line) => !line.settled && line.post.replyTo === note);
  }

  putOff(matter: string, until: Instant): void {
    this.#changes += 1;
    this.#putOff.set(matter, until);
  }

  spoke(person: string, at: Instant): void {
    const before = this.#spoke.get(person);
    if (before !== undefined && before >= at) return;
    // Everybody speaks all day, and rules ask it of few: it is a change for whoever was asked about.
    if (this.#asked.delete(person)) this.#changes += 1;
    this.#spoke.set(person, at);
  }
}
