import type { AskOf } from '../../reading/ask.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { guideFor } from '../guide.ts';
import type { Message } from '../message.ts';
import { sitesOfAsk } from '../site-of-ask.ts';

/** "How do I calibrate?": numbered steps with the cautions in them, then what to do when it does not work. */
export function answerHow({ topic }: AskOf<'how'>, view: AskView): Answer {
  const guide = guideFor(topic, view, sitesOfAsk(view.practice, undefined, view.room));
  const message: Message = [
    { line: [{ strong: guide.title }] },
    { steps: guide.steps.map((step) => [step]) },
    ...(guide.otherwise.length === 0 ? [] : [{ points: guide.otherwise.map((one) => [one]) }]),
    { line: [guide.first] },
  ];
  return { about: 'help', message, items: [] };
}
