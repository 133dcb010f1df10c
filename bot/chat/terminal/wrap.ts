import { stripVTControlCharacters } from 'node:util';

/** A terminal narrower than this is no terminal: lines are left to it. */
const NARROWEST = 20;
/** Characters that take two columns: emoji and full-width letters, as most terminals draw them. */
const WIDE =
  /\p{Emoji_Presentation}|\p{Emoji}\uFE0F|[\u1100-\u115F\u2E80-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFF00-\uFF60]/u;

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Columns that a text takes in a terminal. */
export function columnsOf(text: string): number {
  let columns = 0;
  for (const { segment } of graphemes.segment(stripVTControlCharacters(text)))
    columns += WIDE.test(segment) ? 2 : 1;
  return columns;
}

/**
 * One line as lines of at most `width` columns, broken between words; what follows begins under the first line's words:
 * behind its spaces, and its "• " or "1. ". A word longer than the width is left whole. `width` `null`: no wrapping.
 */
export function wrapped(line: string, width: number | null): readonly string[] {
  if (width === null || width < NARROWEST || columnsOf(line) <= width) return [line];
  const lead = /^ *(?:\[\d+\] +)?(?:• |\d+\. )?/.exec(line)?.[0] ?? '';
  const hang = ' '.repeat(columnsOf(lead));
  const lines: string[] = [];
  let now = lead;
  for (const word of line.slice(lead.length).split(/ +/)) {
    const bare = now === lead || now === hang;
    if (!bare && columnsOf(now) + 1 + columnsOf(word) > width) {
      lines.push(now);
      now = hang + word;
    } else now += bare ? word : ` ${word}`;
  }
  return [...lines, now];
}
