import type { Block, Line, Message, Span } from '../../core/words/message.ts';
import { oneLine } from './clean.ts';
import { settledLine } from './settled-line.ts';

/** A message as plain text: readable by itself, since not everyone's phone shows HTML. */
export function toText(message: Message): string {
  return settledLine(message) ?? message.flatMap(blockText).join('\n');
}

function blockText(block: Block): readonly string[] {
  if ('line' in block) return block.line.length === 0 ? [] : [lineText(block.line)];
  if ('points' in block) return block.points.map((line) => `• ${lineText(line)}`);
  return block.steps.map((line, index) => `${index + 1}. ${lineText(line)}`);
}

function lineText(line: Line): string {
  return line.map(spanText).join('');
}

function spanText(span: Span): string {
  if (typeof span === 'string') return oneLine(span);
  return 'strong' in span ? oneLine(span.strong) : `~${oneLine(span.struck)}~`;
}
