import type { Effect, Post } from '../../../../core/desk/effect.ts';
import type { Line, Message } from '../../../../core/words/message.ts';

/**
 * A post as it is to be said by now: where edits of it wait behind it (the program was away, or the homeserver), with the
 * words of the last of them. One that is struck through by then rings nobody: what was unsafe at ten and taken back at five
 * past is no warning any more. Otherwise the effect as it is.
 */
export function withLatestWords(effect: Effect, unsent: readonly Effect[]): Effect {
  if (effect.does !== 'post') return effect;
  const edit = unsent.findLast((other) => other.does === 'edit' && other.post === effect.key);
  if (edit?.does !== 'edit') return effect;
  const { message } = edit;
  const said: Post = { ...effect, message };
  return isStruck(message) ? { ...said, mentions: [], buttons: [] } : said;
}

/** All behind its head is struck through. */
function isStruck([, ...rest]: Message): boolean {
  return rest.length > 0 && rest.flatMap(linesOf).every((line) => line.every(isStruckSpan));
}

function linesOf(block: Message[number]): readonly Line[] {
  if ('line' in block) return [block.line];
  return 'points' in block ? block.points : block.steps;
}

function isStruckSpan(span: Line[number]): boolean {
  return typeof span !== 'string' && 'struck' in span;
}
