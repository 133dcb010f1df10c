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

/** Posts kept at hand. Older ones are history: a tick on them answers with what is due now. */
const KEPT = 4_000;

/** What has been said: posts by key, and of each matter which stage when. Known from the turns, so a restart knows it too. */
export class PostLog implements SaidLog {
  readonly #posts = new Map<string, PostLine>();
  readonly #stages = new Map<string, Instant>();
  readonly #putOff = new Map<string, Instant>();
  readonly #warned = new Set<string>();
  readonly #spoke = new Map<string, Instant>();
  upSince: Instant | null = null;

  saidAt(key: string, stage: Stage): Instant | null {
    return this.#stages.get(`${stage} ${key}`) ?? null;
  }

  putOffUntil(key: string): Instant | null {
    return this.#putOff.get(key) ?? null;
  }

  lastSpoke(person: string): Instant | null {
    return this.#spoke.get(person) ?? null;
  }

  get(key: string): PostLine | null {
    return this.#posts.get(key) ?? null;
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

  /** Whether any warning was given because of this entry. */
  warnedOn(entry: string): boolean {
    return this.warnings().some((line) => line.finding?.startsWith(`${entry}:`) === true);
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
    this.#stages.set(`${stage} ${matter}`, at);
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
    this.#putOff.set(matter, until);
  }

  spoke(person: string, at: Instant): void {
    const before = this.#spoke.get(person);
    if (before === undefined || before < at) this.#spoke.set(person, at);
  }
}
