import { type Block, type Line, type Message, wordsOf } from '../../core/words/message.ts';
import { oneLine } from './clean.ts';

/** A gist shorter than this says too little: "Stop: tip 3 must not be used" is cut at the full stop, not at the colon. */
const SHORTEST = 12;
/** Points named one by one; more of them are counted. */
const MOST_POINTS = 3;
/** Words that our own posts begin with, which read on in small letters; a name keeps its capital. */
const OPENERS =
  /^(?:Wipe|Calibrate|Cover|Send|Order|Bring|Test|Pack|Look|Close|Stop|Did|Had|Which|Tips?|Load)\b/;

/**
 * A post that no longer holds as one line of plain text, "Done by Dan, 09:24: wipe down blue scanner"; `null` for any
 * other message. Plain text has no sign for struck words that reads well on a phone; HTML keeps them all.
 */
export function settledLine(message: Message): string | null {
  const [head, ...rest] = message;
  if (head === undefined || !('line' in head) || head.line.some(isStruck)) return null;
  const spans = rest.flatMap((block) => linesOf(block)).flat();
  // A head alone, as a post is left that had nothing but how to answer it, reads as it is.
  if (spans.length === 0 || !spans.every(isStruck)) return null;
  const gist = gistOf(rest);
  const first = plain(head.line);
  return gist === '' ? first : `${first}: ${gist}`;
}

function gistOf(blocks: readonly Block[]): string {
  const first = blocks.find((block) => linesOf(block).some((line) => plain(line) !== ''));
  if (first === undefined) return '';
  const lines = linesOf(first);
  const shown = lines.slice(0, MOST_POINTS).map((line) => small(upToStop(plain(line))));
  const more = lines.length - shown.length;
  return `${shown.join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
}

/** What a line says before its first stop; a question keeps its mark. */
function upToStop(text: string): string {
  for (const { 0: stop, index } of text.matchAll(/[.:;?](?=\s|$)/g)) {
    if (index >= SHORTEST) return stop === '?' ? text.slice(0, index + 1) : text.slice(0, index);
  }
  return text;
}

function small(text: string): string {
  return OPENERS.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

function linesOf(block: Block): readonly Line[] {
  if ('line' in block) return [block.line];
  return 'points' in block ? block.points : block.steps;
}

function plain(line: Line): string {
  return oneLine(line.map(wordsOf).join('')).trim();
}

function isStruck(span: Line[number]): boolean {
  return typeof span !== 'string' && 'struck' in span;
}
