import type { AskOf } from '../../reading/ask.ts';
import type { Message } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { guideFor, WHOSE_WORD } from '../guide.ts';
import { sitesOfAsk } from '../site-of-ask.ts';

/** "How do I calibrate?": numbered steps with the cautions in them, what to do when it does not work, whose word comes first. */
export function answerHow({ topic }: AskOf<'how'>, view: AskView): Answer {
  const { title, when, steps, otherwise } = guideFor(
    topic,
    view,
    sitesOfAsk(view.practice, undefined, view.room),
  );
  const message: Message = [
    { line: [{ strong: title }, when === null ? '' : `. ${when}`] },
    { steps: steps.map((step) => [step]) },
    { points: otherwise.map((one) => [one]) },
    { line: [WHOSE_WORD] },
  ];
  return { about: 'help', message, items: [] };
}
