import type { Effect, Post } from '../../../core/desk/effect.ts';
import { toText } from '../../show/text.ts';
import type { Chat, SentPosts } from '../chat.ts';
import { wrapped } from './wrap.ts';

/** A note or post that a person in the terminal can point at. */
export interface Shown {
  readonly eventId: string;
  readonly text: string;
}

/** How people and chat rooms are called. */
export interface Names {
  readonly person: (id: string) => string;
  readonly room: (id: string) => string;
}

/**
 * The terminal room: what a phone would show, as lines. Posts carry a number, so that a reply or a reaction can say which
 * is meant.
 */
export class Screen implements Chat {
  readonly #print: (line: string) => void;
  readonly #nameOf: (person: string) => string;
  readonly #notes = new Map<string, string>();
  readonly #posts: Shown[] = [];
  readonly #width: () => number | null;
  readonly #roomName: (room: string) => string;
  /** Chat room whose effects are shown; others are named. */
  room: string;

  constructor(
    print: (line: string) => void,
    room: string,
    names: Names,
    width: () => number | null = () => null,
  ) {
    this.#print = print;
    this.room = room;
    this.#nameOf = names.person;
    this.#roomName = names.room;
    this.#width = width;
  }

  deliver(effect: Effect, sent: SentPosts): Promise<string | null> {
    const eventId = effect.does === 'post' ? `$post-${effect.key}` : null;
    if (effect.does === 'post') this.#post(effect, `$post-${effect.key}`);
    else this.#show(`    ${this.#elsewhere(effect.room)}${this.#line(effect, sent)}`);
    return Promise.resolve(eventId);
  }

  /** Remembers a note that was typed, so that a reaction to it can show its first words. */
  noted(eventId: string, text: string): void {
    this.#notes.set(eventId, text);
  }

  /** The post with this number; the latest when none is given. */
  post(number?: number): Shown | null {
    return (number === undefined ? this.#posts.at(-1) : this.#posts[number - 1]) ?? null;
  }

  #post(effect: Post, eventId: string): void {
    const text = toText(effect.message);
    this.#posts.push({ eventId, text });
    const ring = effect.mentions.map((person) => `@${this.#nameOf(person)} `).join('');
    const label = `[${this.#posts.length}] `;
    const indent = ' '.repeat(label.length);
    const [first = '', ...rest] = `${this.#elsewhere(effect.room)}${ring}${text}`.split('\n');
    this.#show(label + first);
    for (const line of rest) this.#show(indent + line);
    const buttons = effect.buttons ?? [];
    if (buttons.length > 0) this.#show(`${indent}[${buttons.join(' ')}]`);
  }

  #show(line: string): void {
    for (const one of line.split('\n').flatMap((each) => wrapped(each, this.#width()))) this.#print(one);
  }

  #line(effect: Exclude<Effect, Post>, sent: SentPosts): string {
    switch (effect.does) {
      case 'react':
        return `${effect.emoji} on “${shorten(this.#notes.get(effect.to) ?? 'a note')}”`;
      case 'edit':
        return `[${this.#numberOf(effect.post, sent)}] now reads: ${toText(effect.message).replaceAll('\n', '\n      ')}`;
      case 'redact':
        return `[${this.#numberOf(effect.post, sent)}] was taken away`;
      case 'pin':
        return `[${this.#numberOf(effect.post, sent)}] is pinned`;
      case 'file':
        return `file ${effect.name}\n${effect.content}`;
    }
  }

  #numberOf(key: string, sent: SentPosts): string {
    const eventId = sent.eventIdOf(key);
    const index = this.#posts.findIndex((post) => post.eventId === eventId);
    return index === -1 ? 'an earlier post' : String(index + 1);
  }

  #elsewhere(room: string): string {
    return room === this.room ? '' : `(${this.#roomName(room)}) `;
  }
}

function shorten(text: string): string {
  const line = text.replaceAll(/\s+/g, ' ').trim();
  return line.length <= 40 ? line : `${line.slice(0, 39)}…`;
}
