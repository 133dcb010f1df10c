import { hash } from 'node:crypto';
import { dirname } from 'node:path';
import { LowSync, type SyncAdapter } from 'lowdb';
import type { FsLike } from './fs-port.ts';
import { readFile, replaceFile } from './fs-whole.ts';
import type { Place } from './scan.ts';

/** The state at one line of the journal, and where that line is. Nothing is only here. */
export interface Snapshot {
  n: number;
  hash: string;
  /** Just after line `n`. */
  end: Place;
  /** Where line `n` starts. */
  start: Place;
  /** Sizes of the month files before the newest: a closed month that changed is read again in full. */
  closed: Record<string, number>;
  value: unknown;
}

/** What ties the history to a snapshot: the line that both are of. */
export function stampOf({ n, hash: of }: { n: number; hash: string }): string {
  return `${n} ${of}`;
}

/**
 * lowdb's adapter for one file: first line a SHA-256 of what follows, then the snapshot. Written at one stroke,
 * file and folder synced. A file that does not read as it was written reads as none.
 */
class SyncedFile implements SyncAdapter<Snapshot | null> {
  readonly #fs: FsLike;
  readonly #path: string;

  constructor(fs: FsLike, path: string) {
    this.#fs = fs;
    this.#path = path;
  }

  read(): Snapshot | null {
    if (!this.#fs.exists(this.#path)) return null;
    const bytes = readFile(this.#fs, this.#path);
    const body = bytes.subarray(65);
    if (bytes[64] !== 10 || bytes.toString('latin1', 0, 64) !== hash('sha256', body, 'hex')) return null;
    return asSnapshot(JSON.parse(body.toString('utf8')));
  }

  write(data: Snapshot | null): void {
    const body = Buffer.from(JSON.stringify(data));
    const sum = Buffer.from(`${hash('sha256', body, 'hex')}\n`);
    replaceFile(this.#fs, dirname(this.#path), this.#path, [sum, body]);
  }
}

/** Opens the snapshot file with lowdb; `data` is null where there is none that reads as it was written. */
export function openSnapshot(fs: FsLike, path: string): LowSync<Snapshot | null> {
  const db = new LowSync<Snapshot | null>(new SyncedFile(fs, path), null);
  try {
    db.read();
  } catch {
    db.data = null; // unreadable is as good as none: it is rebuilt from the journal
  }
  return db;
}

function asSnapshot(data: unknown): Snapshot | null {
  if (!isBag(data) || !isPlace(data.start) || !isPlace(data.end) || !isBag(data.closed)) return null;
  const { n, hash: of, start, end, closed, value } = data;
  if (typeof n !== 'number' || typeof of !== 'string') return null;
  const sizes: Record<string, number> = {};
  for (const [name, size] of Object.entries(closed)) if (typeof size === 'number') sizes[name] = size;
  return { n, hash: of, start, end, closed: sizes, value };
}

function isPlace(value: unknown): value is Place {
  return isBag(value) && typeof value.month === 'string' && typeof value.offset === 'number';
}

function isBag(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
