import type { Chat } from '../../bot/chat/chat.ts';
import type { Heard } from '../../bot/keeper/heard.ts';
import { Keeper, type KeeperOptions } from '../../bot/keeper/keeper.ts';
import { toText } from '../../bot/show/text.ts';
import { type FsLike, machineFs } from '../../bot/store/fs-port.ts';
import { openStore, type Store } from '../../bot/store/store.ts';
import type { Effect } from '../../core/desk/effect.ts';
import { PRACTICE } from '../rehearse/play.ts';

export const QUAY = '!quay:example.org';

/** 2026-11-23 at that time, in UTC; a Monday. */
export function at(time: string): number {
  return Date.parse(`2026-11-23T${time.length === 5 ? `${time}:00` : time}Z`);
}

/** What a person typed in Quay's room. */
export function note(id: string, time: string, text: string, from = '@tom:example.org'): Heard {
  return { sort: 'note', id, room: QUAY, from, at: at(time), text };
}

/** A keeper on a store, and a chat that remembers what it was given. */
export class House {
  readonly store: Store;
  readonly keeper: Keeper;
  readonly delivered: Effect[] = [];
  readonly #chat: Chat = {
    deliver: (effect) => {
      this.delivered.push(effect);
      return Promise.resolve(effect.does === 'post' ? `$${effect.key}` : null);
    },
  };

  constructor(folder: string, options: KeeperOptions & { fs?: FsLike } = {}) {
    const { fs = machineFs, ...keeper } = options;
    this.store = openStore(folder, { fs });
    this.keeper = new Keeper(this.store, keeper);
    this.keeper.settle(PRACTICE, at('07:00'));
  }

  /** Takes notes in and lets the keeper work and say what is due. */
  async hear(time: string, ...heard: readonly Heard[]): Promise<this> {
    this.keeper.receive(heard);
    return this.work(time);
  }

  async work(time: string): Promise<this> {
    this.keeper.work(at(time));
    this.keeper.wake(at(time));
    await this.keeper.send(this.#chat);
    return this;
  }

  /** Texts of the posts so far, in order. */
  get posts(): readonly string[] {
    return this.delivered.flatMap((effect) => (effect.does === 'post' ? [toText(effect.message)] : []));
  }

  get reactions(): readonly string[] {
    return this.delivered.flatMap((effect) =>
      effect.does === 'react' ? [`${effect.emoji} ${effect.to}`] : [],
    );
  }

  /** Event ids of notes in the record, in order. */
  get recorded(): readonly string[] {
    return [...this.store.lines()].flatMap(({ turn }) => {
      const cause = typeof turn === 'object' && turn !== null && 'cause' in turn ? turn.cause : null;
      return typeof cause === 'object' && cause !== null && 'id' in cause ? [String(cause.id)] : [];
    });
  }

  /** Ends as told to. */
  close(): void {
    this.keeper.close();
    this.store.close();
  }

  /** Ends without a word, as a power cut does. */
  crash(): void {
    this.store.close();
  }
}
