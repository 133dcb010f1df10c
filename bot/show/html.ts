import type { Block, Line, Message, Span } from '../../core/answers/message.ts';

/** A message as HTML, only with tags that the Matrix specification lists for `org.matrix.custom.html`. */
export function toHtml(message: Message): string {
  return joinLines(message.map(blockHtml));
}

function blockHtml(block: Block): string {
  if ('line' in block) return lineHtml(block.line);
  if ('points' in block) return list('ul', block.points);
  return list('ol', block.steps);
}

function list(tag: 'ul' | 'ol', lines: readonly Line[]): string {
  return `<${tag}>${lines.map((line) => `<li>${lineHtml(line)}</li>`).join('')}</${tag}>`;
}

/** Lists break the line by themselves; between two plain lines a break is needed. */
function joinLines(parts: readonly string[]): string {
  return parts.reduce((html, part, index) => {
    if (index === 0) return part;
    const breaks = part.startsWith('<ul>') || part.startsWith('<ol>') || /<\/[uo]l>$/.test(html);
    return breaks ? html + part : `${html}<br>${part}`;
  }, '');
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
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
