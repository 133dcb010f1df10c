import { toText } from '../../bot/show/text.ts';
import { answer } from '../../core/answers/answer.ts';
import type { Answer } from '../../core/answers/answer-view.ts';
import type { Ask } from '../../core/reading/ask.ts';
import type { Given } from '../rules/given.ts';

/** What the bot answers to one ask at that local time, in that chat room. */
export function answerTo(given: Given, ask: Ask, local: string, room = '!quay:example.org'): Answer {
  const view = { ...given.view(local), room, from: '@tom:example.org', entries: given.timeline };
  return answer(ask, view);
}

/** The same as the plain text that a phone shows. */
export function textOf(given: Given, ask: Ask, local: string, room?: string): string {
  return toText(answerTo(given, ask, local, room).message);
}
