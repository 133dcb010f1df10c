import { type JournalLine, parseLine } from '../line.ts';
import { readLines } from '../read-lines.ts';
import type { Piece } from './pieces.ts';

/** The lines of pieces, one after another, still sealed. */
export function* linesOf(pieces: readonly Piece[]): Generator<JournalLine> {
  for (const { months, fs, from, to } of pieces)
    for (const { name, path, size } of months) {
      if (name < from.month || name > to.month) continue;
      const [start, end] = [name === from.month ? from.offset : 0, name === to.month ? to.offset : size];
      for (const { text } of readLines(fs, path, start, end)) {
        const line = parseLine(text);
        if (line !== null) yield line;
      }
    }
}
