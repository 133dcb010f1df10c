import type { Part } from './grounds.ts';
import { WatchedFields, type Working, watchedLike } from './watched-fields.ts';

/** Things of the record by their ids, as `WatchedFields` shows each; which there are is a part of its own. */
export class WatchedMap<T extends object> extends Map<string, T> {
  readonly #working: Working;
  readonly #things: () => ReadonlyMap<string, T>;
  readonly #ids: Part = { turn: 0, notedBy: null };
  readonly #watched = new Map<string, { readonly fields: WatchedFields; readonly thing: T }>();
  #inOrder: readonly T[] = [];

  constructor(working: Working, things: () => ReadonlyMap<string, T>) {
    super();
    this.#working = working;
    this.#things = things;
  }

  override get(id: string): T | undefined {
    this.#noteIds();
    return this.#watched.get(id)?.thing;
  }

  override has(id: string): boolean {
    this.#noteIds();
    return this.#watched.has(id);
  }

  override get size(): number {
    this.#noteIds();
    return this.#watched.size;
  }

  override values(): MapIterator<T> {
    this.#noteIds();
    return this.#inOrder.values();
  }

  override keys(): MapIterator<string> {
    this.#noteIds();
    return this.#watched.keys();
  }

  override *entries(): MapIterator<[string, T]> {
    this.#noteIds();
    for (const [id, { thing }] of this.#watched) yield [id, thing];
  }

  override [Symbol.iterator](): MapIterator<[string, T]> {
    return this.entries();
  }

  override forEach(each: (value: T, key: string, map: Map<string, T>) => void): void {
    for (const [id, thing] of this.entries()) each(thing, id, this);
  }

  /** The record has changed. */
  refresh(): void {
    const things = this.#things();
    if (!this.#hasThese(things)) this.#watchThese(things);
    for (const { fields } of this.#watched.values()) fields.refresh();
  }

  #hasThese(things: ReadonlyMap<string, T>): boolean {
    if (things.size !== this.#watched.size) return false;
    const ids = this.#watched.keys();
    for (const id of things.keys()) if (ids.next().value !== id) return false;
    return true;
  }

  #watchThese(things: ReadonlyMap<string, T>): void {
    const before = new Map(this.#watched);
    this.#watched.clear();
    for (const [id, thing] of things) this.#watched.set(id, before.get(id) ?? this.#watch(id, thing));
    this.#inOrder = Array.from(this.#watched.values(), ({ thing }) => thing);
    this.#ids.turn += 1;
  }

  #watch(id: string, like: T) {
    const fields = new WatchedFields(this.#working, () => this.#things().get(id));
    return { fields, thing: watchedLike(like, fields) };
  }

  #noteIds(): void {
    this.#working.grounds?.part(this.#ids);
  }
}
