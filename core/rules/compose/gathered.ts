import type { Block, Line, Message } from '../../words/message.ts';

/**
 * Several matters in one message: their own lines under one another, then what each adds to its line, said once where
 * several add the same. Where one has more than one line of its own, they follow one another whole.
 */
export function gathered(messages: readonly Message[]): Message {
  const [only] = messages;
  if (messages.length === 1 && only !== undefined) return only;
  const heads: Line[] = [];
  const rest: Block[] = [];
  for (const message of messages) {
    const [first, ...more] = message;
    if (first === undefined) continue;
    if (!('line' in first) || more.some((block) => 'line' in block)) return messages.flat();
    heads.push(first.line);
    rest.push(...more);
  }
  const once = new Map(rest.map((block) => [JSON.stringify(block), block]));
  return [{ points: heads }, ...once.values()];
}
