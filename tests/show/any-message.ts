import fc from 'fast-check';
import type { Block, Line, Message, Span } from '../../core/words/message.ts';

/** Anything a person can type, with the characters that HTML and line breaks care about often among them. */
const words = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.string({
    unit: fc.constantFrom(
      '<',
      '>',
      '&',
      '"',
      "'",
      '\n',
      '\r',
      '\u0000',
      '\u202E',
      '</ul>',
      '<br>',
      '~',
      'a',
      ' ',
    ),
    maxLength: 8,
  }),
);

const span: fc.Arbitrary<Span> = fc.oneof(
  words,
  words.map((strong) => ({ strong })),
  words.map((struck) => ({ struck })),
);

function messageOf(spans: fc.Arbitrary<Span>): fc.Arbitrary<Message> {
  const line: fc.Arbitrary<Line> = fc.array(spans, { maxLength: 3 });
  const block: fc.Arbitrary<Block> = fc.oneof(
    line.map((one) => ({ line: one })),
    fc.array(line, { maxLength: 3 }).map((points) => ({ points })),
    fc.array(line, { maxLength: 3 }).map((steps) => ({ steps })),
  );
  return fc.array(block, { maxLength: 5 });
}

/** Any message there can be. */
export const anyMessage = messageOf(span);

/** Any message with nothing struck through: plain text has all its words. */
export const standingMessage = messageOf(
  fc.oneof(
    words,
    words.map((strong) => ({ strong })),
  ),
);
