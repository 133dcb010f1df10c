import type { FsLike } from '../fs-port.ts';
import { readAt } from '../fs-whole.ts';
import type { Month } from '../months.ts';
import type { Place } from '../scan.ts';

/** A run of lines of one journal: from a place to just before another. */
export interface Piece {
  readonly months: readonly Month[];
  readonly fs: FsLike;
  readonly from: Place;
  readonly to: Place;
}

/** Bytes of one file. */
interface Part {
  readonly fs: FsLike;
  readonly path: string;
  readonly from: number;
  readonly to: number;
}

/** The place after everything in these files. */
export function endOf(months: readonly Month[]): Place {
  const last = months.at(-1);
  return last === undefined ? { month: '', offset: 0 } : { month: last.name, offset: last.size };
}

/** The place before everything in these files. */
export function startOf(months: readonly Month[]): Place {
  return { month: months[0]?.name ?? '', offset: 0 };
}

/** Names of the months that the pieces make, in order, with what goes into each file. */
export function monthsOf(pieces: readonly Piece[]): Map<string, readonly Part[]> {
  const made = new Map<string, Part[]>();
  for (const { months, fs, from, to } of pieces)
    for (const { name, path, size } of months) {
      if (name < from.month || name > to.month) continue;
      const part = {
        ...{ fs, path },
        from: name === from.month ? from.offset : 0,
        to: name === to.month ? to.offset : size,
      };
      if (part.to > part.from) made.set(name, [...(made.get(name) ?? []), part]);
    }
  return new Map([...made].sort(([one], [other]) => (one < other ? -1 : 1)));
}

/** The bytes of those parts, one after another. */
export function* bytesOf(parts: readonly Part[]): Generator<Uint8Array> {
  for (const { fs, path, from, to } of parts) {
    const fd = fs.open(path, 'r');
    try {
      for (let at = from; at < to; at += 1 << 20) yield readAt(fs, fd, at, Math.min(1 << 20, to - at));
    } finally {
      fs.close(fd);
    }
  }
}
