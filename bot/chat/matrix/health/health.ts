import type { DatabaseSync } from 'node:sqlite';
import type { Effect } from '../../../../core/desk/effect.ts';
import type { Practice } from '../../../../core/practice/practice.ts';
import { clockWords } from '../../../../core/words/clock-words.ts';
import type { Message } from '../../../../core/words/message.ts';
import type { Heard } from '../../../keeper/heard.ts';
import type { Store } from '../../../store/store.ts';
import { factOf, setFact } from '../matrix-db.ts';
import type { Finding } from './finding.ts';
import { healthMessage, troubleMessage } from './health-message.ts';
import { ofChat } from './of-chat.ts';
import { ofClock } from './of-clock.ts';
import { ofRecord } from './of-record.ts';
import { version } from './version.ts';

/** How often it is looked whether something has begun to want a person, ms; it is said when it does at two looks. */
const EVERY_MS = 10 * 60_000;
/** A question older than this is not answered any more, ms. */
const OLD_MS = 10 * 60_000;
/** Enough of the head hash for a phone's width to tell two records apart; the whole of it is in the command. */
const DIGITS = 16;

/** All that somebody types who wants to know how the program does. */
const ASKED = /^(?:scanward[,:]? +)?health(?: check)?[?.!]?$/i;

/** Said where they happen; what is over once this can be said at all; not to be told in the chat by itself. */
const NOT_TOLD: readonly Finding['of'][] = ['locked', 'unsent', 'heard', 'server'];

/** What the health is seen from. */
export interface HealthParts {
  readonly db: DatabaseSync;
  readonly store: Store;
  readonly practice: Practice;
  readonly homeserver: string;
  readonly now: () => number;
  /** The direct message of a person, or null. */
  readonly privateRoomOf: (person: string) => string | null;
}

/**
 * How the program does, told to those who answer for it: when the lead, the deputy or a manager types `health`, and once
 * when something begins to want a person. It is no part of the record: the outbox alone has it.
 */
export class Health {
  readonly #parts: HealthParts;
  #clock: Finding | null = null;
  #looked = 0;
  #bad: ReadonlySet<string> = new Set();

  constructor(parts: HealthParts) {
    this.#parts = parts;
  }

  /** Everything there is to say, with times as the practice has them. */
  findings(): readonly Finding[] {
    const { db, store, practice, now } = this.#parts;
    const at = now();
    const show = (iso: string) => clockWords(Date.parse(iso), at, practice.timezone);
    return [
      ...ofChat(db, at, store.head.n, show),
      ...ofRecord(store, show, DIGITS),
      ...(this.#clock === null ? [] : [this.#clock]),
    ];
  }

  /** Answers those who ask; the same question again changes nothing. */
  answer(heard: readonly Heard[]): void {
    for (const one of heard) {
      if (one.sort !== 'note' || !ASKED.test(one.text.trim()) || !this.#mayAsk(one.from)) continue;
      if (this.#parts.now() - one.at > OLD_MS) continue;
      this.#post(`health/${one.id}`, one.room, healthMessage(this.findings(), version()), one.id);
    }
  }

  /** Looks whether something has begun to want a person, and tells them once. */
  async look(): Promise<void> {
    const { now, homeserver, db } = this.#parts;
    if (now() - this.#looked < EVERY_MS) return;
    this.#looked = now();
    this.#clock = await ofClock(homeserver);
    const bad = this.findings().filter(({ good, of }) => !good && !NOT_TOLD.includes(of));
    const said: readonly string[] = JSON.parse(factOf(db, 'health-said') ?? '[]');
    const fresh = bad.filter(({ of }) => this.#bad.has(of) && !said.includes(of));
    this.#bad = new Set(bad.map(({ of }) => of));
    const room = this.#roomOfSeniors();
    if (fresh.length > 0 && room !== null) this.#post(`health/${this.#looked}`, room, troubleMessage(fresh));
    // What is well again is told anew when it goes wrong again.
    const still = said.filter((of) => this.#bad.has(of));
    setFact(db, 'health-said', JSON.stringify([...still, ...fresh.map(({ of }) => of)]));
  }

  /** Where nobody is named who answers for the practice, anybody may ask. */
  #mayAsk(person: string): boolean {
    const seniors = this.#seniors();
    return seniors.length === 0 || seniors.includes(person);
  }

  /** Managers first: it is theirs to see to. */
  #seniors(): readonly string[] {
    const { people } = this.#parts.practice;
    return (['manager', 'lead', 'deputy'] as const).flatMap((part) =>
      people.flatMap(({ id, part: theirs }) => (id !== null && theirs === part ? [id] : [])),
    );
  }

  /** A senior's direct message, else the first chat room. */
  #roomOfSeniors(): string | null {
    const { practice, privateRoomOf } = this.#parts;
    for (const person of this.#seniors()) {
      const room = privateRoomOf(person);
      if (room !== null) return room;
    }
    return practice.chat[0]?.room ?? null;
  }

  #post(key: string, room: string, message: Message, replyTo?: string): void {
    const post: Effect = {
      ...{ does: 'post', key, room, message, about: 'answer', items: [], mentions: [] },
      ...(replyTo === undefined ? {} : { replyTo }),
    };
    this.#parts.store.transport.enqueue(0, [{ key, room, body: post }]);
  }
}
