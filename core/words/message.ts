/** A piece of a line: plain words, words that matter, or words that no longer hold. */
export type Span = string | { readonly strong: string } | { readonly struck: string };

export type Line = readonly Span[];

/**
 * What a person is shown, as data: `bot/show` makes plain text and HTML of the one description.
 * - `line`: one line, the important word first
 * - `points`: short lines under one another
 * - `steps`: numbered, in order; also choices, whose numbers may be typed as the answer
 */
export type Block =
  | { readonly line: Line }
  | { readonly points: readonly Line[] }
  | { readonly steps: readonly Line[] };

export type Message = readonly Block[];

/** A message of plain lines. */
export function lines(...texts: readonly (string | Line)[]): Message {
  return texts.map((text) => ({ line: typeof text === 'string' ? [text] : text }));
}

/** The same message with every word struck through, for a post that no longer holds. */
export function struck(message: Message): Message {
  return message.map((block) => {
    if ('line' in block) return { line: strikeLine(block.line) };
    if ('points' in block) return { points: block.points.map(strikeLine) };
    return { steps: block.steps.map(strikeLine) };
  });
}

function strikeLine(line: Line): Line {
  return [{ struck: line.map(wordsOf).join('') }];
}

/** The words of one piece, without what marks them. */
export function wordsOf(span: Span): string {
  if (typeof span === 'string') return span;
  return 'strong' in span ? span.strong : span.struck;
}
