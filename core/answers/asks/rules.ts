import { type Line, lines, type Message } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { ownRuleLines, ruleLines } from '../rule-lines.ts';

/** More is not read on a phone; the file has them all. */
const SHOWN = 8;

/** "Which rules do you follow?": what this practice has changed, and every rule with its value and source as a file. */
export function answerRules({ practice }: AskView): Answer {
  const own = ownRuleLines(practice);
  const more = own.length - SHOWN;
  const message: Message = [
    ...lines([
      { strong: 'Rules in force' },
      ': every one is in the file, with its value and where it comes from.',
    ]),
    ...(own.length === 0
      ? lines('Your practice file changes none of the defaults.')
      : [
          { line: ['Your practice file sets:'] },
          { points: own.slice(0, SHOWN).map((line): Line => [line]) },
        ]),
    ...(more > 0 ? lines(`And ${more} more.`) : []),
    ...lines('Makers’ instructions, the autoclave’s validated cycles and local codes come first.'),
  ];
  const content = `Rules in force at ${practice.name}\n${ruleLines(practice).join('\n')}\n`;
  return { about: 'answer', message, items: [], file: { name: 'rules.txt', type: 'text/plain', content } };
}
