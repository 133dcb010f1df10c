import type { Block } from '../../words/message.ts';

/** Reactions may do nothing in an encrypted chat room, so there is always a word to type. */
const HOW: Block = { line: ['✅ or reply “done” when it is; ⏰ or “later” to put it off.'] };

/** How a reminder that a tick can settle is answered. */
export function howToAnswer(): readonly Block[] {
  return [HOW];
}

/** The message without it: once settled there is nothing to answer. Told by its words, as posts come back from the record. */
export function withoutHowToAnswer(message: readonly Block[]): readonly Block[] {
  const how = JSON.stringify(HOW);
  return message.filter((block) => JSON.stringify(block) !== how);
}
