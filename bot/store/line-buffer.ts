/** Bytes of lines, one after another, in memory that is used again: taking new memory for each costs more than writing it. */
export class LineBuffer {
  #bytes = Buffer.allocUnsafeSlow(1 << 16);
  #length = 0;

  get length(): number {
    return this.#length;
  }

  /** Forgets everything: what `between` gave is written over from now on. */
  clear(): void {
    this.#length = 0;
  }

  /** Adds a text as UTF-8; gives where it ends. */
  add(text: string): number {
    this.#makeRoom(text.length * 3);
    this.#length += this.#bytes.write(text, this.#length, 'utf8');
    return this.#length;
  }

  /** Leaves so many bytes to be filled by `put`; gives where they end. */
  leave(bytes: number): number {
    this.#makeRoom(bytes);
    this.#length += bytes;
    return this.#length;
  }

  /** Puts plain characters into a place that was left. */
  put(text: string, at: number): void {
    this.#bytes.write(text, at, 'latin1');
  }

  /** The bytes from one place to another, until the next `clear` or `add`. */
  between(from: number, to: number): Buffer {
    return this.#bytes.subarray(from, to);
  }

  #makeRoom(bytes: number): void {
    if (this.#length + bytes <= this.#bytes.length) return;
    const larger = Buffer.allocUnsafeSlow(2 * (this.#length + bytes));
    this.#bytes.copy(larger, 0, 0, this.#length);
    this.#bytes = larger;
  }
}
