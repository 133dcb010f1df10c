import type { Block, Line, Message, Span } from '../../core/words/message.ts';
import { oneLine } from './clean.ts';

/**
 * A message as HTML for `formatted_body`, with tags that the Matrix specification lists for `org.matrix.custom.html` and no
 * attributes. Whatever a person typed is escaped.
 */
export function toHtml(message: Message): string {
  const blocks = message.filter((block) => !isEmpty(block));
  return blocks.map((block, index) => breakBefore(blocks[index - 1], block) + blockHtml(block)).join('');
}

/** An empty list would show as a gap. */
function isEmpty(block: Block): boolean {
  if ('line' in block) return block.line.length === 0;
  return 'points' in block ? block.points.length === 0 : block.steps.length === 0;
}

/** Lists break the line by themselves; between two plain lines a break is needed. */
function breakBefore(before: Block | undefined, block: Block): string {
  return before !== undefined && 'line' in before && 'line' in block ? '<br>' : '';
}

function blockHtml(block: Block): string {
  if ('line' in block) return lineHtml(block.line);
  return 'points' in block ? list('ul', block.points) : list('ol', block.steps);
}

function list(tag: 'ul' | 'ol', lines: readonly Line[]): string {
  return `<${tag}>${lines.map((line) => `<li>${lineHtml(line)}</li>`).join('')}</${tag}>`;
}

function lineHtml(line: Line): string {
  return line.map(spanHtml).join('');
}

function spanHtml(span: Span): string {
  if (typeof span === 'string') return escapeHtml(span);
  return 'strong' in span
    ? `<strong>${escapeHtml(span.strong)}</strong>`
    : `<del>${escapeHtml(span.struck)}</del>`;
}

function escapeHtml(text: string): string {
  return oneLine(text)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}
