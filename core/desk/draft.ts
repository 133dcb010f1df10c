import type { Reading } from '../reading/reading.ts';
import type { Item } from '../reading/slots.ts';
import type { Decision } from '../record/decision.ts';
import type { Said } from '../record/entry.ts';
import { itemsOf } from '../record/items-of.ts';
import type { Vouched } from '../record/vouched.ts';
import type { About } from '../rules/about.ts';
import type { Stage } from '../rules/matter.ts';
import type { Question } from '../rules/question.ts';
import { type Instant, toIso } from '../time/instant.ts';
import type { Message } from '../words/message.ts';
import type { Effect, Post } from './effect.ts';
import type { Cause, Leans, SaidMatter, Turn, TurnEntry, Versions } from './turn.ts';

/** What a post says besides its words; everything but `about` and `message` may be left out. */
export interface PostParts {
  readonly about: About;
  readonly message: Message;
  readonly items?: readonly Item[];
  readonly replyTo?: string;
  readonly mentions?: readonly string[];
  readonly buttons?: readonly string[];
}

/** What may free, pass or close something: of these it is kept how far the chat vouched for whoever typed it. */
const MAY_LOOSEN = new Set<Said['kind']>(['released', 'load-finished', 'load-released', 'incident-closed']);

/** A turn while it is being made. Keys of effects are derived from the turn's number and their place in it. */
export class Draft {
  readonly number: number;
  readonly now: Instant;
  readonly entries: TurnEntry[] = [];
  readonly effects: Effect[] = [];
  readonly asked: Question[] = [];
  readonly answered: string[] = [];
  readonly said: SaidMatter[] = [];
  readonly settled: string[] = [];
  readonly reopened: string[] = [];
  readonly putOff: { matter: string; until: string }[] = [];
  readonly warned: { finding: string; post: string | null }[] = [];
  readonly setsAside: number[] = [];
  reading: Reading | null = null;
  correction: Turn['correction'] | null = null;
  of: string | null = null;
  leans: Leans | null = null;
  /** It named a thing of ours and was not recorded, soon after the same person told something. */
  passed = false;
  /** The note asks what is not answered any more. */
  unanswered = false;
  readonly #cause: Cause;

  constructor(number: number, cause: Cause, now: Instant) {
    this.number = number;
    this.now = now;
    this.#cause = cause;
  }

  /** Adds a post and gives its key. */
  post(room: string, parts: PostParts): string {
    const { about, message, items = [], replyTo, mentions = [], buttons } = parts;
    const post: Post = {
      does: 'post',
      key: this.#key(),
      room,
      message,
      about,
      items,
      ...(replyTo === undefined || replyTo === '' ? {} : { replyTo }),
      mentions: [...new Set(mentions)],
      ...(buttons === undefined ? {} : { buttons }),
    };
    this.effects.push(post);
    return post.key;
  }

  /** Nothing can stand under what was a reaction or a deletion (`note` is empty then). */
  react(room: string, note: string, emoji: string): void {
    if (note === '') return;
    this.effects.push({ does: 'react', key: this.#key(), room, to: note, emoji });
  }

  edit(room: string, post: string, message: Message): void {
    this.effects.push({ does: 'edit', key: this.#key(), room, post, message });
  }

  file(room: string, file: { name: string; type: string; content: string }): void {
    this.effects.push({ does: 'file', key: this.#key(), room, ...file });
  }

  /** Adds what is to be kept; in the turn's own place unless it belongs to an earlier note. */
  enter(
    what: Said,
    who: {
      noted: Instant;
      by: string | null;
      from: string;
      room: string;
      vouched?: Vouched | undefined;
    },
    place = this.number,
  ): void {
    const index = this.#nextIndex(place);
    this.entries.push({
      what,
      noted: toIso(who.noted),
      by: who.by,
      from: who.from,
      room: who.room,
      ...(who.vouched === undefined || !MAY_LOOSEN.has(what.kind) ? {} : { vouched: who.vouched }),
      place,
      index,
    });
  }

  /** The first index that entries at `place` may take, where a note that stands already has some. */
  readonly firstIndex = new Map<number, number>();

  decide(decision: Decision, room: string, by: string | null, from: string, vouched?: Vouched): void {
    this.enter(decision, { noted: this.now, by, from, room, vouched });
  }

  matterSaid(matter: string, stage: Stage, post: string, marks: readonly string[] = []): void {
    this.said.push({ matter, stage, post, ...some('marks', marks) });
  }

  /** Nothing to keep and nothing to say. */
  get empty(): boolean {
    return (
      this.entries.length === 0 &&
      this.effects.length === 0 &&
      this.setsAside.length === 0 &&
      this.answered.length === 0 &&
      this.said.length === 0 &&
      this.putOff.length === 0 &&
      !this.unanswered &&
      !this.passed
    );
  }

  finish(made: Versions): Turn {
    const items = new Set<string>(this.entries.flatMap((entry) => itemsOf(entry.what)));
    for (const effect of this.effects)
      if (effect.does === 'post') for (const item of effect.items) items.add(item);
    return {
      cause: this.#cause,
      at: toIso(this.now),
      ...(this.reading === null ? {} : { reading: this.reading }),
      ...some('entries', this.entries),
      ...(this.unanswered ? { unanswered: true } : {}),
      ...some('setsAside', this.setsAside),
      ...(this.correction == null ? {} : { correction: this.correction }),
      ...(this.of === null ? {} : { of: this.of }),
      ...(this.leans === null ? {} : { leans: this.leans }),
      ...(this.passed ? { passed: true } : {}),
      ...some('asked', this.asked),
      ...some('answered', this.answered),
      ...some('said', this.said),
      ...some('settled', this.settled),
      ...some('reopened', this.reopened),
      ...some('putOff', this.putOff),
      ...some('warned', this.warned),
      effects: this.effects,
      items: [...items].sort(),
      made,
    };
  }

  #key(): string {
    return `${this.number}/${this.effects.length}`;
  }

  #nextIndex(place: number): number {
    const taken = this.entries.filter((entry) => entry.place === place).length;
    return (this.firstIndex.get(place) ?? 0) + taken;
  }
}

function some<K extends string, T>(key: K, list: readonly T[]): { [P in K]?: readonly T[] } {
  return list.length === 0 ? {} : ({ [key]: list } as { [P in K]?: readonly T[] });
}
