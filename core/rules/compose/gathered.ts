import type { Block, Line, Message } from '../../words/message.ts';

/** What one matter says, and the name of what it is about where that is one thing. */
export interface Part {
  readonly name: string | null;
  readonly message: Message;
}

/**
 * Several matters in one message: their own lines under one another, then what each adds to its line: said once where
 * all add the same, else with the name of what it is said of. Where one has more than one line of its own, they follow
 * one another whole.
 */
export function gathered(parts: readonly Part[]): Message {
  const messages = parts.map(({ message }) => message);
  const [only] = messages;
  if (messages.length === 1 && only !== undefined) return only;
  const heads: Line[] = [];
  const rest: Block[] = [];
  for (const { name, message } of parts) {
    const [first, ...more] = message;
    if (first === undefined) continue;
    if (!('line' in first) || more.some((block) => 'line' in block)) return messages.flat();
    heads.push(first.line);
    rest.push(...more.map((block) => (isOfAll(block, messages) ? block : named(block, name))));
  }
  const once = new Map(rest.map((block) => [JSON.stringify(block), block]));
  return [{ points: heads }, ...once.values()];
}

function isOfAll(block: Block, messages: readonly Message[]): boolean {
  const words = JSON.stringify(block);
  return messages.every((message) => message.some((each) => JSON.stringify(each) === words));
}

/** "Blue scanner: the base goes on the left." */
function named(block: Block, name: string | null): Block {
  if (name === null || !('points' in block)) return block;
  return { points: block.points.map((line) => [`${name}: `, ...line]) };
}
