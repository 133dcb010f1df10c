import type { Archive } from '../record/archive.ts';
import { MemoryArchive } from '../record/memory-archive.ts';
import type { Instant } from '../time/instant.ts';
import type { Post } from './effect.ts';
import { isReminder } from './reminders.ts';
import { SaidMatters, type SavedSaid } from './said-matters.ts';
import { type SavedWarned, WarnedFindings } from './warned-findings.ts';

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

/** Posts for a snapshot. */
export interface SavedPosts extends SavedSaid {
  readonly posts: readonly PostLine[];
  readonly warned: SavedWarned;
}

/** What has been said: posts by key, and of each matter which stage when. */
export class PostLog extends SaidMatters {
  readonly #posts = new Map<string, PostLine>();
  /** Keys of reminders that wait for something to be done: looked at every turn. */
  readonly #reminders = new Set<string>();
  readonly #warned: WarnedFindings;

  /** `archive`: where old findings that were warned of go; as it was when what is restored was saved. */
  constructor(archive: Archive = new MemoryArchive()) {
    super();
    this.#warned = new WarnedFindings(archive);
  }

  save(): SavedPosts {
    return { posts: [...this.#posts.values()], warned: this.#warned.save(), ...this.saveSaid() };
  }

  /** Takes in what `save` gave; this log must be empty. */
  restore({ posts, warned, ...said }: SavedPosts): void {
    this.restoreSaid(said);
    for (const line of posts) this.#put(line);
    this.#warned.restore(warned);
  }

  /** Whether anything of it is in the archive. */
  get needsArchive(): boolean {
    return this.#warned.needsArchive;
  }

  get(key: string): PostLine | null {
    return this.#posts.get(key) ?? null;
  }

  /** All that are at hand, oldest first. */
  all(): readonly PostLine[] {
    return [...this.#posts.values()];
  }

  /** Posts of a chat room that wait for something to be done, oldest first. */
  open(room: string): readonly PostLine[] {
    return [...this.#posts.values()].filter(
      (line) => !line.settled && line.matters.length > 0 && line.post.room === room,
    );
  }

  /** Reminders that wait for something to be done, of every chat room. */
  reminders(): readonly PostLine[] {
    return Array.from(this.#reminders, (key) => this.#posts.get(key)).filter((line) => line !== undefined);
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
    if (line !== undefined) this.#put({ ...line, finding });
  }

  posted(post: Post, at: Instant, matters: readonly string[], marks: readonly string[] = []): void {
    this.#put({ post, at, matters, marks, finding: null, settled: false });
    if (this.#posts.size <= KEPT) return;
    const oldest = this.#posts.keys().next();
    if (oldest.done) return;
    this.#posts.delete(oldest.value);
    this.#reminders.delete(oldest.value);
  }

  settle(key: string): void {
    const line = this.#posts.get(key);
    if (line !== undefined) this.#put({ ...line, settled: true });
  }

  reopen(key: string): void {
    const line = this.#posts.get(key);
    if (line === undefined) return;
    this.#put({ ...line, settled: false });
    // In the order of the posts again, as they are after a restart.
    const waiting = [...this.#posts.keys()].filter((each) => this.#reminders.has(each));
    this.#reminders.clear();
    for (const each of waiting) this.#reminders.add(each);
  }

  /** Reminders struck through before, oldest first. */
  struck(): readonly PostLine[] {
    return [...this.#posts.values()].filter((line) => line.settled && line.matters.length > 0);
  }

  /** What was said in reply to a note and still stands as said. */
  repliesTo(note: string): readonly PostLine[] {
    return [...this.#posts.values()].filter((line) => !line.settled && line.post.replyTo === note);
  }

  #put(line: PostLine): void {
    const { key, about } = line.post;
    this.#posts.set(key, line);
    const waits = !line.settled && line.matters.length > 0 && isReminder(about);
    if (waits) this.#reminders.add(key);
    else this.#reminders.delete(key);
  }
}
