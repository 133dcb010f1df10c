import type { Practice } from '../../../core/practice/practice.ts';
import type { Heard } from '../../keeper/heard.ts';
import type { Keeper } from '../../keeper/keeper.ts';
import type { Screen } from './screen.ts';
import { KEYS, readTyped, type Typed } from './typed.ts';

/** Chat room of a practice file that lists none. */
const ONLY_ROOM = '!room:terminal';

/** Who is typing and where. */
export interface Seat {
  person: string;
  room: string;
}

/** What the room works with: made once by the command that opens it. */
export interface TerminalParts {
  readonly practice: Practice;
  readonly keeper: Keeper;
  readonly screen: Screen;
  readonly print: (line: string) => void;
  readonly now: () => number;
}

/** The chat room in a terminal: typed lines become what a phone would send; everything else is the same way as anywhere. */
export class TerminalRoom {
  readonly #parts: TerminalParts;
  readonly #seat: Seat;
  #count = 0;
  #lastNote: string | null = null;

  constructor(parts: TerminalParts, seat: Seat) {
    this.#parts = parts;
    this.#seat = seat;
  }

  get prompt(): string {
    return `${nameOf(this.#parts.practice, this.#seat.person)} · ${roomName(this.#parts.practice, this.#seat.room)} › `;
  }

  /** Takes one typed line; `false` when the person leaves. */
  async type(line: string): Promise<boolean> {
    if (line.trim() === '') return true;
    const typed = readTyped(line);
    if (typed.does === 'quit') return false;
    const heard = this.#heard(typed);
    if (heard === null) return true;
    const { keeper, now, screen } = this.#parts;
    keeper.receive([heard]);
    keeper.work(now());
    await keeper.send(screen);
    await this.wake();
    return true;
  }

  /** Says what has fallen due. */
  async wake(): Promise<void> {
    const { keeper, now, screen } = this.#parts;
    keeper.wake(now());
    await keeper.send(screen);
  }

  #heard(typed: Typed): Heard | null {
    const base = this.#base();
    switch (typed.does) {
      case 'note':
        return this.#note(base, typed.text);
      case 'reply': {
        const post = this.#parts.screen.post(typed.post);
        if (post === null) return this.#say('There is no such post to answer.');
        return { ...this.#note(base, typed.text), replyTo: post.eventId };
      }
      case 'react': {
        const post = this.#parts.screen.post(typed.post);
        if (post === null) return this.#say('There is no such post to react to.');
        return { sort: 'reaction', ...base, reacts: post.eventId, emoji: typed.emoji };
      }
      case 'edit':
        if (this.#lastNote === null) return this.#say('You have typed no note yet that could be put right.');
        return { sort: 'edit', ...base, edits: this.#lastNote, text: typed.text };
      case 'delete':
        if (this.#lastNote === null) return this.#say('You have typed no note yet that could be taken away.');
        return { sort: 'redaction', ...base, redacts: this.#lastNote };
      case 'as':
        return this.#sitAs(typed.name);
      case 'chat':
        return this.#goTo(typed.room);
      case 'keys':
        return this.#say(...KEYS);
      case 'wrong':
        return this.#say(typed.say);
      case 'quit':
        return null;
    }
  }

  #note(base: { id: string; room: string; from: string; at: number }, text: string) {
    this.#lastNote = base.id;
    this.#parts.screen.noted(base.id, text);
    return { sort: 'note' as const, ...base, text };
  }

  #base() {
    this.#count += 1;
    const at = this.#parts.now();
    return {
      id: `$typed-${at}-${process.pid}-${this.#count}`,
      room: this.#seat.room,
      from: this.#seat.person,
      at,
    };
  }

  #sitAs(name: string): null {
    const person = findPerson(this.#parts.practice, name);
    if (person === null)
      return this.#say(`Nobody is called “${name}” here. ${whoIsThere(this.#parts.practice)}`);
    this.#seat.person = person;
    this.#lastNote = null;
    return null;
  }

  #goTo(name: string): null {
    const room = findRoom(this.#parts.practice, name);
    if (room === null)
      return this.#say(`There is no chat room “${name}”. ${whichRooms(this.#parts.practice)}`);
    this.#seat.room = room;
    this.#parts.screen.room = room;
    return null;
  }

  #say(...lines: readonly string[]): null {
    for (const line of lines) this.#parts.print(`    ${line}`);
    return null;
  }
}

/** Chat identity of a person by name or identity; `null` when the practice file has nobody of that name with one. */
export function findPerson(practice: Practice, name: string): string | null {
  const wanted = name.trim().toLowerCase();
  const person = practice.people.find(
    (one) => one.name.toLowerCase() === wanted || one.id?.toLowerCase() === wanted,
  );
  return person === undefined ? null : (person.id ?? `@${person.name.toLowerCase()}:terminal`);
}

/** Who may sit at the terminal, in words. */
export function whoIsThere(practice: Practice): string {
  return practice.people.length === 0
    ? 'The practice file lists no people.'
    : `There are ${practice.people.map((one) => one.name).join(', ')}.`;
}

/** A chat room by its identity or by the id or name of a site it serves. */
export function findRoom(practice: Practice, name: string): string | null {
  const wanted = name.trim().toLowerCase();
  if (practice.chat.length === 0) return ONLY_ROOM;
  const found = practice.chat.find(
    (entry) =>
      entry.room.toLowerCase() === wanted ||
      entry.sites.some(
        (id) => id.toLowerCase() === wanted || siteName(practice, id).toLowerCase() === wanted,
      ),
  );
  return found?.room ?? null;
}

/** Which chat rooms there are, in words. */
export function whichRooms(practice: Practice): string {
  if (practice.chat.length === 0) return 'The practice file lists no chat rooms: there is one.';
  return `There are ${practice.chat.map((entry) => roomName(practice, entry.room)).join(' and ')}.`;
}

/** Where one sits when nothing is said: the first chat room, the lead. */
export function firstSeat(practice: Practice): Seat {
  const person = practice.people.find((one) => one.part === 'lead') ?? practice.people[0];
  return {
    person: person === undefined ? '@you:terminal' : (findPerson(practice, person.name) ?? '@you:terminal'),
    room: practice.chat[0]?.room ?? ONLY_ROOM,
  };
}

/** A person's name for the prompt. */
export function nameOf(practice: Practice, person: string): string {
  return practice.people.find((one) => one.id === person)?.name ?? /^@([^:]+):/.exec(person)?.[1] ?? person;
}

/** A chat room's name: the sites that it serves. */
export function roomName(practice: Practice, room: string): string {
  const entry = practice.chat.find((one) => one.room === room);
  return entry === undefined ? practice.name : entry.sites.map((id) => siteName(practice, id)).join(' & ');
}

function siteName(practice: Practice, id: string): string {
  return practice.sites.find((site) => site.id === id)?.name ?? id;
}
