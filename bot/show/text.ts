import type { Line, Message, Span } from '../../core/answers/message.ts';

/** A message as plain text: readable by itself, since not everyone's phone shows HTML. */
export function toText(message: Message): string {
  return message
    .flatMap((block) => {
      if ('line' in block) return [lineText(block.line)];
      if ('points' in block) return block.points.map((line) => `• ${lineText(line)}`);
      return block.steps.map((line, index) => `${index + 1}. ${lineText(line)}`);
    })
    .join('\n');
}

function lineText(line: Line): string {
  return line.map(spanText).join('');
}

function spanText(span: Span): string {
  if (typeof span === 'string') return span;
  return 'strong' in span ? span.strong : `~${span.struck}~`;
}
