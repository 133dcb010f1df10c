import { Desk } from '../../core/desk/desk.ts';
import type { Post } from '../../core/desk/effect.ts';
import type { Input, Target } from '../../core/desk/input.ts';
import type { Turn } from '../../core/desk/turn.ts';
import { type Instant, MINUTE } from '../../core/time/instant.ts';
import type { Happening } from './any-day.ts';
import { PLAIN, type Scene } from './scenes.ts';

const QUAY = '!quay:example.org';
const NORTH = '!north:example.org';
/** One day on the core alone: a desk, its turns, and the clock that happenings drive. */
export class Day {
  readonly scene: Scene;
  desk: Desk;
  now: Instant;
  readonly turns: Turn[] = [];
  readonly #notes: { readonly id: string; readonly from: string; readonly room: string }[] = [];
  readonly #posts: Post[] = [];
  #count = 0;

  constructor(scene = PLAIN, desk = new Desk(scene.readers)) {
    this.scene = scene;
    this.desk = desk;
    this.now = scene.start;
    this.#keep(this.desk.settings(scene.file, this.now));
  }

  /** The same day so far, to go on with on another desk. */
  goingOn(desk: Desk): Day {
    const day = new Day(this.scene);
    day.desk = desk;
    day.now = this.now;
    day.turns.splice(0, day.turns.length, ...this.turns);
    day.#notes.push(...this.#notes);
    day.#posts.splice(0, day.#posts.length, ...this.#posts);
    day.#count = this.#count;
    return day;
  }

  /** Lets the clock run to what happens, takes it in, and says what is due. */
  happen(one: Happening): void {
    this.runTo(this.now + one.after * MINUTE);
    const input = this.#input(one);
    if (input !== null) this.#keep(this.desk.take(input, this.now));
    this.#keep(this.desk.tick(this.now));
  }

  /** Lets the clock run through every moment at which something falls due. */
  runTo(instant: Instant): void {
    for (let next = this.desk.next(this.now); next !== null && next <= instant; ) {
      if (next <= this.now) throw new Error(`the clock stands still at ${new Date(this.now).toISOString()}`);
      this.now = next;
      this.#keep(this.desk.tick(next));
      next = this.desk.next(this.now);
    }
    this.now = instant;
  }

  #keep(turn: Turn | null): void {
    if (turn === null) return;
    this.turns.push(turn);
    for (const effect of turn.effects) if (effect.does === 'post') this.#posts.push(effect);
  }

  #input(one: Happening): Input | null {
    this.#count += 1;
    const { from } = one;
    const room = one.north ? NORTH : QUAY;
    const base = { id: `$${this.#count}`, room, from, at: this.now - one.late * MINUTE };
    switch (one.does) {
      case 'note':
        this.#notes.push(base);
        return { sort: 'note', ...base, text: one.text };
      case 'reply': {
        const replyTo = this.#post(room, 0);
        this.#notes.push(base);
        return { sort: 'note', ...base, text: one.text, ...(replyTo === null ? {} : { replyTo }) };
      }
      case 'edit': {
        const note = this.#notes.at(-1 - one.back);
        if (note === undefined) return null;
        return { ...base, ...note, id: base.id, sort: 'edit', edits: note.id, text: one.text };
      }
      case 'delete': {
        const note = this.#notes.at(-1 - one.back);
        if (note === undefined) return null;
        return { ...base, ...note, id: base.id, sort: 'redaction', redacts: note.id };
      }
      case 'react': {
        const reacts = this.#post(room, one.back);
        return reacts === null ? null : { sort: 'reaction', ...base, reacts, emoji: one.emoji };
      }
    }
  }

  #post(room: string, back: number): Target | null {
    const post = this.#posts.filter((each) => each.room === room).at(-1 - back);
    return post === undefined ? null : { post: post.key };
  }
}

/** The whole day, to seven in the evening at the earliest where it began at half past seven. */
export function playDay(happenings: readonly Happening[], scene = PLAIN): Day {
  const day = new Day(scene);
  for (const one of happenings) day.happen(one);
  day.runTo(Math.max(day.now, scene.start + 11.5 * 60 * MINUTE));
  return day;
}
