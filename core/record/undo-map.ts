/**
 * A map that can go back: every change is kept with what stood before it. For maps that grow with the record, where
 * copying them at each checkpoint would cost more than folding. Keys are only ever added or given another value.
 */
export class UndoMap<K, V> extends Map<K, V> {
  // `Map`'s own constructor would call `set` before the field is there, so pairs come by `from`.
  readonly #changes: { readonly key: K; readonly before: V | undefined }[] = [];

  static from<K, V>(pairs: Iterable<readonly [K, V]>): UndoMap<K, V> {
    const map = new UndoMap<K, V>();
    for (const [key, value] of pairs) map.set(key, value);
    return map;
  }

  /** How many changes there have been. */
  get changes(): number {
    return this.#changes.length;
  }

  override set(key: K, value: V): this {
    this.#changes.push({ key, before: this.get(key) });
    return super.set(key, value);
  }

  /** Takes back every change after the first `changes`. */
  undoTo(changes: number): void {
    while (this.#changes.length > changes) {
      const last = this.#changes.pop();
      if (last === undefined) return;
      if (last.before === undefined) super.delete(last.key);
      else super.set(last.key, last.before);
    }
  }
}
