import { commitment, type ErasableFile, forgotten, lost, newSalt } from './erasable.ts';
import type { FsLike } from './fs-port.ts';
import { readLines } from './read-lines.ts';

/**
 * A free text as kept beside the chain, under number `k`, of line `n`. Once it is forgotten, in whole or in part, its
 * salt is null: it need not fit its commitment any more. `json`: the text is JSON, and stays so.
 */
export interface Text {
  k: number;
  n: number;
  json: boolean;
  text: string | null;
  salt: string | null;
}

/** Bytes read at once while texts are taken in order. */
const blockSize = 1 << 16;
/** Bytes read at once while one is looked for. */
const probeSize = 1 << 12;

/**
 * What people typed. It may be much, so it stays on disk: numbers rise through the file, one is found by halving,
 * and reading in order costs one read a block.
 */
export class Texts {
  readonly #fs: FsLike;
  readonly #file: ErasableFile;
  #next: number;
  #block = new Map<number, Text>();
  #blockEnd = 0;

  constructor(fs: FsLike, file: ErasableFile) {
    this.#fs = fs;
    this.#file = file;
    this.#next = this.#nextNumber();
  }

  /** The text kept under `k`, or what stands for it. */
  textOf(k: number): string {
    const entry = this.entry(k);
    return entry === null ? lost : (entry.text ?? forgotten);
  }

  /** What is kept under `k`, or null where the table has no such entry. */
  entry(k: number): Text | null {
    const near = this.#block.get(k);
    if (near !== undefined) return near;
    if (!this.#load(this.#blockEnd).has(k)) this.#load(this.#find((text) => text.k >= k));
    return this.#block.get(k) ?? null;
  }

  /** A new entry for a text of line `n`, in memory only: `keep` writes it. */
  take(text: string, n: number, json: boolean): { entry: Text; sealed: string } {
    const salt = newSalt();
    return { entry: { k: this.#next++, n, json, text, salt }, sealed: commitment(salt, text) };
  }

  /** Writes and syncs texts taken. */
  keep(taken: readonly Text[]): void {
    this.#file.append(taken.map((text) => JSON.stringify(text)));
  }

  /** Takes back the texts of lines after `n`. */
  dropAfter(n: number): void {
    const { last } = this.#lastEntry();
    // Also where nothing is to go: a failed write may have left bytes after the last whole entry.
    const stale = last !== null && last.n > n;
    this.#file.cutTo(stale ? this.#find((text) => text.n > n) : this.#file.size);
    this.#next = this.#nextNumber();
    this.#block.clear();
    this.#blockEnd = 0;
  }

  /** Erases what `less` gives less of; gives how many there were. Of JSON, the shape must stay. */
  forget(less: (text: Text) => string | null): number {
    let gone = 0;
    this.#block.clear();
    this.#blockEnd = 0;
    this.#file.rewrite((line) => {
      const text = readText(line);
      const left = text === null ? null : less(text);
      if (text === null || left === text.text) return line;
      gone++;
      return JSON.stringify({ ...text, text: left, salt: null });
    });
    return gone;
  }

  close(): void {
    this.#file.close();
  }

  #load(from: number): Map<number, Text> {
    this.#block.clear();
    this.#blockEnd = from;
    if (from >= this.#file.size) return this.#block;
    for (const line of readLines(this.#fs, this.#file.path, from, this.#file.size)) {
      const text = readText(line.text);
      if (text !== null) this.#block.set(text.k, text);
      this.#blockEnd = line.end;
      if (line.end - from >= blockSize) break;
    }
    return this.#block;
  }

  /** Where the first entry starts for which `late` holds: entries are in order, so the file is halved. */
  #find(late: (text: Text) => boolean): number {
    let low = 0;
    let high = this.#file.size;
    while (low < high) {
      const middle = (low + high) >>> 1;
      const at = this.#firstFrom(middle, low);
      if (at === null || at.start >= high || late(at.text)) high = middle;
      else low = at.end;
    }
    return low === 0 ? 0 : (this.#firstFrom(low, low)?.start ?? this.#file.size);
  }

  /** The first readable entry that starts at `from` or after; `sure` is a place where an entry starts. */
  #firstFrom(from: number, sure: number): { start: number; end: number; text: Text } | null {
    // From a byte earlier: a line end there shows that an entry starts at `from`.
    const start = from === sure ? from : from - 1;
    let skip = from !== sure;
    for (const line of readLines(this.#fs, this.#file.path, start, this.#file.size, probeSize)) {
      const text = skip ? null : readText(line.text);
      skip = false;
      if (text !== null) return { start: line.start, end: line.end, text };
    }
    return null;
  }

  /** One line a text: the number of one that cannot be read is never given to another. */
  #nextNumber(): number {
    const { last, unread } = this.#lastEntry();
    return (last?.k ?? 0) + unread + 1;
  }

  /** The last entry that can be read, and how many lines after it cannot. */
  #lastEntry(): { last: Text | null; unread: number } {
    const size = this.#file.size;
    for (let back = blockSize; ; back *= 4) {
      const from = Math.max(0, size - back);
      const found = size === 0 ? { last: null, unread: 0 } : this.#lastFrom(from, size);
      if (found.last !== null || from === 0) return found;
    }
  }

  #lastFrom(from: number, size: number): { last: Text | null; unread: number } {
    let last: Text | null = null;
    let unread = 0;
    let whole = from === 0;
    for (const line of readLines(this.#fs, this.#file.path, from, size)) {
      const text = whole ? readText(line.text) : null;
      unread = text === null && whole ? unread + 1 : 0;
      last = text ?? last;
      whole = true;
    }
    return { last, unread };
  }
}

/** What is left of a text that is forgotten: nothing; of JSON, the same shape with nothing said in it. */
export function blank(text: Text): string | null {
  if (!text.json || text.text === null) return null;
  return JSON.stringify(JSON.parse(text.text), (_, value) => (typeof value === 'string' ? forgotten : value));
}

/** A line of texts.jsonl, or null where it is none. */
export function readText(line: string): Text | null {
  try {
    const read: unknown = JSON.parse(line);
    if (typeof read !== 'object' || read === null || !('k' in read) || !('n' in read)) return null;
    const { k, n } = read;
    if (typeof k !== 'number' || typeof n !== 'number') return null;
    const text = 'text' in read && typeof read.text === 'string' ? read.text : null;
    const salt = 'salt' in read && typeof read.salt === 'string' ? read.salt : null;
    return { k, n, json: 'json' in read && read.json === true, text, salt };
  } catch {
    return null; // verify says which line of the journal misses it
  }
}
